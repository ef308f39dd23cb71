import { beaded, hammered, milled, moved, rim, rimBand, toothed, turnedRound } from '../die.ts';
import type { Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { inLine } from '../lettering.ts';
import { cliffordsTower, minsterBurning, westFront } from '../motifs/buildings.ts';
import { wreath } from '../motifs/east.ts';
import { head } from '../motifs/heads.ts';
import { saintGeorge, saintMichael } from '../motifs/riders.ts';
import { CROWN, rose } from '../motifs/royal.ts';
import type { Layer } from '../relief.ts';
import { bar, beads, box, crescent, dot, fill, leaf, oval, place, ring, round, stroke } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';

const lily = leaf(0, -34, 76, 30, 90) + crescent(-22, -8, 20, 26, 95, 290, 15) + crescent(22, -8, 20, 26, -110, 85, 15) + box(-24, 4, 48, 9) + bar(0, 6, 0, 34, 10, 18);
const line = (text: string, y: number, high: number, hand: () => number, most = 620): Layer => ({ draw: inLine(text, PUNCHES.milled, 0, y, high, hand, most), height: 9, round: 5 });

/** Lines engraved by hand: cut in, thick and thin, with a burr. */
const engraved = (draw: string, depth = 8, soft = 4): Layer => ({ draw, height: depth, mode: 'sink', round: soft });

/** A flowing hand: capitals T and M as a country engraver made them. */
const SCRIPT_T = stroke('M-84 -74Q-40 -110 0 -84Q40 -60 84 -92', 13) + stroke('M6 -84Q20 0 -10 66Q-40 96 -70 66Q-74 44 -50 44', 15) + stroke('M-84 -74Q-100 -50 -78 -40', 8) + stroke('M84 -92Q104 -110 90 -124', 6) + stroke('M-40 0Q0 -14 44 0', 6);
const SCRIPT_M = stroke('M-110 66Q-80 90 -66 40Q-50 -40 -44 -84', 9) + stroke('M-44 -84Q-20 -20 -6 50', 16) + stroke('M-6 50Q20 -30 44 -84', 8) + stroke('M44 -84Q40 0 64 56Q84 84 110 50', 15) + stroke('M-44 -84Q-80 -110 -100 -70Q-96 -46 -76 -58', 7);
const HEART = 'M0 76Q-96 4 -78 -44Q-50 -84 0 -34Q50 -84 78 -44Q96 4 0 76Z';
const spray = stroke('M0 0Q70 -50 170 -30', 6) + [0, 1, 2, 3, 4].map((at) => leaf(30 + at * 32, -26 - at * 4 - (at % 2) * 14, 50, 19, at % 2 === 0 ? -50 : 30)).join('') + dot(186, -30, 10);

function ship(): string {
  const hull = stroke('M-250 110Q-230 190 -150 196L170 196Q220 180 260 96', 11) + stroke('M-250 110Q-100 140 60 132Q180 126 260 96', 8) + stroke('M-236 146Q0 172 240 136', 5) + [-160, -100, -40, 20, 80, 140].map((x) => box(x - 8, 140, 16, 13)).join('');
  const masts = stroke('M-140 120L-140 -190M10 130L10 -250M150 120L150 -180M-250 110L-340 50', 8);
  const sail = (x: number, y: number, wide: number, high: number): string => stroke(`M${x - wide} ${y}L${x + wide} ${y}Q${x + wide + 24} ${y + high / 2} ${x + wide + 8} ${y + high}Q${x} ${y + high - 22} ${x - wide - 8} ${y + high}Q${x - wide + 16} ${y + high / 2} ${x - wide} ${y}`, 6) + stroke(`M${x - wide * 0.4} ${y + 6}Q${x - wide * 0.3} ${y + high / 2} ${x - wide * 0.4} ${y + high - 12}M${x + wide * 0.4} ${y + 6}Q${x + wide * 0.56} ${y + high / 2} ${x + wide * 0.4} ${y + high - 12}`, 3);
  const sails = sail(-140, -160, 50, 90) + sail(-140, -60, 62, 130) + sail(10, -220, 54, 100) + sail(10, -110, 74, 190) + sail(150, -150, 46, 86) + sail(150, -56, 56, 120);
  const flags = stroke('M-140 -190Q-180 -200 -200 -186M10 -250Q-40 -262 -60 -246M150 -180Q110 -190 90 -176', 9);
  const sea = [0, 1, 2].map((row) => stroke(`M${-300 + row * 30} ${216 + row * 24}${Array.from({ length: 9 - row }, () => 'q33 -22 66 0').join('')}`, 6)).join('');
  return hull + masts + sails + flags + sea + stroke('M-340 50L-140 -150M-140 -190L10 -120M10 -240L150 -120M150 -180L256 100', 3);
}

function loveToken(face: 'obverse' | 'reverse', layers: readonly Layer[]): Face {
  return {
    layers: face === 'obverse' ? [{ draw: rimBand(498, 440), height: 9, round: 16 }, ...moved(head({ hair: 'long', wear: 'laurel', bust: 'drapery' }), 0, 0, 1.4).map((layer) => ({ ...layer, height: layer.height * 0.045 }))] : [{ draw: rimBand(498, 436), height: 9, round: 16 }],
    after: layers,
    flan: { shape: 'round', edge: 16, thick: 18, holes: [[0, face === 'obverse' ? -404 : -404, 26]] },
    metal: 'copper',
    surface: { wear: 0.5, weak: 0.1, grain: 0.16, pits: 0.15, scratches: 1, bent: 0.25, tone: 0.55, dirt: 0.4 },
  };
}

const MEDAL = { metal: 'pewter', surface: { wear: 0.22, weak: 0.05, grain: 0.12, pits: 0.15, scratches: 0.7, bent: 0.15, tone: 0.55, dirt: 0.25 } } as const;
const bruise = (angle: number): Layer => ({ draw: place(oval(0, -496, 46, 26), 0, 0, 1, angle), height: 15, mode: 'sink', round: 22 });

export const KIN: Readonly<Record<string, Recipes>> = {
  'york-token-1666': {
    obverse: ({ parts: [text = 'MARMADVKE SKELDER'], hand }) =>
      hammered([beaded(322, 8), beaded(480, 9), ...rim(text, 'roman', hand, { foot: 344, height: 104, from: 6, over: 350, space: 40 }), { draw: fill('M60 -214Q-190 -190 -190 10Q-190 200 60 226Q-40 150 -44 92L4 66Q-20 58 -22 44L-4 34Q-26 20 -18 10L34 -6Q0 -40 -14 -66Q-20 -140 60 -214Z'), height: 17, round: 34 }, { draw: crescent(-66, -36, 34, 20, 190, 350, 11) + dot(-60, -30, 11) + stroke('M-96 60Q-70 84 -40 70', 8), height: 7, round: 5 }, { draw: place(round(bar(0, 0, 0, -40, 9, 14, 3), 6), 150, -90) + place(round(bar(0, 0, 0, -40, 9, 14, 3), 6), 170, 90), height: 13, round: 8 }], { metal: 'brass', strike: { x: 6, y: -4, turn: 3 }, surface: { wear: 0.54, grain: 0.4, pits: 0.5, corrosion: 0.08, tone: 0.75, dirt: 0.5 }, flan: { shape: 'round', uneven: 0.012 } }),
    reverse: ({ parts: [text = 'IN YORKE 1666'], hand }) =>
      hammered([beaded(322, 8), beaded(480, 9), ...rim(`${text} *`, 'roman', hand, { foot: 344, height: 104, from: 6, over: 350, space: 40 }), { draw: inLine('S', PUNCHES.roman, 0, -96, 150, hand) + inLine('M', PUNCHES.roman, -112, 110, 150, hand) + inLine('A', PUNCHES.roman, 112, 110, 150, hand) + dot(0, 110, 17), height: 14, round: 9 }], { metal: 'brass', strike: { x: -8, y: 6, turn: -5 }, surface: { wear: 0.54, grain: 0.4, pits: 0.5, corrosion: 0.1, tone: 0.75, dirt: 0.5 }, flan: { shape: 'round', uneven: 0.012, cracks: [[96, 36]] } }),
  },
  'lead-token': {
    obverse: () => ({
      layers: [{ draw: bar(-4, -330, 8, 350, 44, 54, 50) + bar(-340, 12, 336, -8, 42, 50, 54), height: 20, round: 24 }, { draw: dot(-166, -170, 56) + dot(170, -160, 52) + dot(-160, 176, 54) + dot(174, 170, 58), height: 24, round: 50 }, { draw: ring(0, 0, 420, 34), height: 15, round: 17 }, { draw: beads(470, 30, 17), height: 9, round: 15 }],
      flan: { shape: 'round', across: 500, down: 478, uneven: 0.03, edge: 46, thick: 28, chips: [[250, 30]] },
      strike: { x: 16, y: -10, turn: 9, scale: 1 },
      metal: 'lead',
      surface: { wear: 0.6, weak: 0.5, grain: 0.9, pits: 1.2, corrosion: 0.3, scratches: 0.6, bent: 1, tone: 0.6, dirt: 0.45 },
    }),
  },
  'jeton-rose-orb': {
    obverse: ({ parts: [text = 'HANNS KRAVWINCKEL IN NVR'], hand }) =>
      hammered([beaded(340, 7), beaded(480, 8), ...rim(text, 'roman', hand, { foot: 358, height: 92, from: 4, over: 352, space: 34 }), { draw: rose(70), height: 14, round: 9 }, { draw: round(place(CROWN, 0, -196, 0.74), 3) + round(place(lily, 0, -196, 1), 3, 60), height: 12, round: 7 }], { metal: 'brass', strike: { x: 4, y: 4, turn: 4 }, surface: { wear: 0.34, grain: 0.24, tone: 0.6, bent: 0.7 }, flan: { shape: 'round', uneven: 0.009, edge: 8, thick: 7 } }),
    reverse: ({ parts: [text = 'GOTES GABEN SOL MAN LOB'], hand }) =>
      hammered([beaded(340, 7), beaded(480, 8), ...rim(text, 'roman', hand, { foot: 358, height: 92, from: 4, over: 352, space: 34 }), { draw: round(crescent(0, -166, 122, 122, 168, 372, 16, 0.8), 3) + round(fill('M-40 -150L0 -250L40 -150L24 -146L0 -206L-24 -146Z'), 3, 60), height: 12, round: 7 }, { draw: dot(0, 44, 104), height: 19, round: 90 }, { draw: stroke('M-104 44L104 44M0 44L0 -58', 17) + bar(0, -60, 0, -164, 15, 22, 34) + bar(-46, -118, 46, -118, 14, 30), height: 11, round: 8 }], { metal: 'brass', strike: { x: -8, y: 2, turn: -6 }, surface: { wear: 0.36, grain: 0.24, tone: 0.6, bent: 0.7 }, flan: { shape: 'round', uneven: 0.009, edge: 8, thick: 7 } }),
  },
  'coin-weight-angel': {
    obverse: () =>
      hammered([{ draw: beads(436, 60, 12), height: 11, round: 11 }, ...moved(saintMichael(), 0, 0, 1.26)], { metal: 'brass', strike: { x: 6, y: -4, turn: 3 }, flan: { shape: 'square', across: 486, down: 480, uneven: 0.008, edge: 34, thick: 26, snips: [] }, surface: { wear: 0.6, weak: 0.3, grain: 0.4, pits: 0.6, scratches: 0.9, bent: 0.2, tone: 0.8, dirt: 0.5 } }),
    reverse: ({ hand }) =>
      hammered([{ draw: ring(0, 0, 436, 13), height: 9, round: 7 }, { draw: fill('M-96 230L-110 40Q-190 -20 -196 -70Q-176 -100 -150 -66L-104 -20L-112 -190Q-96 -226 -74 -190L-52 -40L-40 -230Q-20 -266 2 -230L6 -40L36 -214Q60 -244 76 -206L62 -20L104 -136Q130 -160 138 -124L110 60L92 230Z'), height: 17, round: 30 }, { draw: inLine('I', PUNCHES.roman, -270, 40, 130, hand) + inLine('R', PUNCHES.roman, 270, 40, 130, hand), height: 4, round: 9 }, { draw: place(CROWN, 0, -330, 0.7), height: 11, round: 8 }], { metal: 'brass', strike: { x: -10, y: 6, turn: -7 }, flan: { shape: 'square', across: 486, down: 480, uneven: 0.008, edge: 34, thick: 26 }, surface: { wear: 0.7, weak: 0.6, grain: 0.45, pits: 0.7, scratches: 0.9, bent: 0.2, tone: 0.8, dirt: 0.5 } }),
  },
  'love-token-1797': {
    obverse: () =>
      loveToken('obverse', [
        engraved(place(SCRIPT_T, -196, -10, 1.35) + place(SCRIPT_M, 196, -10, 1.3)),
        engraved(stroke(HEART, 9) + place(stroke(HEART, 5), 0, 2, 0.78) + stroke('M-110 70L-60 30M60 -40L116 -90', 7) + fill('M116 -90L84 -86L110 -60Z') + stroke('M-110 70L-134 74M-104 64L-108 92', 5), 8, 3),
        engraved(place(spray, 20, 190, 1.4, 10) + `<g transform="scale(-1 1)">${place(spray, 20, 190, 1.4, 10)}</g>` + place(spray, 40, -220, 1.1, -24) + `<g transform="scale(-1 1)">${place(spray, 40, -220, 1.1, -24)}</g>`, 7, 3),
        engraved(ring(0, 0, 420, 5) + round(leaf(0, -404, 26, 7, 90), 60), 5, 3),
      ]),
    reverse: ({ parts: [text = ''], hand }) =>
      loveToken('reverse', [
        engraved(place(ship(), 0, 20, 1.02), 8, 3),
        ...rim(text, 'roman', hand, { foot: 376, height: 60, from: 14, over: 332, space: 50 }).map((layer) => engraved(layer.draw, 7, 3)),
      ]),
  },
  'york-halfpenny-1795': {
    obverse: ({ parts: [text = 'YORK 1795'], hand }) =>
      milled([...toothed(490, 18, 130), ...rim(text.split(' ')[0] ?? '', 'milled', hand, { foot: 384, height: 76, from: -60, over: 120, set: 'middle' }), ...rim(text.split(' ')[1] ?? '', 'milled', hand, { foot: 452, height: 70, from: 210, over: 60, outward: true, set: 'middle' }), ...moved(westFront(), 0, 46, 1.1)], { metal: 'copper', surface: { wear: 0.14, tone: 0.5, scratches: 0.3 } }),
    reverse: ({ parts: [text = 'CLIFFORDS TOWER'], hand }) =>
      milled([...toothed(490, 18, 130), ...rim(text, 'milled', hand, { foot: 388, height: 72, from: 228, over: 264, space: 70 }), ...moved(cliffordsTower(), 0, 70, 1.06)], { metal: 'copper', surface: { wear: 0.16, tone: 0.55, scratches: 0.3 } }),
  },
  'minster-medal-1829': {
    obverse: ({ parts: [text = 'YORK MINSTER'], hand }) =>
      milled([{ draw: rimBand(500, 470), height: 13, round: 12 }, ...rim(text, 'milled', hand, { foot: 408, height: 50, from: 130, over: 100, outward: true, set: 'middle', space: 60 }), ...moved(minsterBurning(), 0, 60, 1.16)], { ...MEDAL, after: [bruise(64)] }),
    reverse: ({ hand }) =>
      milled([{ draw: rimBand(500, 470), height: 13, round: 12 }, { draw: wreath(392, 16, 86), height: 9, round: 6 }, line('THE CHOIR', -158, 66, hand, 460), line('DESTROYED', -76, 62, hand, 520), line('BY FIRE', 6, 66, hand), line('FEB 2', 90, 66, hand), line('1829', 176, 76, hand)], { ...MEDAL, after: [bruise(296)] }),
    edge: () => ({
      layers: [{ draw: box(-520, -62, 1040, 11) + box(-520, 51, 1040, 11), height: 9, round: 6 }],
      after: [{ draw: oval(148, -54, 46, 34), height: 22, mode: 'sink', round: 30 }, { draw: stroke('M110 -24Q150 0 196 -28', 9), height: 7, round: 5 }],
      flan: { shape: 'drawn', path: 'M-494 -58L494 -60Q500 0 494 60L-494 58Q-500 0 -494 -58Z', edge: 22, thick: 16 },
      metal: 'pewter',
      surface: { wear: 0.2, weak: 0, grain: 0.2, pits: 0.25, scratches: 0.8, bent: 0.1, tone: 0.5, dirt: 0.2 },
    }),
  },
  'victoria-sovereign-1872': {
    obverse: ({ parts: [text = ''], hand }) =>
      milled([...toothed(492, 18, 150), ...rim(text, 'milled', hand, { foot: 412, height: 50, from: 206, over: 308, space: 60 }), ...turnedRound(moved(head({ hair: 'bun', bust: 'neck', young: true }), 24, -4, 1.42))], { metal: 'gold', surface: { wear: 0.16, tone: 0.3, scratches: 0.6, grain: 0.08, pits: 0.03 } }),
    reverse: ({ hand }) =>
      milled([...toothed(492, 18, 150), { draw: box(-290, 322, 580, 8), height: 8, round: 4 }, ...moved(saintGeorge(), 6, 8, 1.04), ...rim('1872', 'milled', hand, { foot: 446, height: 52, from: 205, over: 50, outward: true, set: 'middle' }), { draw: inLine('B.P.', PUNCHES.milled, 256, 344, 18, hand), height: 4, round: 3 }], { metal: 'gold', surface: { wear: 0.18, tone: 0.3, scratches: 0.6, grain: 0.08, pits: 0.03 } }),
  },
};

