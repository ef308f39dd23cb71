import { beaded, hammered, moved, rim, turnedRound } from '../die.ts';
import type { Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { altarOfMemory, sun } from '../motifs/gods.ts';
import { head } from '../motifs/heads.ts';
import { wolf } from '../motifs/beasts.ts';
import { bar, box, dot, oval, round } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import type { Layer } from '../relief.ts';

const border = beaded(472, 9.5, 2.5);
const legend = { foot: 352, height: 86 } as const;

function star(x: number, y: number): Layer {
  return {
    draw: `<g transform="translate(${x} ${y})">${round(bar(0, 0, 0, -34, 5, 5, 9), 8)}${dot(0, 0, 10)}</g>`,
    height: 10,
    round: 5,
  };
}

export const LATE_ROME: Readonly<Record<string, Recipes>> = {
  'constantius-follis': {
    obverse: ({ parts: [text = 'DIVO CONSTANTIO PIO'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 208, over: 304 }),
          ...moved(head({ hair: 'short', beard: true, wear: 'veil', bust: 'drapery' }), 0, -30, 1.34),
        ],
        {
          metal: 'dark',
          strike: { x: -6, y: 4, turn: -2 },
          flan: { shape: 'round', uneven: 0.014, edge: 20, thick: 15 },
          surface: {
            wear: 0.38,
            weak: 0.3,
            grain: 0.35,
            pits: 0.35,
            corrosion: 0.1,
            tone: 0.5,
            dirt: 0.5,
            bent: 0.3,
            scratches: 0.25,
          },
        },
      ),
    reverse: ({ parts: [text = 'MEMORIA FELIX'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 224, over: 272 }),
          { draw: inLine('PLN', PUNCHES.roman, 0, 352, 84, hand), height: 11, round: 7 },
          ...moved(altarOfMemory(), 0, 4, 1.24),
        ],
        {
          metal: 'dark',
          strike: { x: 6, y: -10, turn: 3 },
          surface: {
            wear: 0.4,
            weak: 0.3,
            grain: 0.35,
            pits: 0.4,
            corrosion: 0.12,
            tone: 0.5,
            dirt: 0.5,
            bent: 0.3,
            scratches: 0.25,
          },
        },
      ),
  },
  'constantine-follis': {
    obverse: ({ parts: [text = 'CONSTANTINVS P F AVG'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 208, over: 304 }),
          ...moved(head({ hair: 'short', wear: 'laurel', bust: 'cuirass', young: true }), 0, -34, 1.36),
        ],
        {
          metal: 'bronze',
          strike: { x: 4, y: 4, turn: 2 },
          flan: { shape: 'round', uneven: 0.014, edge: 18, thick: 14 },
          surface: {
            wear: 0.14,
            weak: 0.15,
            grain: 0.28,
            pits: 0.2,
            corrosion: 0.05,
            tone: 0.55,
            dirt: 0.45,
            bent: 0.3,
            scratches: 0.2,
          },
        },
      ),
    reverse: ({ parts: [text = 'SOLI INVICTO COMITI'], hand }) =>
      hammered(
        [
          border,
          ...rim(text, 'roman', hand, { ...legend, from: 218, over: 284 }),
          { draw: box(-250, 268, 500, 8), height: 8, round: 4 },
          {
            draw:
              inLine('PLN', PUNCHES.roman, 0, 340, 80, hand) +
              inLine('T', PUNCHES.roman, -210, 20, 88, hand) +
              inLine('F', PUNCHES.roman, 214, 20, 88, hand),
            height: 11,
            round: 7,
          },
          ...moved(sun(), 0, -14, 1.12),
        ],
        {
          metal: 'bronze',
          strike: { x: -10, y: 6, turn: -4 },
          surface: {
            wear: 0.16,
            weak: 0.15,
            grain: 0.28,
            pits: 0.2,
            corrosion: 0.06,
            tone: 0.55,
            dirt: 0.45,
            bent: 0.3,
            scratches: 0.2,
          },
        },
      ),
  },
  'roman-stray-unlisted': {
    obverse: ({ parts: [text = 'VRBS ROMA'], hand }) =>
      hammered(
        [
          border,
          ...rim(text.split(' ')[0] ?? '', 'roman', hand, { ...legend, height: 100, from: 214, over: 130 }),
          ...rim(text.split(' ')[1] ?? '', 'roman', hand, { ...legend, height: 100, from: 20, over: 110 }),
          ...turnedRound(moved(head({ hair: 'short', wear: 'helmet', bust: 'drapery', young: true }), 0, -24, 1.36)),
        ],
        {
          metal: 'dark',
          strike: { x: -16, y: 14, turn: 6 },
          flan: { shape: 'round', uneven: 0.03, edge: 26, thick: 20, chips: [[140, 44]] },
          surface: {
            wear: 0.6,
            weak: 0.4,
            grain: 0.5,
            pits: 0.6,
            corrosion: 0.3,
            tone: 0.5,
            dirt: 0.7,
            bent: 0.4,
            scratches: 0.2,
          },
        },
      ),
    reverse: ({ hand }) =>
      hammered(
        [
          border,
          ...moved(wolf(), 0, 20, 1.2),
          star(-90, -260),
          star(90, -260),
          { draw: inLine('TR', PUNCHES.roman, -42, 340, 92, hand), height: 11, round: 7 },
          // The crust over what should follow.
          { draw: oval(78, 336, 62, 46, -12) + oval(112, 352, 40, 34), height: 8, mode: 'over', round: 22 },
          { draw: box(-260, 262, 520, 9), height: 8, round: 4 },
        ],
        {
          metal: 'dark',
          strike: { x: 14, y: 18, turn: -5 },
          surface: {
            wear: 0.6,
            weak: 0.45,
            grain: 0.5,
            pits: 0.7,
            corrosion: 0.34,
            tone: 0.5,
            dirt: 0.7,
            bent: 0.4,
            scratches: 0.2,
          },
        },
      ),
  },
};
