import { dot, full, line, lost, mirrored, thin, turned } from './ink.ts';

/** A leaf of a fleur, as the outline of its edge: the middle one points up, a side one curls over. */
const MIDDLE = (x: number, base: number, tall: number, wide: number): string =>
  `M${String(x)} ${String(base - tall)}C${String(x + wide)} ${String(base - tall * 0.6)} ${String(x + wide * 0.7)} ${String(base - tall * 0.42)} ${String(x)} ${String(base - tall * 0.28)}C${String(x - wide * 0.7)} ${String(base - tall * 0.42)} ${String(x - wide)} ${String(base - tall * 0.6)} ${String(x)} ${String(base - tall)}Z`;
const SIDE = (x: number, base: number, tall: number, way: 1 | -1, reach: number): string => {
  const at = (across: number, up: number): string => `${String(x + way * across)} ${String(base - tall * up)}`;
  return `M${at(0.8, 0.2)}C${at(reach * 0.35, 0.75)} ${at(reach, 0.85)} ${at(reach, 0.45)}C${at(reach * 0.8, 0.58)} ${at(reach * 0.55, 0.5)} ${at(0.8, 0.2)}Z`;
};

type Leaf = 'full' | 'thin' | 'lost' | 'none';
type Fleur = {
  readonly x: number;
  readonly base: number;
  readonly tall: number;
  readonly middle?: Leaf;
  readonly left?: Leaf;
  readonly right?: Leaf;
  readonly wide?: number;
  readonly reach?: number;
};

function leaf(how: Leaf, d: string): string {
  return how === 'full' ? full(d) : how === 'thin' ? thin(d) : how === 'lost' ? lost(d) : '';
}

function fleur({
  x,
  base,
  tall,
  middle = 'thin',
  left = 'thin',
  right = 'thin',
  wide = 3.6,
  reach = 7,
}: Fleur): string {
  const stem = middle === 'full' ? line : thin;
  return [
    stem(`M${String(x)} ${String(base)}V${String(base - tall * 0.3)}`),
    leaf(middle, MIDDLE(x, base, tall, wide)),
    leaf(left, SIDE(x, base, tall, -1, reach)),
    leaf(right, SIDE(x, base, tall, 1, reach)),
  ].join('');
}

const BASE = 36;
const BAND = thin('M8 37Q32 33 56 37L55 43Q32 39 9 43Z');

/** A point between the fleurs: a stalk with a pearl or a spear-head. */
function point(x: number, what: 'pearl' | 'spear' | 'thin'): string {
  const stalk = `M${String(x)} ${String(BASE - 0.5)}V${String(BASE - 9)}`;
  if (what === 'pearl') return line(stalk, 1.6) + dot(x, BASE - 11, 3.2);
  const head = `M${String(x)} ${String(BASE - 17)}L${String(x + 3.2)} ${String(BASE - 8)}H${String(x - 3.2)}Z`;
  return what === 'spear' ? line(stalk, 1.6) + full(head) : thin(stalk) + thin(head);
}

/** The outer fleur of the left, leaning out by so many degrees; that of the right is its mirror. */
function outer(lean: number, how: Partial<Fleur> = {}): string {
  return turned(-lean, 12, BASE, fleur({ x: 12, base: BASE + 0.5, tall: 18, reach: 6, ...how }));
}

const both = (left: string): string => left + mirrored(left);
const POINTS = both(point(22, 'thin'));
const MIDDLE_THIN = fleur({ x: 32, base: BASE - 1, tall: 24 });
const OUTER_THIN = both(outer(16));

export const CROWNS: Readonly<Record<string, readonly string[]>> = {
  'crown-plain-band': [
    full('M7 36H57V43H7Z'),
    fleur({ x: 32, base: BASE - 3, tall: 23 }), both(point(22, 'thin')), OUTER_THIN,
  ],
  'crown-shaped-band': [
    full('M7 35Q12 27 15 34Q19 36 22 30Q25 35 29 34Q32 26 35 34Q39 35 42 30Q45 36 49 34Q52 27 57 35L56 42Q32 37 8 42Z'),
    fleur({ x: 32, base: BASE - 5, tall: 20 }), both(`<g transform="translate(0 -4)">${point(22, 'thin')}</g>`), both(`<g transform="translate(0 -4)">${outer(16)}</g>`),
  ],
  'crown-pearls': [BAND, MIDDLE_THIN, OUTER_THIN, both(point(22, 'pearl'))],
  'crown-no-pearls': [BAND, MIDDLE_THIN, OUTER_THIN, both(point(22, 'spear'))],
  'crown-spread': [
    thin('M15 37Q32 33 49 37L48 43Q32 39 16 43Z'), MIDDLE_THIN, both(point(24, 'thin')),
    both(turned(-48, 17, BASE, fleur({ x: 17, base: BASE + 1, tall: 24, middle: 'full', left: 'full', right: 'full', reach: 7 }))),
  ],
  'crown-bifoliate': [
    BAND, MIDDLE_THIN, POINTS,
    both(outer(20, { middle: 'none', left: 'full', right: 'full', tall: 21, reach: 7.5 })),
  ],
  'crown-mark-none': [BAND, MIDDLE_THIN, POINTS, OUTER_THIN],
  'crown-mark-left-leaf': [BAND, POINTS, OUTER_THIN, fleur({ x: 32, base: BASE - 1, tall: 28, middle: 'full', left: 'lost', right: 'full', reach: 9 })],
  'crown-mark-outer-leaf': [
    BAND, MIDDLE_THIN, POINTS, outer(16),
    mirrored(outer(16, { middle: 'full', left: 'lost', right: 'full', tall: 23, reach: 8 })),
  ],
  'crown-mark-nick': [
    thin('M8 37Q10 36.6 13.5 36L16 39.5L18.5 35.4Q32 33 56 37L55 43Q32 39 9 43Z'), full('M13.2 34.5H18.8L16 40.5Z'),
    MIDDLE_THIN, POINTS, outer(16), mirrored(outer(16, { tall: 22, middle: 'none' })),
    mirrored(turned(6, 12, BASE, line('M12 36Q11 24 16 18', 3))),
  ],
  'crown-mark-hooked-left': [
    BAND, OUTER_THIN, mirrored(point(22, 'thin')), fleur({ x: 32, base: BASE - 1, tall: 34, middle: 'full', left: 'thin', right: 'thin', wide: 4 }),
    line('M22 35.5V25Q22 20 17.5 21.5', 2.8),
  ],
  'crown-mark-bell': [
    BAND, POINTS, OUTER_THIN, thin('M32 35V32'), full('M32 1C35 8 35 16 41 27Q39 31 32 30Q25 31 23 27C29 16 29 8 32 1Z'), lost('M41 27Q45 24 44 19'),
  ],
  'crown-mark-flat': [
    thin('M6 39Q32 36 58 39L57 44Q32 41 7 44Z'), both(`<g transform="matrix(1 0 0 0.55 0 18)">${point(21, 'thin')}${outer(24)}</g>`),
    fleur({ x: 32, base: 37, tall: 15, middle: 'full', left: 'full', right: 'full', reach: 12, wide: 5 }),
  ],
  'crown-mark-straight-right': [
    BAND, MIDDLE_THIN, POINTS, outer(16), mirrored(outer(8, { middle: 'full', right: 'full', left: 'none', tall: 22, reach: 8 })), line('M56 36V16', 3.2),
  ],
  'crown-mark-axe': [
    BAND, POINTS, OUTER_THIN, line('M32 35V10', 3), full('M31 13L23 9Q20 17 23 25L31 21ZM33 13L41 9Q44 17 41 25L33 21Z'),
  ],
  'crown-mark-left-point': [BAND, MIDDLE_THIN, OUTER_THIN, mirrored(point(22, 'thin')), line('M22 35.5V31', 2.8), lost('M22 31V27M22 19L25.2 28H18.8Z')],
}; // prettier-ignore
