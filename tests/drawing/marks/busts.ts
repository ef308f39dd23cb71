import { dot, full, line, mirrored, quatrefoil, ring, thin } from './ink.ts';

const both = (left: string): string => left + mirrored(left);

/** Chin, neck and shoulders: where the drapery is looked for. */
const NECK = [thin('M20 1Q21 14 32 15Q43 14 44 1'), both(thin('M26 14Q26 22 23 25Q12 29 5 46'))];

/** The bust from the shoulders down, as wide as the box. */
const BREAST = [
  thin('M24 1V7Q24 12 17 14Q7 17 3 46'),
  mirrored(thin('M24 1V7Q24 12 17 14Q7 17 3 46')),
  thin('M14 20Q32 32 50 20'),
];

function face(
  across: number,
  down: number,
  extra: readonly string[],
  eyes: 'dots' | 'almond' = 'dots',
  y = 24,
): string[] {
  const [left, right, top, foot] = [32 - across, 32 + across, y - down, y + down];
  const eye = across * 0.45;
  return [
    line(
      `M${String(left)} ${String(top + 4)}C${String(left)} ${String(foot - 4)} ${String(32 - across * 0.55)} ${String(foot)} 32 ${String(foot)}C${String(32 + across * 0.55)} ${String(foot)} ${String(right)} ${String(foot - 4)} ${String(right)} ${String(top + 4)}`,
    ),
    thin(`M${String(left - 1)} ${String(top + 3)}H${String(right + 1)}`),
    both(
      thin(
        `M${String(left - 2)} ${String(top + 5)}Q${String(left - 10)} ${String(y - 4)} ${String(left - 4)} ${String(y + 3)}Q${String(left - 12)} ${String(y + 8)} ${String(left - 9)} ${String(y + down * 0.75)}`,
      ),
    ),
    eyes === 'dots' ? dot(32 - eye, y - 3, 1.8) + dot(32 + eye, y - 3, 1.8) : '',
    line(`M${String(32 - across * 0.3)} ${String(y + down * 0.62)}H${String(32 + across * 0.3)}`, 1.8),
    ...extra,
  ];
}

const NOSE = line('M32 19V28Q32 30 30 30', 1.8);
const ALMOND = (x: number): string =>
  `<path d="M${String(x - 5)} 20Q${String(x)} 14 ${String(x + 5)} 20Q${String(x)} 25 ${String(x - 5)} 20Z" fill="none" stroke="black" stroke-width="2"/>${dot(x, 20, 1.8)}`;

/** Faces, draperies and what is on the breast, as the words of the series describe them. */
export const BUSTS: Readonly<Record<string, readonly string[]>> = {
  'drapery-none': [...NECK],
  'drapery-wedges': [...NECK, both(full('M12 38L31 27L31 31Z'))],
  'drapery-hooked': [...NECK, line('M17 26Q12 27 13 31Q18 41 32 41Q46 41 51 31Q52 27 47 26', 3.6)],
  'drapery-segment': [...NECK, full('M14 28Q32 50 50 28L45 25Q32 40 19 25Z')],
  'drapery-hollowed': [...NECK, full('M15 30L26 28Q32 36 38 28L49 30Q42 43 32 43Q22 43 15 30Z')],
  'drapery-two-pieces': [...NECK, both(full('M13 30L28 27L25 41Z'))],
  'drapery-commas': [...NECK, both(dot(22, 31, 4.2) + full('M18 31Q19 40 29 42Q24 36 26 30Z'))],
  'face-usual': face(11, 19, [NOSE]),
  'face-broad': face(16, 18, [line('M30 18V26Q25 31 30 32H34Q39 31 34 26V18', 2.2)]),
  'face-long-narrow': face(8, 22, [NOSE]),
  'face-small': face(7, 12, [line('M32 22V27', 1.6)]),
  'face-almond': face(13, 20, [ALMOND(25), ALMOND(39), line('M32 23V30', 1.8)], 'almond'),
  'breast-nothing': [...BREAST],
  'breast-pellet': [...BREAST, dot(32, 37, 3.6)],
  'breast-pellets': [...BREAST, dot(32, 33.5, 3.2), dot(27.5, 41, 3.2), dot(36.5, 41, 3.2)],
  'breast-quatrefoil': [...BREAST, quatrefoil(32, 37.5, 4.6)],
  'breast-rose': [...BREAST, ...[0, 72, 144, 216, 288].map((angle) => dot(Math.round((32 + 5.4 * Math.sin((angle * Math.PI) / 180)) * 10) / 10, Math.round((37.5 - 5.4 * Math.cos((angle * Math.PI) / 180)) * 10) / 10, 2.8)), ring(32, 37.5, 2)],
  'breast-star': [...BREAST, full('M32 28L34 34.6L40.7 32.5L36 37.5L40.7 42.5L34 40.4L32 47L30 40.4L23.3 42.5L28 37.5L23.3 32.5L30 34.6Z')],
  'breast-annulet': [...BREAST, '<circle cx="32" cy="37.5" r="4.4" fill="none" stroke="black" stroke-width="2.4"/>'],
  'cross-plain': cross([]),
  'cross-quatrefoil': cross([quatrefoil(32, 24, 4.6)]),
  'cross-crozier': [...cross([]).slice(1), line('M32 44V24M14 24H50', 3.4), line('M32 24V10Q32 3 38 4Q43 6 40 10', 3.4)],
  'cross-crown': cross([
    '<path d="M32 13L43 24L32 35L21 24Z" fill="white" stroke="black" stroke-width="2"/>',
    full('M25.5 28V21L29 24L32 19L35 24L38.5 21V28Z'),
  ]),
}; // prettier-ignore

/** The long cross with three pellets in each angle, and what is on it. */
function cross(inside: readonly string[]): string[] {
  const pellets = [[-1, -1], [1, -1], [-1, 1], [1, 1]].map(([x = 1, y = 1]) => [[8, 7], [13, 7], [10.5, 11.5]].map(([dx = 0, dy = 0]) => dot(32 + x * dx, 24 + y * dy, 1.9)).join('')).join(''); // prettier-ignore
  return [line('M32 4V44M12 24H52', 3.4), `<circle cx="32" cy="24" r="20" fill="none" stroke="black" stroke-width="1.2" stroke-dasharray="0.6 2.4" stroke-linecap="round"/>`, pellets, ...inside]; // prettier-ignore
}
