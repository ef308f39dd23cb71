import { between, chanceFrom } from '../chance.ts';
import type { Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { box, fill, place } from '../shapes.ts';

export const SILVER_BY_WEIGHT: Readonly<Record<string, Recipes>> = {
  'ingot-nicked': {
    obverse: () => bar52(true),
    reverse: () => bar52(false),
  },
  'hack-arm-ring': {
    obverse: () => armRing(true),
    reverse: () => armRing(false),
  },
};

const INGOT =
  'M-470 -70Q-496 -10 -474 64Q-460 98 -400 100Q-100 112 120 104Q330 108 430 98Q486 86 494 10Q494 -74 436 -92Q200 -112 -60 -102Q-300 -98 -420 -98Q-462 -98 -470 -70Z';

/** The cast bar, from above (hammered and nicked) or from below (the skin of the mould). */
function bar52(upper: boolean): Face {
  const facets = Array.from(
    { length: 15 },
    (_, at) =>
      `<ellipse cx="${-420 + at * 60}" cy="${(at % 3) * 44 - 44}" rx="52" ry="40" transform="rotate(${at * 37} ${-420 + at * 60} ${(at % 3) * 44 - 44})"/>`,
  ).join('');
  const nick = (x: number, y: number, turn: number): string => place(fill('M-9 -34L9 -34L2 34L-2 34Z'), x, y, 1, turn);
  return {
    alone: true,
    layers: upper
      ? [{ draw: facets, height: 4.2, mode: 'sink', round: 26, soft: true }]
      : [{ draw: '<ellipse cx="20" cy="8" rx="430" ry="50"/>', height: 9, mode: 'sink', round: 40, soft: true }],
    ...(upper
      ? {
          after: [
            {
              draw: nick(-250, -92, 8) + nick(-40, -98, -4) + nick(190, 92, 176) + nick(318, -92, 12),
              height: 20,
              mode: 'sink' as const,
              round: 8,
            },
          ],
        }
      : {}),
    flan: { shape: 'drawn', path: INGOT, edge: 64, thick: 44 },
    metal: 'grey',
    surface: upper
      ? { wear: 0.3, weak: 0, grain: 0.7, pits: 0.5, scratches: 0.9, bent: 0.5, tone: 0.5, dirt: 0.4 }
      : { wear: 0.3, weak: 0, grain: 1.2, pits: 2.2, corrosion: 0.25, scratches: 0.2, bent: 0.8, tone: 0.7, dirt: 0.5 },
  };
}

/** A band cut from an arm-ring, with its two rows of stamped bars, or its plain back. */
function armRing(front: boolean): Face {
  const chance = chanceFrom('stamps');
  const stamp = (x: number, y: number): string =>
    place(
      fill('M-10 -40L10 -42L12 40L-11 42Z'),
      x + between(chance, -4, 4),
      y + between(chance, -5, 5),
      1,
      between(chance, -5, 5),
    );
  const stamps = Array.from({ length: 17 }, (_, at) => stamp(-426 + at * 53, -62) + stamp(-414 + at * 53, 62)).join('');
  return {
    alone: true,
    layers: [],
    after: front
      ? [
          { draw: stamps, height: 8, mode: 'sink', round: 12 },
          { draw: box(-470, -4, 940, 9), height: 4, mode: 'sink', round: 5 },
        ]
      : [
          { draw: place(fill('M-13 -90L13 -90L3 90L-3 90Z'), 96, -110, 1, 9), height: 15, mode: 'sink', round: 13 },
          {
            draw: Array.from(
              { length: 12 },
              (_, at) => `<ellipse cx="${-400 + at * 72}" cy="${(at % 2) * 110 - 55}" rx="58" ry="52"/>`,
            ).join(''),
            height: 4,
            mode: 'sink',
            round: 30,
            soft: true,
          },
        ],
    flan: {
      shape: 'drawn',
      path: front
        ? 'M-486 -128L-452 -150Q-100 -168 180 -158L440 -166L490 154Q200 176 -60 164Q-300 172 -470 156Z'
        : 'M486 -128L452 -150Q100 -168 -180 -158L-440 -166L-490 154Q-200 176 60 164Q300 172 470 156Z',
      edge: 24,
      thick: 22,
    },
    metal: 'grey',
    surface: { wear: 0.4, weak: 0, grain: 0.5, pits: 0.5, scratches: 1, bent: 0.9, tone: 0.6, dirt: 0.45 },
  };
}
