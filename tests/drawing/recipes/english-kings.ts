import { beaded, hammered, moved, rim, turnedRound } from '../die.ts';
import type { Recipes } from '../die.ts';
import { quatrefoil, saxonBust, voidedCross } from '../motifs/saxon.ts';
import { bar, box, dot, fill, place, ring } from '../shapes.ts';
import { bustRims, crossFace, outer, rims, skinOf, word } from './tenth-century.ts';

export const ENGLISH_KINGS: Readonly<Record<string, Recipes>> = {
  'athelstan-york-penny': {
    obverse: crossFace({ strike: { x: 0, y: 4, turn: 2 }, surface: skinOf(0.24) }, [], 286),
    reverse: crossFace({ strike: { x: 8, y: -4, turn: -6 }, surface: skinOf(0.26) }, [], 286),
  },
  'edgar-york-penny': {
    obverse: ({ parts: [text = '+EADGAR REX ANGLO[RX]'], hand }) =>
      hammered(
        [
          beaded(306),
          outer,
          ...rim(text, 'wedge', hand, { ...bustRims, foot: 330 }),
          ...turnedRound(moved(saxonBust({ wear: 'diadem' }), 0, -12, 0.98)),
        ],
        {
          strike: { x: 0, y: 0, turn: -3 },
          flan: { shape: 'round', uneven: 0.014, chips: [[318, 62]] },
          surface: skinOf(0.5),
        },
      ),
    reverse: crossFace({ strike: { x: 8, y: 6, turn: 4 }, surface: skinOf(0.52, { weak: 0.5 }) }),
  },
  'aethelred-crux-penny': {
    obverse: ({ parts: [text = '+ÆÐELRÆD REX ANGLOX'], hand }) =>
      hammered(
        [
          outer,
          ...rim(text, 'wedge', hand, { ...bustRims, from: 14, over: 330 }),
          ...turnedRound(moved(saxonBust({ wear: 'bare', sceptre: 'cross' }), -6, 6, 1.06)),
        ],
        { strike: { x: 4, y: 2, turn: 2 }, surface: skinOf(0.32, { pecks: 0.8 }) },
      ),
    reverse: (inscription) =>
      hammered(
        [
          beaded(296),
          outer,
          ...rim(inscription.parts[0] ?? '', 'wedge', inscription.hand, { ...rims, foot: 322, height: 122 }),
          { draw: voidedCross(290, 26, 15), height: 13, round: 9 },
          ...['C', 'R', 'V', 'X'].map((sign, at) =>
            word(sign, [-138, 138, 138, -138][at] ?? 0, [-138, -138, 138, 138][at] ?? 0, 112, inscription),
          ),
        ],
        { strike: { x: -6, y: 6, turn: -8 }, surface: skinOf(0.32, { pecks: 1 }) },
      ),
  },
  'cnut-quatrefoil-penny': {
    obverse: ({ parts: [text = '+CNVT REX ANGLORV'], hand }) =>
      hammered(
        [
          outer,
          ...rim(text, 'wedge', hand, { ...bustRims, foot: 338, height: 112, from: 10, over: 342 }),
          { draw: quatrefoil(150, 176), height: 11, round: 7 },
          ...turnedRound(moved(saxonBust({ wear: 'crown' }), 0, 20, 0.92)),
        ],
        { strike: { x: -6, y: 4, turn: 4 }, surface: skinOf(0.38) },
      ),
    reverse: ({ parts: [text = '+FARGRIM M-O EOF'], hand }) =>
      hammered(
        [
          outer,
          ...rim(text, 'wedge', hand, { ...rims, foot: 326, height: 122 }),
          { draw: quatrefoil(150, 140), height: 11, round: 7 },
          { draw: voidedCross(466, 20, 14, 'pellets') + ring(0, 0, 34, 14), height: 12, round: 9 },
          { draw: dot(0, 0, 15), height: 12, round: 13 },
        ],
        { strike: { x: 6, y: 0, turn: -4 }, surface: skinOf(0.38) },
      ),
  },
  'edward-confessor-penny': {
    obverse: ({ parts: [text = 'EADPARD REX'], hand }) =>
      hammered(
        [
          outer,
          ...rim(text, 'wedge', hand, { ...bustRims, from: 214, over: 292 }),
          ...moved(saxonBust({ wear: 'arches', beard: true, sceptre: 'trefoil' }), -12, 30, 1.04),
        ],
        { strike: { x: 0, y: -4, turn: -2 }, surface: skinOf(0.28) },
      ),
    reverse: ({ parts: [text = '+ÐORR ON EOFERPIC'], hand }) => {
      const pyramid = (turn: number): string =>
        place(
          bar(0, -30, 0, -170, 15, 18, 14) +
            bar(-52, -176, 52, -176, 15, 20) +
            fill('M-52 -184L0 -126L52 -184Z') +
            dot(0, -206, 17),
          0,
          0,
          1,
          turn,
        );
      return hammered(
        [
          beaded(276),
          outer,
          ...rim(text, 'wedge', hand, { ...rims, foot: 302, height: 138 }),
          { draw: voidedCross(262, 24, 15, 'crescents'), height: 13, round: 9 },
          { draw: pyramid(45) + pyramid(135) + pyramid(225), height: 13, round: 9 },
          { draw: place(ring(0, -168, 34, 17), 0, 0, 1, 315), height: 13, round: 8 },
        ],
        { strike: { x: 8, y: 4, turn: 6 }, surface: skinOf(0.3) },
      );
    },
  },
  'harold-ii-pax-penny': {
    obverse: ({ parts: [text = '+HAROLD REX ANG'], hand }) =>
      hammered(
        [
          outer,
          ...rim(text, 'wedge', hand, { ...bustRims, from: 26, over: 308 }),
          ...turnedRound(
            moved(saxonBust({ wear: 'arches', beard: true, sceptre: 'pellets', drapery: false }), -14, 64, 1.2),
          ),
        ],
        { strike: { x: 6, y: 2, turn: 3 }, surface: skinOf(0.32) },
      ),
    reverse: (inscription) =>
      hammered(
        [
          beaded(280),
          outer,
          ...rim(inscription.parts[0] ?? '', 'wedge', inscription.hand, { ...rims, foot: 306, height: 136 }),
          {
            draw: box(-262, -102, 524, 13) + box(-262, 90, 524, 13) + beadLine(-128) + beadLine(130),
            height: 11,
            round: 7,
          },
          word(inscription.parts[1] ?? 'PAX', 0, 0, 146, inscription),
        ],
        { strike: { x: -4, y: 0, turn: -5 }, surface: skinOf(0.32) },
      ),
  },
};

function beadLine(y: number): string {
  return Array.from({ length: 19 }, (_, at) => dot(-216 + at * 24, y, 9)).join('');
}
