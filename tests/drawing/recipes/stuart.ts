import { beaded, hammered, milled, moved, rim, toothed } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { head } from '../motifs/heads.ts';
import { kingOnHorse } from '../motifs/riders.ts';
import { CROWN, crownedShields, royalShield } from '../motifs/royal.ts';
import type { Layer } from '../relief.ts';
import { box, dot, oval, place, stroke } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import type { Surface } from '../surface.ts';

const sign = (text: string, x: number, y: number, high: number, hand: Inscription['hand'], turn = 0): Layer => ({
  draw: place(inLine(text, PUNCHES.tudor, 0, 0, high, hand), x, y, 1, turn),
  height: 12,
  round: 7,
});

/** The y of 1696, a small letter whose tail goes below its line; the punches have capitals alone. */
const SMALL_Y = place(stroke('M-20 -22L0 8', 9) + stroke('M20 -22L0 8L-9 24Q-14 32 -24 30', 8), 0, 412);

/** A sixpence of the York mint under William. */
function sixpence(
  surface: Partial<Surface>,
  own: { readonly mark: string; readonly metal?: 'silver' | 'bright' | 'grey' },
): Recipes {
  const metal = own.metal ?? 'silver';
  return {
    obverse: ({ parts: [text = 'GVLIELMVS III DEI GRA'], hand }) =>
      milled(
        [
          ...toothed(),
          ...rim(text, 'milled', hand, { foot: 388, height: 66, from: 212, over: 296, space: 60 }),
          ...moved(head({ hair: 'long', wear: 'laurel', bust: 'drapery' }), 6, -26, 1.3),
          {
            draw: own.mark === 'y' ? SMALL_Y : inLine(own.mark, PUNCHES.milled, 0, 414, 62, hand),
            height: 10,
            round: 5,
          },
        ],
        { metal, surface },
      ),
    reverse: ({ parts: [text = ''], hand }) => {
      const words = text.split(' ');
      const groups = [
        words.slice(0, 2).join(' '),
        words.slice(2, 4).join(' '),
        words.slice(4, 6).join(' '),
        words.slice(6).join(' '),
      ];
      return milled(
        [
          ...toothed(),
          ...groups.flatMap((group, at) =>
            rim(group, 'milled', hand, {
              foot: 396,
              height: 62,
              from: 24 + at * 90,
              over: 42,
              space: 40,
              set: 'middle',
            }),
          ),
          ...moved(crownedShields(), 0, 0, 0.98),
        ],
        { metal, surface },
      );
    },
  };
}

export const STUART: Readonly<Record<string, Recipes>> = {
  'charles-i-york-half-crown': {
    obverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          beaded(372, 6.5),
          beaded(488, 7),
          ...rim(text, 'tudor', hand, { foot: 392, height: 78, space: 30, from: 12, over: 340 }),
          { draw: box(-262, 242, 524, 9), height: 9, round: 4 },
          ...moved(kingOnHorse(), 6, 26, 0.98),
          sign('EBOR', 0, 296, 70, hand),
          {
            draw: place(
              stroke('M-24 6Q0 -12 24 0Q36 -8 30 -24', 12) + dot(-28, -6, 11) + stroke('M-18 8L-22 26M18 4L20 24', 7),
              0,
              -432,
              1.1,
            ),
            height: 10,
            round: 5,
          },
        ],
        {
          strike: { x: 2, y: 2, turn: -1 },
          surface: { wear: 0.28, weak: 0.25, grain: 0.25, tone: 0.55, bent: 0.3 },
          flan: { shape: 'round', uneven: 0.007, edge: 16 },
        },
      ),
    reverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          beaded(372, 6.5),
          beaded(488, 7),
          ...rim(text, 'tudor', hand, { foot: 392, height: 78, space: 50, from: 12, over: 340 }),
          { draw: oval(0, 40, 226, 236), height: 7, round: 12 },
          ...moved(royalShield(true), 0, 36, 0.94),
          {
            draw:
              `<ellipse cx="0" cy="40" rx="224" ry="240" fill="none" stroke="#fff" stroke-width="17"/>` +
              [40, 140, 220, 320]
                .map((turn) =>
                  place(
                    stroke('M-30 0Q0 -40 30 0M-20 -6L-24 24M0 -18L0 22M20 -6L24 24', 13),
                    Math.cos((turn * Math.PI) / 180) * 262,
                    40 + Math.sin((turn * Math.PI) / 180) * 276,
                    1,
                    turn + 90,
                  ),
                )
                .join(''),
            height: 12,
            round: 8,
          },
          { draw: place(CROWN, 0, -268, 1.15), height: 13, round: 7, mode: 'over' },
        ],
        { strike: { x: -2, y: 0, turn: 2 }, surface: { wear: 0.3, weak: 0.25, grain: 0.25, tone: 0.55, bent: 0.3 } },
      ),
  },
  'william-iii-sixpence': sixpence({ wear: 0.3, tone: 0.5 }, { mark: 'y' }),
  'william-iii-sixpence-second': sixpence({ wear: 0.56, tone: 0.75, scratches: 0.8 }, { mark: 'y', metal: 'grey' }),
  'william-iii-sixpence-cleaned': sixpence(
    { wear: 0.14, tone: 0.06, dirt: 0.02, hairlines: 0.9, scratches: 0.3 },
    { mark: 'Y', metal: 'bright' },
  ),
};
