import { dot, full, line, thin } from './ink.ts';

/** An upright with wedges for serifs, as the punches left it. */
function upright(x: number, top = 6, foot = 42, wide = 2.4): string {
  const at = (dx: number, y: number): string => `${String(x + dx)} ${String(y)}`;
  return full(`M${at(-5, top)}L${at(5, top)}Q${at(wide, top + 5)} ${at(wide, 24)}Q${at(wide, foot - 5)} ${at(5, foot)}L${at(-5, foot)}Q${at(-wide, foot - 5)} ${at(-wide, 24)}Q${at(-wide, top + 5)} ${at(-5, top)}Z`); // prettier-ignore
}

const N = upright(19) + upright(45);

/** A round C: how thick its back is, and where its ends stop. */
const C_BACK = (thick: number): string =>
  `M42 12C36 5 18 6 18 24C18 42 36 43 42 36C34 38 ${String(18 + thick)} 37 ${String(18 + thick)} 24C${String(18 + thick)} 11 34 10 42 12Z`;

/** A limb of a cross with splayed arms, the upper one; the others are turned. */
const arms = (upper: string): string =>
  [0, 90, 180, 270].map((degrees) => `<g transform="rotate(${String(degrees)} 32 24)">${upper}</g>`).join('');

/** The end of R, and the mark that stands for what was left out. */
const R = [upright(14), line('M14 8H22C33 8 33 23 22 23H15M22 23L31 41', 5)];

/** The size of letters on a coin: an arc of the rim, and letters between it and the inner circle. */
function sized(rim: number, tall: number): string[] {
  const letter = (x: number, y: number, turn: number): string =>
    `<g transform="translate(${String(x)} ${String(y)}) rotate(${String(turn)}) scale(${String(tall / 36)}) translate(-32 -24)">${upright(22)}${line('M22 8H38M22 24H34M22 40H38', 5)}</g>`;
  const up = 44 - rim + 4 + tall / 2;
  return [
    line(`M${String(32 - rim * 0.86)} ${String(44 - rim * 0.5)}A${String(rim)} ${String(rim)} 0 0 1 ${String(32 + rim * 0.86)} ${String(44 - rim * 0.5)}`),
    thin(`M${String(32 - (rim - tall - 7) * 0.86)} ${String(44 - (rim - tall - 7) * 0.5)}A${String(rim - tall - 7)} ${String(rim - tall - 7)} 0 0 1 ${String(32 + (rim - tall - 7) * 0.86)} ${String(44 - (rim - tall - 7) * 0.5)}`),
    letter(32, up, 0),
    letter(32 - (44 - up) * 0.57, 44 - (44 - up) * 0.82, -35),
    letter(32 + (44 - up) * 0.57, 44 - (44 - up) * 0.82, 35),
  ];
} // prettier-ignore

/** Letters and signs of the legends, as the words of the series describe them. */
export const LETTERS: Readonly<Record<string, readonly string[]>> = {
  'n-roman': [N, line('M20 8L44 40', 4.2)],
  'n-reversed': [N, line('M44 8L20 40', 4.2)],
  'n-lombardic': [upright(20), full('M22 18C28 8 48 8 47 24Q46 34 49 42H42Q41 30 41.5 24C41 14 30 16 22 24Z')],
  'n-double-barred': [N, line('M20 18L44 28', 3), line('M20 26L44 36', 3)],
  'n-pot-hook': [line('M14 12Q19 5 22 12V42', 4.6), line('M40 12Q45 5 48 12V42', 4.6), line('M22 36Q26 43 28 36', 2.4)],
  's-early': [full('M43 8Q40 14 38 14Q34 9 28 11C20 14 24 21 30 22.5L29 25.5C16 24 15 8 28 6Q36 5 43 8ZM21 40Q24 34 26 34Q30 39 36 37C44 34 40 27 34 25.5L35 22.5C48 24 49 40 36 42Q28 43 21 40Z'), thin('M27 21L37 27')],
  's-late': [full('M43 8Q41 15 39 15Q35 10 29 12C25 13 27 17 33 19C46 22 49 40 35 42Q27 43 21 40Q23 33 25 33Q29 38 35 36C39 35 37 31 31 29C17 26 16 8 29 6Q37 5 43 8Z')],
  's-top-tilted': [full('M35 6Q35 13 33 14Q28 12 24 15C21 17 24 20 31 21C46 23 49 40 36 42Q28 43 22 40Q24 33 26 33Q30 38 36 36C39 34 36 31 30 29C13 27 12 12 23 7Q29 4 35 6Z'), thin('M14 4V20')],
  'c-open': [full(C_BACK(8)), full('M40 8L45 7L44 17Q42 14 38 13ZM40 40L45 41L44 31Q42 34 38 35Z')],
  'c-triangular': [full('M44 10C36 1 13 3 13 24C13 45 36 47 44 38C34 41 22 39 22 24C22 9 34 7 44 10Z'), full('M38 9L48 5L47 19ZM38 39L48 43L47 29Z')],
  'c-round-thin': [full('M46 11C36 -1 9 2 9 24C9 46 36 49 46 37C35 43 19 41 19 24C19 7 35 5 46 11Z'), line('M46 8V17M46 31V40', 1.8)],
  'c-closed': [full(C_BACK(8)), line('M43 7Q45 24 43 41', 2.6)],
  'c-angular': [full('M43 10L36 6H29L15 24L29 42H36L43 38L33 37L23 24L33 11Z'), full('M40 7L45 6L44 16ZM40 41L45 42L44 32Z')],
  'h-usual': [upright(20), full('M22 22C30 14 46 18 44 32Q43 40 36 46Q34 46 35 44Q39 36 38 31C37 22 30 22 22 28Z')],
  'h-notched': [upright(20), full('M22 22C30 14 46 18 44 32Q44 34 43.4 36L39.5 37.5L42 40Q40 43 36 46Q34 46 35 44Q39 36 38 31C37 22 30 22 22 28Z'), thin('M50 38H44')],
  'mark-cross-pattee': [arms(full('M30.5 24Q30 12 25 5H39Q34 12 33.5 24Z'))],
  'mark-plain-cross': [arms(full('M29.6 24V6H34.4V24Z'))],
  'mark-moline': [arms(full('M30 24V14H34V24Z') + line('M32 14Q31 7 25 8M32 14Q33 7 39 8', 3))],
  'mark-lion': [line('M14 26Q22 20 38 25Q44 27 47 23', 6), line('M17 27L13 42M23 28V42M38 28V42M45 27L49 42', 3), full('M40 22L38 14L43 14L43 8L48 11L53 8L53 14L57 17L53 21L54 27L48 25L43 28Z'), line('M14 25Q5 22 9 12Q12 7 8 4', 2.4)],
  'contraction-wedge': [...R, full('M42 6H52L45 22Z')],
  'contraction-comma': [...R, dot(46, 10, 4.4), full('M50.4 10Q50 19 41 23Q46 17 44 13Z')],
  'contraction-crescent': [...R, full('M42 5C56 6 56 23 42 24C50 20 50 9 42 5Z')],
  'contraction-none': [...R],
  'a-barred': [line('M18 42L31 8M46 42L33 8', 5), line('M25 6H39', 4), line('M23 28H41', 3.4)],
  'a-unbarred': [line('M18 42L31 8M46 42L33 8', 5), line('M25 6H39', 4)],
  'pellet-yes': [`<g transform="translate(-15 6) scale(0.75)">${arms(full('M30.5 24Q30 12 25 5H39Q34 12 33.5 24Z'))}</g>`, dot(30, 24, 3.4), `<g transform="translate(20 6) scale(0.75)">${upright(26)}${line('M26 8H42M26 24H38M26 40H42', 5)}</g>`],
  'pellet-no': [`<g transform="translate(-11 6) scale(0.75)">${arms(full('M30.5 24Q30 12 25 5H39Q34 12 33.5 24Z'))}</g>`, `<g transform="translate(13 6) scale(0.75)">${upright(26)}${line('M26 8H42M26 24H38M26 40H42', 5)}</g>`],
  'size-usual': sized(36, 11),
  'size-large': sized(42, 15),
  'size-small': sized(31, 8),
}; // prettier-ignore
