import { beaded, hammered, moved, rim, turnedRound } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { inLine } from '../lettering.ts';
import { smallCross } from '../motifs/crosses.ts';
import { hammer, quatrefoil, raven, saxonBust, vikingSword, voidedCross } from '../motifs/saxon.ts';
import type { Layer } from '../relief.ts';
import { bar, box, crossPattee, dot, fill, place, ring, round } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import type { Surface } from '../surface.ts';

const W = PUNCHES.wedge;
const outer = beaded(484, 8.5);
const rims = { foot: 306, height: 138, from: -10, over: 357 } as const;
const bustRims = { foot: 322, height: 122 } as const;
const skinOf = (wear: number, more: Partial<Surface> = {}): Partial<Surface> => ({ wear, grain: 0.36, ...more });

function word(text: string, x: number, y: number, height: number, inscription: Inscription, most?: number): Layer {
  return { draw: inLine(text, W, x, y, height, inscription.hand, most), height: 14, round: 11 };
}

/** A legend round a small cross: half of all the pennies of the tenth century. */
function crossFace(own: Parameters<typeof hammered>[1], extra: readonly Layer[] = [], inner = 272): (inscription: Inscription) => Face {
  return ({ parts: [text = ''], hand }) =>
    hammered([beaded(inner), outer, ...rim(text, 'wedge', hand, { ...rims, foot: inner + 30, height: 146 }), { draw: smallCross(inner * 0.46), height: 16, round: 14 }, ...extra], own);
}

/** The saint's name in two lines. */
function twoLines(inscription: Inscription, between: readonly Layer[], lines: readonly [string, string], high: number): Layer[] {
  return [outer, word(lines[0], 0, -high, 150, inscription, 720), word(lines[1], 0, high, 150, inscription, 720), ...between];
}

export const JORVIK: Readonly<Record<string, Recipes>> = {
  'viking-cnut-penny': {
    obverse: ({ hand }) => {
      const one = (text: string, x: number, y: number): Layer => ({ draw: inLine(text, W, x, y, 126, hand), height: 14, round: 11 });
      return hammered(
        [outer, { draw: bar(0, -300, 0, 316, 26, 64, 64) + bar(-160, -150, 160, -150, 26, 60, 60) + bar(-300, 40, 300, 40, 26, 64, 64), height: 15, round: 13 }, one('C', 0, -388), one('N', 396, 40), one('V', 0, 398), one('T', -396, 40), one('R', -214, -262), one('E', 216, -262), one('X', 216, 240), { draw: dot(-216, 240, 24) + dot(-270, -60, 17) + dot(272, -60, 17), height: 16, round: 22 }],
        { strike: { x: 4, y: -6, turn: 3 }, surface: skinOf(0.26, { pecks: 0.8 }) },
      );
    },
    reverse: crossFace({ strike: { x: -8, y: 6, turn: -5 }, surface: skinOf(0.28, { pecks: 0.6 }) }, [{ draw: dot(78, -78, 24) + dot(-78, 78, 24), height: 16, round: 22 }]),
  },
  'st-peter-swordless': {
    obverse: (inscription) =>
      hammered(twoLines(inscription, [{ draw: crossPattee(-150, 0, 50) + crossPattee(0, 0, 50) + crossPattee(150, 0, 50) + dot(-250, 0, 24) + dot(250, 0, 24), height: 15, round: 12 }, { draw: dot(0, -330, 24) + dot(-60, -310, 22) + dot(60, -310, 22) + dot(0, 340, 24) + dot(-60, 320, 22) + dot(60, 320, 22), height: 15, round: 20 }], ['SCIIE', 'TRIMO'], 156), { strike: { x: 6, y: 4, turn: -4 }, flan: { shape: 'round', across: 500, down: 486, uneven: 0.016 }, surface: skinOf(0.34) }),
    reverse: crossFace({ strike: { x: -14, y: -6, turn: 8 }, flan: { shape: 'round', across: 486, down: 500, uneven: 0.016, cracks: [[56, 60]] }, surface: skinOf(0.36) }),
  },
  'st-peter-sword': {
    obverse: (inscription) =>
      hammered(twoLines(inscription, [...moved(vikingSword(), 10, 0, 1.2), { draw: place(hammer(60), 130, 84, 0.9), height: 14, round: 12 }], ['SCIIIE', 'TRIMO'], 200), { strike: { x: -10, y: 8, turn: 5 }, surface: skinOf(0.48, { bent: 1.3, weak: 0.5 }), flan: { shape: 'round', uneven: 0.018, cracks: [[300, 70]] } }),
    reverse: ({ parts: [text = '+EBRAICIT'], hand }) =>
      hammered([beaded(272), outer, ...rim(text, 'wedge', hand, { ...rims, foot: 302, height: 146 }), { draw: hammer(176) + dot(-130, -90, 24) + dot(130, -90, 24), height: 17, round: 16 }], { strike: { x: 12, y: 0, turn: -9 }, surface: skinOf(0.5, { bent: 1.3, weak: 0.5 }), flan: { shape: 'round', uneven: 0.018, cracks: [[60, 70]] } }),
  },
  'raven-replica': {
    obverse: ({ parts: [text = '+ANLAF CVNVNC'], hand }) => ({
      ...hammered([beaded(300), outer, ...rim(text, 'wedge', hand, { ...rims, foot: 324, height: 118 }), ...moved(raven(), 0, -4, 1.14)], { metal: 'pewter', flan: { shape: 'round', uneven: 0.006, edge: 18, thick: 15 }, surface: { wear: 0.3, weak: 0.05, grain: 0.24, pits: 0.5, scratches: 0.3, bent: 0.15, tone: 0.55, dirt: 0.2 } }),
      after: [{ draw: inLine('COPY', PUNCHES.milled, 0, 262, 46, hand), height: 11, mode: 'sink' as const, round: 3 }],
    }),
    reverse: ({ parts: [text = '+AÐELFERD MINETR'], hand }) =>
      hammered([beaded(286), outer, ...rim(text, 'wedge', hand, { ...rims, foot: 312, height: 130 }), { draw: smallCross(130), height: 15, round: 13 }], { metal: 'pewter', flan: { shape: 'round', uneven: 0.006, edge: 18, thick: 15 }, surface: { wear: 0.3, weak: 0.05, grain: 0.24, pits: 0.5, scratches: 0.3, bent: 0.15, tone: 0.55, dirt: 0.2 } }),
  },
  'ingot-nicked': {
    obverse: () => bar52(true),
    reverse: () => bar52(false),
  },
  'hack-arm-ring': {
    obverse: () => armRing(true),
    reverse: () => armRing(false),
  },
  'athelstan-york-penny': {
    obverse: crossFace({ strike: { x: 0, y: 4, turn: 2 }, surface: skinOf(0.24) }, [], 286),
    reverse: crossFace({ strike: { x: 8, y: -4, turn: -6 }, surface: skinOf(0.26) }, [], 286),
  },
  'edgar-york-penny': {
    obverse: ({ parts: [text = '+EADGAR REX ANGLO[RX]'], hand }) =>
      hammered([beaded(306), outer, ...rim(text, 'wedge', hand, { ...bustRims, foot: 330 }), ...turnedRound(moved(saxonBust({ wear: 'diadem' }), 0, -12, 0.98))], { strike: { x: 0, y: 0, turn: -3 }, flan: { shape: 'round', uneven: 0.014, chips: [[318, 62]] }, surface: skinOf(0.5) }),
    reverse: crossFace({ strike: { x: 8, y: 6, turn: 4 }, flan: { shape: 'round', uneven: 0.014, chips: [[330, 62]] }, surface: skinOf(0.52, { weak: 0.5 }) }),
  },
  'aethelred-crux-penny': {
    obverse: ({ parts: [text = '+ÆÐELRÆD REX ANGLOX'], hand }) =>
      hammered([outer, ...rim(text, 'wedge', hand, { ...bustRims, from: 14, over: 330 }), ...turnedRound(moved(saxonBust({ wear: 'bare', sceptre: 'cross' }), -6, 6, 1.06))], { strike: { x: 4, y: 2, turn: 2 }, surface: skinOf(0.32, { pecks: 0.8 }) }),
    reverse: (inscription) =>
      hammered([beaded(296), outer, ...rim(inscription.parts[0] ?? '', 'wedge', inscription.hand, { ...rims, foot: 322, height: 122 }), { draw: voidedCross(290, 26, 15), height: 13, round: 9 }, ...['C', 'R', 'V', 'X'].map((sign, at) => word(sign, [-138, 138, 138, -138][at] ?? 0, [-138, -138, 138, 138][at] ?? 0, 112, inscription))], { strike: { x: -6, y: 6, turn: -8 }, surface: skinOf(0.32, { pecks: 1 }) }),
  },
  'cnut-quatrefoil-penny': {
    obverse: ({ parts: [text = '+CNVT REX ANGLORV'], hand }) =>
      hammered([outer, ...rim(text, 'wedge', hand, { ...bustRims, foot: 338, height: 112, from: 10, over: 342 }), { draw: quatrefoil(150, 176), height: 11, round: 7 }, ...turnedRound(moved(saxonBust({ wear: 'crown' }), 0, 20, 0.92))], { strike: { x: -6, y: 4, turn: 4 }, surface: skinOf(0.38) }),
    reverse: ({ parts: [text = '+FARGRIM M-O EOF'], hand }) =>
      hammered([outer, ...rim(text, 'wedge', hand, { ...rims, foot: 326, height: 122 }), { draw: quatrefoil(150, 140), height: 11, round: 7 }, { draw: voidedCross(466, 20, 14, 'pellets') + ring(0, 0, 34, 14), height: 12, round: 9 }, { draw: dot(0, 0, 15), height: 12, round: 13 }], { strike: { x: 6, y: 0, turn: -4 }, surface: skinOf(0.38), flan: { shape: 'round', uneven: 0.014, cracks: [[132, 50]] } }),
  },
  'edward-confessor-penny': {
    obverse: ({ parts: [text = 'EADPARD REX'], hand }) =>
      hammered([outer, ...rim(text, 'wedge', hand, { ...bustRims, from: 214, over: 292 }), ...moved(saxonBust({ wear: 'arches', beard: true, sceptre: 'trefoil' }), -12, 30, 1.04)], { strike: { x: 0, y: -4, turn: -2 }, surface: skinOf(0.28) }),
    reverse: ({ parts: [text = '+ÐORR ON EOFERPIC'], hand }) => {
      const pyramid = (turn: number): string => place(bar(0, -30, 0, -170, 15, 18, 14) + bar(-52, -176, 52, -176, 15, 20) + fill('M-52 -184L0 -126L52 -184Z') + dot(0, -206, 17), 0, 0, 1, turn);
      return hammered([beaded(276), outer, ...rim(text, 'wedge', hand, { ...rims, foot: 302, height: 138 }), { draw: voidedCross(262, 24, 15, 'crescents'), height: 13, round: 9 }, { draw: pyramid(45) + pyramid(135) + pyramid(225), height: 13, round: 9 }, { draw: place(ring(0, -168, 34, 17), 0, 0, 1, 315), height: 13, round: 8 }], { strike: { x: 8, y: 4, turn: 6 }, surface: skinOf(0.3) });
    },
  },
  'harold-ii-pax-penny': {
    obverse: ({ parts: [text = '+HAROLD REX ANG'], hand }) =>
      hammered([outer, ...rim(text, 'wedge', hand, { ...bustRims, from: 26, over: 308 }), ...turnedRound(moved(saxonBust({ wear: 'arches', beard: true, sceptre: 'pellets', drapery: false }), -14, 64, 1.2))], { strike: { x: 6, y: 2, turn: 3 }, surface: skinOf(0.32) }),
    reverse: (inscription) =>
      hammered([beaded(280), outer, ...rim(inscription.parts[0] ?? '', 'wedge', inscription.hand, { ...rims, foot: 306, height: 136 }), { draw: box(-262, -102, 524, 13) + box(-262, 90, 524, 13) + beadLine(-128) + beadLine(130), height: 11, round: 7 }, word(inscription.parts[1] ?? 'PAX', 0, 0, 146, inscription)], { strike: { x: -4, y: 0, turn: -5 }, surface: skinOf(0.32) }),
  },
};

function beadLine(y: number): string {
  return Array.from({ length: 19 }, (_, at) => dot(-216 + at * 24, y, 9)).join('');
}

const INGOT = 'M-470 -70Q-496 -10 -474 64Q-460 98 -400 100Q-100 112 120 104Q330 108 430 98Q486 86 494 10Q494 -74 436 -92Q200 -112 -60 -102Q-300 -98 -420 -98Q-462 -98 -470 -70Z';

/** The cast bar, from above (hammered and nicked) or from below (the skin of the mould). */
function bar52(upper: boolean): Face {
  const facets = Array.from({ length: 15 }, (_, at) => `<ellipse cx="${-420 + at * 60}" cy="${(at % 3) * 44 - 44}" rx="52" ry="40" transform="rotate(${at * 37} ${-420 + at * 60} ${(at % 3) * 44 - 44})"/>`).join('');
  const nick = (x: number, y: number, turn: number): string => place(fill('M-9 -34L9 -34L2 34L-2 34Z'), x, y, 1, turn);
  return {
    layers: upper ? [{ draw: facets, height: 3.2, mode: 'sink', round: 40 }] : [{ draw: '<ellipse cx="20" cy="8" rx="430" ry="60"/>', height: 6, mode: 'sink', round: 60 }],
    ...(upper ? { after: [{ draw: nick(-250, -92, 8) + nick(-40, -98, -4) + nick(190, 92, 176) + nick(318, -92, 12), height: 20, mode: 'sink' as const, round: 8 }] } : {}),
    flan: { shape: 'drawn', path: upper ? INGOT : `${INGOT}`, edge: 64, thick: 44 },
    metal: 'grey',
    surface: upper ? { wear: 0.3, weak: 0, grain: 0.7, pits: 0.5, scratches: 0.9, bent: 0.5, tone: 0.5, dirt: 0.4 } : { wear: 0.3, weak: 0, grain: 1.2, pits: 2.2, corrosion: 0.25, scratches: 0.2, bent: 0.8, tone: 0.7, dirt: 0.5 },
  };
}

/** A band cut from an arm-ring, with its two rows of stamped bars, or its plain back. */
function armRing(front: boolean): Face {
  const stamps = Array.from({ length: 17 }, (_, at) => box(-436 + at * 53, -104, 22, 88) + box(-424 + at * 53, 20, 22, 88)).join('');
  return {
    layers: [],
    after: front
      ? [{ draw: stamps, height: 11, mode: 'sink', round: 9 }, { draw: round('', 1) + box(-470, -4, 940, 9), height: 4, mode: 'sink', round: 5 }]
      : [{ draw: place(fill('M-13 -90L13 -90L3 90L-3 90Z'), 96, -110, 1, 9), height: 26, mode: 'sink', round: 11 }, { draw: Array.from({ length: 12 }, (_, at) => `<ellipse cx="${-400 + at * 72}" cy="${(at % 2) * 110 - 55}" rx="58" ry="52"/>`).join(''), height: 2.6, mode: 'sink', round: 44 }],
    flan: { shape: 'drawn', path: front ? 'M-486 -128L-452 -150Q-100 -168 180 -158L440 -166L490 154Q200 176 -60 164Q-300 172 -470 156Z' : 'M486 -128L452 -150Q100 -168 -180 -158L-440 -166L-490 154Q-200 176 60 164Q300 172 470 156Z', edge: 24, thick: 22 },
    metal: 'grey',
    surface: { wear: 0.4, weak: 0, grain: 0.5, pits: 0.5, scratches: 1, bent: 0.9, tone: 0.6, dirt: 0.45 },
  };
}
