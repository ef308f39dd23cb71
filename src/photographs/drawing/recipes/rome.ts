import { beaded, hammered, moved, rim, turnedRound } from '../die.ts';
import type { Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { altarOfMemory, britannia, implementsOfPriests, LIBERTY, robed, sun, victory } from '../motifs/gods.ts';
import { head } from '../motifs/heads.ts';
import { disjointedHorse, wolf } from '../motifs/beasts.ts';
import { bar, box, dot, round } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import type { Layer } from '../relief.ts';

const border = beaded(472, 9.5, 2.5);
const legend = { foot: 352, height: 86 } as const;

function star(x: number, y: number): Layer {
  return { draw: `<g transform="translate(${x} ${y})">${round(bar(0, 0, 0, -34, 5, 5, 9), 8)}${dot(0, 0, 10)}</g>`, height: 10, round: 5 };
}

export const ROME: Readonly<Record<string, Recipes>> = {
  'gallo-belgic-stater': {
    obverse: () => ({
      layers: [{ draw: '<ellipse cx="-14" cy="6" rx="330" ry="300"/>', height: 34, round: 290 }, { draw: bar(-180, 90, 150, -60, 20, 46, 24), height: 5, round: 20 }],
      flan: { shape: 'round', across: 500, down: 476, uneven: 0.016, edge: 60, thick: 34 },
      metal: 'gold',
      surface: { wear: 0.3, weak: 0.2, grain: 0.3, pits: 0.25, scratches: 0.5, bent: 0.5, tone: 0.35, dirt: 0.2 },
    }),
    reverse: () => ({
      layers: disjointedHorse(),
      flan: { shape: 'round', across: 500, down: 478, uneven: 0.015, edge: 55, thick: 30, cracks: [[70, 46]] },
      strike: { x: 26, y: -14, turn: 6, scale: 1.12 },
      metal: 'gold',
      surface: { wear: 0.3, weak: 0.25, grain: 0.22, pits: 0.15, scratches: 0.4, bent: 0.55, tone: 0.4, dirt: 0.25 },
    }),
  },
  'vespasian-denarius': {
    obverse: ({ parts: [text = 'IMP CAES VESP AVG P M'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 212, over: 292 }), ...moved(head({ hair: 'short', wear: 'laurel' }), -4, -2, 1.5)], {
        strike: { x: 6, y: 10, turn: 3 },
        flan: { shape: 'round', uneven: 0.02, cracks: [[128, 50]], edge: 26, thick: 20 },
        surface: { wear: 0.5, tone: 0.55, grain: 0.28, bent: 0.3 },
      }),
    reverse: ({ parts: [text = 'AVGVR TRI POT'], hand }) =>
      hammered([border, ...rim(text.split(' ')[0] ?? '', 'roman', hand, { ...legend, from: -40, over: 80 }), ...rim(text.split(' ').slice(1).join(' '), 'roman', hand, { ...legend, from: 236, over: 112, outward: true }), ...moved(implementsOfPriests(), -14, 0, 1.32)], {
        strike: { x: -14, y: -4, turn: -8 },
        flan: { shape: 'round', uneven: 0.02, cracks: [[222, 44]], edge: 26, thick: 20 },
        surface: { wear: 0.48, tone: 0.6, grain: 0.28, bent: 0.3 },
      }),
  },
  'hadrian-as': {
    obverse: ({ parts: [text = 'IMP CAESAR T[RAIANVS HA]DRIANVS AVG'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 208, over: 304 }), ...moved(head({ hair: 'locks', beard: true, wear: 'laurel', bust: 'drapery' }), 0, -30, 1.32)], {
        metal: 'bronze',
        flan: { shape: 'round', across: 500, down: 484, uneven: 0.012, edge: 34, thick: 24 },
        surface: { wear: 0.86, weak: 0.5, grain: 0.5, pits: 0.9, corrosion: 0.24, scratches: 0.4, bent: 0.35, tone: 0.6, dirt: 0.5 },
      }),
    reverse: ({ hand }) =>
      hammered([border, ...rim('PONT MAX TR [POT C]OS III', 'roman', hand, { ...legend, from: 240, over: 240 }), { draw: box(-300, 276, 600, 9), height: 8, round: 4 }, { draw: inLine('S', PUNCHES.roman, -250, 20, 100, hand) + inLine('C', PUNCHES.roman, 270, 20, 100, hand), height: 11, round: 8 }, { draw: inLine('BRITANNIA', PUNCHES.roman, 0, 340, 74, hand), height: 3, round: 7 }, ...moved(britannia(), 0, 0, 1.05)], {
        metal: 'bronze',
        strike: { x: 10, y: -8, turn: 5 },
        flan: { shape: 'round', across: 484, down: 500, uneven: 0.012, edge: 34, thick: 24 },
        surface: { wear: 0.9, weak: 0.6, grain: 0.5, pits: 1, corrosion: 0.3, scratches: 0.35, bent: 0.35, tone: 0.65, dirt: 0.55 },
      }),
  },
  'severus-denarius': {
    obverse: ({ parts: [text = 'SEVERVS PIVS AVG BRIT'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 206, over: 306 }), ...moved(head({ hair: 'locks', beard: true, wear: 'laurel' }), -4, -2, 1.5)], {
        strike: { x: -8, y: 6, turn: -3 },
        flan: { shape: 'round', uneven: 0.022, edge: 24, thick: 18, cracks: [[300, 36]] },
        surface: { wear: 0.32, tone: 0.5, grain: 0.3, bent: 0.3 },
      }),
    reverse: ({ parts: [text = 'VICTORIAE BRIT'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 206, over: 306 }), ...moved(victory(), 0, -4, 1.3)], {
        strike: { x: 12, y: 4, turn: 6 },
        flan: { shape: 'round', uneven: 0.022, edge: 24, thick: 18 },
        surface: { wear: 0.36, tone: 0.5, grain: 0.3, bent: 0.3 },
      }),
  },
  'caracalla-denarius': {
    obverse: ({ parts: [text = 'ANTONINVS PIVS AVG BRIT'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 206, over: 306 }), ...moved(head({ hair: 'locks', beard: true, wear: 'laurel' }), -4, -2, 1.48)], {
        metal: 'grey',
        strike: { x: 48, y: -30, turn: 8 },
        flan: { shape: 'round', across: 500, down: 480, uneven: 0.024, edge: 24, thick: 18 },
        surface: { wear: 0.34, tone: 0.6, grain: 0.35, bent: 0.3 },
      }),
    reverse: ({ parts: [text = 'LIBERTAS AVG'], hand }) =>
      hammered([border, ...rim(text.split(' ')[0] ?? '', 'roman', hand, { ...legend, from: 206, over: 140 }), ...rim(text.split(' ')[1] ?? '', 'roman', hand, { ...legend, from: 40, over: 100 }), ...moved(robed(LIBERTY), 0, -4, 1.28)], {
        metal: 'grey',
        strike: { x: -62, y: 26, turn: -6 },
        flan: { shape: 'round', across: 480, down: 500, uneven: 0.024, edge: 24, thick: 18, cracks: [[40, 60]] },
        surface: { wear: 0.55, tone: 0.65, grain: 0.4, bent: 0.3, pits: 0.4 },
      }),
  },
  'constantius-follis': {
    obverse: ({ parts: [text = 'DIVO CONSTANTIO PIO'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 208, over: 304 }), ...moved(head({ hair: 'short', beard: true, wear: 'veil', bust: 'drapery' }), 0, -30, 1.34)], {
        metal: 'dark',
        strike: { x: -6, y: 4, turn: -2 },
        flan: { shape: 'round', uneven: 0.014, edge: 20, thick: 15 },
        surface: { wear: 0.38, weak: 0.3, grain: 0.35, pits: 0.35, corrosion: 0.1, tone: 0.5, dirt: 0.5, bent: 0.3, scratches: 0.25 },
      }),
    reverse: ({ parts: [text = 'MEMORIA FELIX'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 224, over: 272 }), { draw: inLine('PLN', PUNCHES.roman, 0, 352, 84, hand), height: 11, round: 7 }, ...moved(altarOfMemory(), 0, 4, 1.24)], {
        metal: 'dark',
        strike: { x: 6, y: -10, turn: 3 },
        flan: { shape: 'round', uneven: 0.014, edge: 20, thick: 15, cracks: [[62, 30]] },
        surface: { wear: 0.4, weak: 0.3, grain: 0.35, pits: 0.4, corrosion: 0.12, tone: 0.5, dirt: 0.5, bent: 0.3, scratches: 0.25 },
      }),
  },
  'constantine-follis': {
    obverse: ({ parts: [text = 'CONSTANTINVS P F AVG'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 208, over: 304 }), ...moved(head({ hair: 'short', wear: 'laurel', bust: 'cuirass', young: true }), 0, -34, 1.36)], {
        metal: 'bronze',
        strike: { x: 4, y: 4, turn: 2 },
        flan: { shape: 'round', uneven: 0.014, edge: 18, thick: 14 },
        surface: { wear: 0.14, weak: 0.15, grain: 0.28, pits: 0.2, corrosion: 0.05, tone: 0.55, dirt: 0.45, bent: 0.3, scratches: 0.2 },
      }),
    reverse: ({ parts: [text = 'SOLI INVICTO COMITI'], hand }) =>
      hammered([border, ...rim(text, 'roman', hand, { ...legend, from: 218, over: 284 }), { draw: box(-250, 268, 500, 8), height: 8, round: 4 }, { draw: inLine('PLN', PUNCHES.roman, 0, 340, 80, hand) + inLine('T', PUNCHES.roman, -210, 20, 88, hand) + inLine('F', PUNCHES.roman, 214, 20, 88, hand), height: 11, round: 7 }, ...moved(sun(), 0, -14, 1.12)], {
        metal: 'bronze',
        strike: { x: -10, y: 6, turn: -4 },
        flan: { shape: 'round', uneven: 0.014, edge: 18, thick: 14 },
        surface: { wear: 0.16, weak: 0.15, grain: 0.28, pits: 0.2, corrosion: 0.06, tone: 0.55, dirt: 0.45, bent: 0.3, scratches: 0.2 },
      }),
  },
  'roman-stray-unlisted': {
    obverse: ({ parts: [text = 'VRBS ROMA'], hand }) =>
      hammered([border, ...rim(text.split(' ')[0] ?? '', 'roman', hand, { ...legend, height: 100, from: 214, over: 130 }), ...rim(text.split(' ')[1] ?? '', 'roman', hand, { ...legend, height: 100, from: 20, over: 110 }), ...turnedRound(moved(head({ hair: 'short', wear: 'helmet', bust: 'drapery', young: true }), 0, -24, 1.36))], {
        metal: 'dark',
        strike: { x: -16, y: 14, turn: 6 },
        flan: { shape: 'round', uneven: 0.03, edge: 26, thick: 20, chips: [[140, 44]] },
        surface: { wear: 0.6, weak: 0.4, grain: 0.5, pits: 0.6, corrosion: 0.3, tone: 0.5, dirt: 0.7, bent: 0.4, scratches: 0.2 },
      }),
    reverse: ({ hand }) =>
      hammered([border, ...moved(wolf(), 0, 20, 1.2), star(-90, -260), star(90, -260), { draw: inLine('TRP', PUNCHES.roman, 0, 340, 92, hand), height: 11, round: 7 }, { draw: box(-260, 262, 520, 9), height: 8, round: 4 }], {
        metal: 'dark',
        strike: { x: 14, y: 18, turn: -5 },
        flan: { shape: 'round', uneven: 0.03, edge: 26, thick: 20 },
        surface: { wear: 0.6, weak: 0.45, grain: 0.5, pits: 0.7, corrosion: 0.34, tone: 0.5, dirt: 0.7, bent: 0.4, scratches: 0.2 },
      }),
  },
};
