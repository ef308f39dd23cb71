import { beaded, hammered, moved, rim } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { longTailedBeast, raisedForelegBeast } from '../motifs/beasts.ts';
import { smallCross } from '../motifs/crosses.ts';
import { beads, crossPattee, dot } from '../shapes.ts';
import type { Surface } from '../surface.ts';

const cross = { draw: smallCross(120), height: 18, round: 17 };
const thick = { edge: 44, thick: 30 } as const;

/** A styca is a thick little lump of copper alloy with a word round a cross. */
function styca(
  surface: Partial<Surface>,
  own: { turn?: number; ring?: boolean; over?: number; cracks?: readonly [number, number][]; isBrown?: boolean } = {},
): (inscription: Inscription) => Face {
  return ({ parts: [text = ''], hand }) =>
    hammered(
      [
        beaded(214, 12, 2.6),
        beaded(486, 13, 2.6),
        ...rim(text, 'stick', hand, { foot: 246, height: 190, from: -18, over: own.over ?? 356 }),
        cross,
        ...(own.ring === true ? [{ draw: beads(160, 8, 19), height: 14, round: 17 }] : []),
      ],
      {
        metal: own.isBrown === true ? 'dark' : 'styca',
        strike: { x: (own.turn ?? 0) * 3, y: 10, turn: own.turn ?? 0, scale: 1.04 },
        flan: { shape: 'round', uneven: 0.026, ...thick, ...(own.cracks === undefined ? {} : { cracks: own.cracks }) },
        surface: {
          wear: 0.4,
          weak: 0.35,
          grain: 0.6,
          pits: 0.7,
          corrosion: 0.16,
          scratches: 0.2,
          bent: 0.4,
          tone: 0.6,
          dirt: 0.6,
          ...surface,
        },
      },
    );
}

export const NORTHUMBRIA: Readonly<Record<string, Recipes>> = {
  'aldfrith-sceat': {
    obverse: ({ parts: [text = '+ALDFRIDVS'], hand }) =>
      hammered(
        [
          beaded(480, 14, 2.5),
          ...rim(text, 'stick', hand, { foot: 262, height: 176, from: -14, over: 356 }),
          { draw: dot(0, 0, 52), height: 26, round: 48 },
          { draw: beads(150, 14, 22), height: 16, round: 20 },
        ],
        {
          strike: { x: -12, y: 14, turn: 5, scale: 1.04 },
          flan: { shape: 'round', uneven: 0.022, ...thick, cracks: [[250, 40]] },
          surface: { wear: 0.28, tone: 0.55, grain: 0.42 },
        },
      ),
    reverse: () =>
      hammered([beaded(480, 14, 2.5), ...moved(longTailedBeast(), 30, 20, 1.12)], {
        strike: { x: 10, y: -6, turn: -6, scale: 1.03 },
        surface: { wear: 0.3, tone: 0.55, grain: 0.42 },
      }),
  },
  'eadberht-sceat': {
    obverse: ({ parts: [text = 'EOTBEREhTVS'], hand }) =>
      hammered(
        [
          beaded(222, 12, 2.6),
          beaded(484, 13, 2.5),
          ...rim(text, 'stick', hand, { foot: 254, height: 180, from: 6, over: 358 }),
          cross,
        ],
        {
          metal: 'grey',
          strike: { x: 24, y: -12, turn: -10, scale: 1.04 },
          flan: { shape: 'round', uneven: 0.028, ...thick },
          surface: { wear: 0.55, weak: 0.5, tone: 0.6, grain: 0.55, pits: 0.6 },
        },
      ),
    reverse: () =>
      hammered(
        [
          beaded(484, 13, 2.5),
          ...moved(raisedForelegBeast(), 0, 0, 1.08),
          { draw: crossPattee(-20, 290, 44), height: 15, round: 12 },
        ],
        {
          metal: 'grey',
          strike: { x: -10, y: 4, turn: 6, scale: 1.02 },
          surface: { wear: 0.55, weak: 0.5, tone: 0.6, grain: 0.55, pits: 0.6 },
        },
      ),
  },
  'eanred-styca': {
    obverse: styca({ wear: 0.45 }, { turn: 4, isBrown: true }),
    reverse: styca({ wear: 0.5, weak: 0.5 }, { turn: -6, ring: true, isBrown: true }),
  },
  'aethelred-styca': {
    obverse: styca({ wear: 0.24, corrosion: 0.08 }, { turn: -3 }),
    reverse: styca({ wear: 0.26, corrosion: 0.1 }, { turn: 8 }),
  },
  'wigmund-styca': {
    obverse: styca({ wear: 0.42, corrosion: 0.22 }, { turn: 6 }),
    reverse: styca({ wear: 0.42, corrosion: 0.2 }, { turn: 2 }),
  },
  'osberht-styca': {
    obverse: styca({ wear: 0.55, corrosion: 0.34, weak: 0.6, pits: 1 }, { turn: -12, cracks: [[200, 70]] }),
    reverse: ({ hand }) =>
      hammered(
        [
          beaded(486, 13, 2.6),
          ...rim('+EANVV', 'stick', hand, { foot: 246, height: 190, from: -18, over: 250 }),
          ...rim('LF', 'stick', hand, { foot: 246, height: 190, from: 234, over: 100 }),
          cross,
          { draw: beads(165, 8, 18), height: 14, round: 17 },
        ],
        {
          metal: 'styca',
          strike: { x: 30, y: 22, turn: 16, scale: 1.05 },
          surface: {
            wear: 0.58,
            weak: 0.6,
            grain: 0.7,
            pits: 1,
            corrosion: 0.36,
            scratches: 0.2,
            bent: 0.5,
            tone: 0.6,
            dirt: 0.7,
          },
        },
      ),
  },
};
