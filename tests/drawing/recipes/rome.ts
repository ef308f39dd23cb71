import { beaded, hammered, moved, rim } from '../die.ts';
import type { Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { britannia, implementsOfPriests, LIBERTY, robed, victory } from '../motifs/gods.ts';
import { head } from '../motifs/heads.ts';
import { disjointedHorse } from '../motifs/beasts.ts';
import { bar, box } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';

const border = beaded(472, 9.5, 2.5);
const legend = { foot: 352, height: 86 } as const;

export const ROME: Readonly<Record<string, Recipes>> = {
  'gallo-belgic-stater': {
    obverse: () => ({
      layers: [
        { draw: '<ellipse cx="-14" cy="6" rx="230" ry="210"/>', height: 70, round: 240, soft: true },
        { draw: bar(-180, 120, 150, -40, 20, 46, 24), height: 5, round: 24, soft: true },
      ],
      flan: { shape: 'round', across: 500, down: 476, uneven: 0.016, edge: 60, thick: 34 },
      metal: 'gold',
      surface: { wear: 0.3, weak: 0.2, grain: 0.3, pits: 0.25, scratches: 0.5, bent: 0.5, tone: 0.35, dirt: 0.2 },
    }),
    reverse: () => ({
      layers: disjointedHorse(),
      flan: { shape: 'round' },
      strike: { x: 26, y: -14, turn: 6, scale: 1.12 },
      metal: 'gold',
      surface: { wear: 0.3, weak: 0.25, grain: 0.22, pits: 0.15, scratches: 0.4, bent: 0.55, tone: 0.4, dirt: 0.25 },
    }),
  },
  'vespasian-denarius': {
    obverse: ({ parts: [text = 'IMP CAES VESP AVG P M'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 212, over: 292 }),
          ...moved(head({ hair: 'short', wear: 'laurel' }), -4, -2, 1.5),
        ],
        {
          strike: { x: 6, y: 10, turn: 3 },
          flan: { shape: 'round', uneven: 0.02, cracks: [[128, 50]], edge: 26, thick: 20 },
          surface: { wear: 0.5, tone: 0.55, grain: 0.28, bent: 0.3 },
        },
      ),
    reverse: ({ parts: [text = 'AVGVR TRI POT'], hand }) =>
      hammered(
        [
          border,
          ...rim(text.split(' ')[0] ?? '', 'roman', hand, { ...legend, from: -40, over: 80 }),
          ...rim(text.split(' ').slice(1).join(' '), 'roman', hand, { ...legend, from: 236, over: 112, outward: true }),
          ...moved(implementsOfPriests(), -14, 0, 1.32),
        ],
        {
          strike: { x: -14, y: -4, turn: -8 },
          surface: { wear: 0.48, tone: 0.6, grain: 0.28, bent: 0.3 },
        },
      ),
  },
  'hadrian-as': {
    obverse: ({ parts: [text = 'IMP CAESAR T[RAIANVS HA]DRIANVS AVG'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 208, over: 304 }),
          ...moved(head({ hair: 'locks', beard: true, wear: 'laurel', bust: 'drapery' }), 0, -30, 1.32),
        ],
        {
          metal: 'bronze',
          flan: { shape: 'round', across: 500, down: 484, uneven: 0.012, edge: 34, thick: 24 },
          surface: {
            wear: 0.86,
            weak: 0.5,
            grain: 0.5,
            pits: 0.9,
            corrosion: 0.24,
            scratches: 0.4,
            bent: 0.35,
            tone: 0.6,
            dirt: 0.5,
          },
        },
      ),
    reverse: ({ hand }) =>
      hammered(
        [
          border,
          ...rim('PONT MAX TR [POT C]OS III', 'roman', hand, { ...legend, from: 240, over: 240 }),
          { draw: box(-300, 276, 600, 9), height: 8, round: 4 },
          {
            draw: inLine('S', PUNCHES.roman, -250, 20, 100, hand) + inLine('C', PUNCHES.roman, 270, 20, 100, hand),
            height: 11,
            round: 8,
          },
          // Of the name only the last letter is left.
          { draw: inLine('BRITANNI', PUNCHES.roman, -34, 340, 74, hand), height: 0.7, round: 7 },
          { draw: inLine('A', PUNCHES.roman, 236, 340, 74, hand), height: 9, round: 7 },
          ...moved(britannia(), 0, 0, 1.05),
        ],
        {
          metal: 'bronze',
          strike: { x: 10, y: -8, turn: 5 },
          surface: {
            wear: 0.9,
            weak: 0.6,
            grain: 0.5,
            pits: 1,
            corrosion: 0.3,
            scratches: 0.35,
            bent: 0.35,
            tone: 0.65,
            dirt: 0.55,
          },
        },
      ),
  },
  'severus-denarius': {
    obverse: ({ parts: [text = 'SEVERVS PIVS AVG BRIT'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 206, over: 306 }),
          ...moved(head({ hair: 'locks', beard: true, wear: 'laurel' }), -4, -2, 1.5),
        ],
        {
          strike: { x: -8, y: 6, turn: -3 },
          flan: { shape: 'round', uneven: 0.022, edge: 24, thick: 18, cracks: [[300, 36]] },
          surface: { wear: 0.32, tone: 0.5, grain: 0.3, bent: 0.3 },
        },
      ),
    reverse: ({ parts: [text = 'VICTORIAE BRIT'], hand }) =>
      hammered(
        [border, ...rim(text, 'roman', hand, { ...legend, from: 206, over: 306 }), ...moved(victory(), 0, -4, 1.3)],
        {
          strike: { x: 12, y: 4, turn: 6 },
          surface: { wear: 0.36, tone: 0.5, grain: 0.3, bent: 0.3 },
        },
      ),
  },
  'caracalla-denarius': {
    obverse: ({ parts: [text = 'ANTONINVS PIVS AVG BRIT'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 206, over: 306 }),
          ...moved(head({ hair: 'locks', beard: true, wear: 'laurel' }), -4, -2, 1.48),
        ],
        {
          metal: 'grey',
          strike: { x: 48, y: -30, turn: 8 },
          flan: { shape: 'round', across: 500, down: 480, uneven: 0.024, edge: 24, thick: 18 },
          surface: { wear: 0.34, tone: 0.6, grain: 0.35, bent: 0.3 },
        },
      ),
    reverse: ({ parts: [text = 'LIBERTAS AVG'], hand }) =>
      hammered(
        [
          border,
          ...rim(text.split(' ')[0] ?? '', 'roman', hand, { ...legend, from: 206, over: 140 }),
          ...rim(text.split(' ')[1] ?? '', 'roman', hand, { ...legend, from: 40, over: 100 }),
          ...moved(robed(LIBERTY), 0, -4, 1.28),
        ],
        {
          metal: 'grey',
          strike: { x: -62, y: 26, turn: -6 },
          surface: { wear: 0.55, tone: 0.65, grain: 0.4, bent: 0.3, pits: 0.4 },
        },
      ),
  },
};
