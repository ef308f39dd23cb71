import { beaded, hammered, moved, quartered, rim, turnedRound } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { inLine } from '../lettering.ts';
import { facingBust } from '../motifs/facing.ts';
import { head } from '../motifs/heads.ts';
import { crossBehind, CROWN, rose, impaledShield, royalShield } from '../motifs/royal.ts';
import type { Layer } from '../relief.ts';
import { bar, dot, fill, oval, place, round, stroke } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import { fourWords } from './edwardian.ts';

type Own = Parameters<typeof hammered>[1];
const legend = { foot: 378, height: 92, space: 28 } as const;
const ringed = [beaded(358, 7), beaded(486, 8)];
const sign = (text: string, x: number, y: number, high: number, hand: Inscription['hand'], turn = 0): Layer => ({
  draw: place(inLine(text, PUNCHES.tudor, 0, 0, high, hand), x, y, 1, turn),
  height: 12,
  round: 7,
});
const mullet = place(round(bar(0, 0, 0, -40, 10, 14, 3), 5) + dot(0, 0, 14), 0, 0);

/** A profile within a legend. */
function profile(layers: readonly Layer[], own: Own, from = 6): (inscription: Inscription) => Face {
  return ({ parts: [text = ''], hand }) =>
    hammered([...ringed, ...rim(text, 'tudor', hand, { ...legend, from, over: 352 - from }), ...layers], own);
}

/** The royal shield on a long cross, the legend in its quarters. */
function shieldReverse(
  own: Own,
  extra: (inscription: Inscription) => readonly Layer[] = () => [],
  scale = 1.18,
): (inscription: Inscription) => Face {
  return (inscription) =>
    hammered(
      [
        ...ringed,
        ...quartered(fourWords(inscription.parts[0] ?? ''), 'tudor', inscription.hand, { ...legend, margin: 9 }),
        { draw: crossBehind(486), height: 13, round: 11, mode: 'over' },
        ...moved(royalShield(), 0, 0, scale),
        ...extra(inscription),
      ],
      own,
    );
}

const hat =
  fill('M-96 20Q-60 -20 -40 -30Q0 -60 40 -30Q60 -20 96 20Q0 44 -96 20Z') +
  stroke('M-80 22Q-110 60 -90 84M80 22Q110 60 90 84', 9) +
  dot(-92, 92, 12) +
  dot(92, 92, 12);

/** Bent at some time, and straightened. */
const CREASE: Layer = { draw: stroke('M-330 -420Q-60 -60 250 470', 26), height: -6, round: 40, soft: true };

export const TUDOR: Readonly<Record<string, Recipes>> = {
  'henry-viii-york-groat': {
    obverse: profile(moved(head({ hair: 'net', wear: 'crown', bust: 'drapery', young: true }), 0, 26, 1.16), {
      strike: { x: 4, y: 2, turn: -3 },
      surface: { wear: 0.34 },
      flan: { shape: 'round', uneven: 0.012 },
    }),
    reverse: shieldReverse(
      { strike: { x: -6, y: 2, turn: 4 }, surface: { wear: 0.34 } },
      ({ hand }) => [
        sign('T', -256, -78, 96, hand),
        sign('W', 262, -78, 96, hand),
        { draw: place(hat, 0, 290, 0.78), height: 14, round: 8, mode: 'over' },
      ],
      1.12,
    ),
  },
  'henry-viii-posthumous-groat': {
    obverse: profile(moved(facingBust({ crown: 'arched', hair: 'bushy', beard: true, bust: 'bare' }), 0, 22, 1.28), {
      metal: 'billon',
      strike: { x: -10, y: 6, turn: 5 },
      surface: { wear: 0.7, weak: 0.6, grain: 0.6, pits: 0.8, corrosion: 0.08, tone: 0.75, dirt: 0.4 },
      flan: { shape: 'round', uneven: 0.018, cracks: [[48, 46]] },
    }),
    reverse: shieldReverse({
      metal: 'billon',
      strike: { x: 10, y: 0, turn: -7 },
      surface: { wear: 0.64, weak: 0.6, grain: 0.6, pits: 0.8, corrosion: 0.08, tone: 0.75, dirt: 0.4 },
    }),
  },
  'edward-vi-york-sixpence': {
    obverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          ...ringed,
          ...rim(text, 'tudor', hand, { ...legend, from: 10, over: 342 }),
          ...moved(facingBust({ crown: 'arched', hair: 'locks', bust: 'drapery' }), 0, 28, 1.22),
          { draw: place(rose(72), -246, 44), height: 13, round: 8 },
          sign('VI', 248, 44, 92, hand),
        ],
        { strike: { x: 6, y: -4, turn: 3 }, surface: { wear: 0.46 }, flan: { shape: 'round', uneven: 0.013 } },
      ),
    reverse: shieldReverse({ strike: { x: -6, y: 6, turn: -5 }, surface: { wear: 0.54, weak: 0.5 } }, () => [
      { draw: place(mullet, 54, -420, 0.9), height: 12, round: 8 },
    ]),
  },
  'mary-groat': {
    obverse: profile(
      turnedRound(moved(head({ hair: 'long', wear: 'crown', bust: 'drapery', young: true }), 0, 26, 1.14)),
      { strike: { x: -6, y: 4, turn: -4 }, surface: { wear: 0.6, tone: 0.6 }, flan: { shape: 'round', uneven: 0.018 } },
    ),
    reverse: shieldReverse({ strike: { x: 4, y: 4, turn: 6 }, surface: { wear: 0.6, tone: 0.6 } }),
  },
  'philip-mary-sixpence': {
    obverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          beaded(486, 8),
          ...rim(text, 'tudor', hand, { foot: 396, height: 74, space: 26, from: 24, over: 312 }),
          ...moved(head({ hair: 'short', beard: true, bust: 'cuirass' }), -152, 64, 0.84),
          ...turnedRound(moved(head({ hair: 'net', wear: 'cap', bust: 'drapery', young: true }), -160, 64, 0.84)),
          { draw: place(CROWN, 0, -272, 0.95), height: 13, round: 7 },
          sign('15', -158, -250, 74, hand, -10),
          sign('54', 158, -250, 74, hand, 10),
        ],
        {
          strike: { x: 0, y: 4, turn: 2 },
          surface: { wear: 0.58, tone: 0.55, bent: 0.9 },
          flan: { shape: 'round', uneven: 0.013 },
          after: [CREASE],
        },
      ),
    reverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          ...ringed,
          ...rim(text, 'tudor', hand, { ...legend, foot: 384, height: 84, from: 10, over: 342 }),
          { draw: oval(0, 30, 200, 216), height: 7, round: 12, mode: 'over' },
          ...moved(impaledShield(), 0, 26, 0.86),
          {
            draw:
              `<ellipse cx="0" cy="30" rx="204" ry="222" fill="none" stroke="#fff" stroke-width="14"/>` +
              Array.from({ length: 20 }, (_, at) => {
                const turn = (at / 20) * Math.PI * 2;
                return dot(Math.round(Math.cos(turn) * 228), Math.round(30 + Math.sin(turn) * 246), 13);
              }).join(''),
            height: 11,
            round: 8,
          },
          { draw: place(CROWN, 0, -256, 0.92), height: 13, round: 7, mode: 'over' },
          sign('V', -128, -268, 70, hand),
          sign('I', 124, -268, 70, hand),
        ],
        { strike: { x: -6, y: 0, turn: -4 }, surface: { wear: 0.58, tone: 0.55, bent: 0.9 }, after: [CREASE] },
      ),
  },
  'elizabeth-sixpence': {
    obverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          ...ringed,
          ...rim(text, 'tudor', hand, { ...legend, from: 8, over: 346 }),
          ...turnedRound(moved(head({ hair: 'net', wear: 'crown', bust: 'ruff', young: true }), 26, 26, 1.12)),
          { draw: place(rose(66), 256, 20), height: 13, round: 8 },
        ],
        { strike: { x: 4, y: 4, turn: 2 }, surface: { wear: 0.46 }, flan: { shape: 'round', uneven: 0.011 } },
      ),
    reverse: shieldReverse(
      { strike: { x: -4, y: 0, turn: -3 }, surface: { wear: 0.46 } },
      ({ hand }) => [sign('15', -62, -262, 70, hand), sign('72', 62, -262, 70, hand)],
      1.06,
    ),
  },
};
