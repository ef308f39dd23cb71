import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';

/** The scripts a legend is distinguished by; `other` is any script without a table of its own here. */
export type Script = 'latin' | 'greek' | 'cyrillic' | 'arabic' | 'hebrew' | 'runic' | 'other';

/**
 * What a stretch of a transcription is.
 *
 * `cut` letters stand on the piece; `restored` ones stood there and are supplied `[ ]`; `expanded` ones never stood
 * there, they complete an abbreviation `( )`; `lost` is a stretch nobody can read `…`; a `stop` is cut between words
 * or marks an abbreviation; a `break` is a space, or where the legend goes on in another line, ring or field; a
 * `mark` is a picture among the letters, such as the cross a legend begins at.
 */
export type PartKind = 'cut' | 'restored' | 'expanded' | 'lost' | 'stop' | 'break' | 'mark';

/** One stretch. `supplied` is true on a stop, a mark or an expansion that stands inside `[ ]`. */
export type Part = { readonly kind: PartKind; readonly text: string; readonly supplied?: true };

/** A legend as read: the text as written, its stretches in order, and how its script runs. */
export type Legend = {
  readonly text: string;
  readonly parts: readonly Part[];
  readonly direction: 'ltr' | 'rtl';
  readonly script: Script;
};

const SCRIPTS: readonly (readonly [Script, RegExp])[] = [
  ['latin', /\p{Script=Latin}/u],
  ['greek', /[\p{Script=Greek}\p{Script=Coptic}]/u],
  ['cyrillic', /\p{Script=Cyrillic}/u],
  ['arabic', /\p{Script=Arabic}/u],
  ['hebrew', /\p{Script=Hebrew}/u],
  ['runic', /\p{Script=Runic}/u],
];

const WRITTEN_FROM_THE_RIGHT = [
  'Arabic', 'Hebrew', 'Syriac', 'Phoenician', 'Inscriptional_Pahlavi', 'Imperial_Aramaic', 'Kharoshthi',
]; // prettier-ignore
const RIGHT_TO_LEFT = new RegExp(`[${WRITTEN_FROM_THE_RIGHT.map((script) => `\\p{Script=${script}}`).join('')}]`, 'u');

function scriptOfLetter(letter: string): Script {
  return SCRIPTS.find(([, pattern]) => pattern.test(letter))?.[0] ?? 'other';
}

/** Greek letters that no Latin one looks like. Λ and Σ are left out: they stand for A and S on Latin coins too. */
const ONLY_GREEK = /[ΓΔΘΞΠΦΨΩγδθξπφψω]/gu;
/** Latin letters that no Greek one looks like. R is typed for Ρ, S for Σ, V for Υ and W for Ω. */
const ONLY_LATIN = /[DFGLQ]/iu;
/** Cyrillic letters are typed for those of either: Є for E, И for a reversed N. */
const LATIN_OR_GREEK = /^[\p{Script=Latin}\p{Script=Greek}АВСЕНІКМОРЅТХИЯЄ\P{L}]*$/iu;
/** Titles of Greek legends in letters that both scripts have: emperor Caesar, Augustus. Common practice. */
const GREEK_TITLES = /(?:^|[^\p{L}])(?:A[VY]T(?:OK)? K|KAI(?:C|CAP|CAPOC)?|CEB(?:AC|ACT|ACTOC|ACTH)?)(?=$|[^\p{L}])/u;
/** One alpha and omega beside a Latin legend do not make it Greek; one such letter among eight does. */
const AMONG = 8;

/** Whether some letters are of Greek alone, or the words are, so that Latin abbreviations tell nothing. */
export function isGreekInPart(text: string): boolean {
  return text.search(ONLY_GREEK) >= 0 || GREEK_TITLES.test(text);
}

/** Greek typed in letters that look Latin: `BAΣIΛEΩΣ`, `AVT K ANTΩNINOC`. */
function isGreekInDisguise(text: string): boolean {
  if (!LATIN_OR_GREEK.test(text) || ONLY_LATIN.test(text)) return false;
  const own = text.match(ONLY_GREEK)?.length ?? 0;
  if (own === 0) return /Σ.*Λ|Λ.*Σ/u.test(text);
  return GREEK_TITLES.test(text) || own * AMONG >= (text.match(/\p{L}/gu)?.length ?? 0);
}

/**
 * The script most of the letters are in; at a tie, the one that comes first in the text. No letters: latin. Greek typed in
 * letters that look Latin is Greek.
 */
export function scriptOf(text: string): Script {
  if (isGreekInDisguise(text)) return 'greek';
  const counts = new Map<Script, number>();
  for (const letter of text.match(/\p{L}/gu) ?? []) {
    const script = scriptOfLetter(letter);
    counts.set(script, (counts.get(script) ?? 0) + 1);
  }
  let most: Script = 'latin';
  for (const [script, count] of counts) if (count > (counts.get(most) ?? 0)) most = script;
  return most;
}

/** Which way the letters run: right to left when more of them are of a script that does. */
export function directionOf(text: string): 'ltr' | 'rtl' {
  const letters = text.match(/\p{L}/gu) ?? [];
  const leftward = letters.filter((letter) => RIGHT_TO_LEFT.test(letter)).length;
  return leftward * 2 > letters.length ? 'rtl' : 'ltr';
}

/** No rim holds more: a longer text is a story and belongs below the front matter. */
export const LONGEST_LEGEND = 1000;

/** A legend's cuts, in the order they are tried. A space never joins another kind of break. */
const CUTS: readonly (readonly [PartKind, RegExp])[] = [
  ['lost', /^(?:…|\.{3,}|-{3,})/u],
  ['break', /^(?:\s*[,،;/|‖]\s*|\s+)/u],
  ['mark', /^[+*✠✚✙✝†‡☩☧☥★☆✶✦✱⁕❀✿❁⚜☾☽☀☼♁♥♣♠♦⚔⚒⚓❖◆◇●○◦□■△▲]\uFE0F?/u],
  ['stop', /^(?:[·•∙‧⸱:.'’‘`´~=_^"“”⁚⁝⸫⸬∴⁘×-]|[־׳״؛])/u],
  ['cut', /^[\p{L}\p{M}\p{N}&⁊\u200C\u200D]+/u],
];

const NOTHING = 'A legend needs at least one letter or mark; leave the field out when there is none.';
const ONE_OF =
  'Write [ ] for letters restored, ( ) for letters supplied to complete an abbreviation, … for letters lost';

/** The stretch a text begins with, and how much of the text it takes. */
function nextPart(rest: string): { readonly part: Part; readonly length: number } | null {
  for (const [kind, pattern] of CUTS) {
    const text = pattern.exec(rest)?.[0];
    if (text !== undefined) return { part: { kind, text: kind === 'lost' ? '…' : text }, length: text.length };
  }
  return null;
}

/** What the brackets around a stretch make of it: letters change kind, a stop or a mark is noted as supplied. */
function within({ kind, text }: Part, restored: boolean, expanded: boolean): Part {
  if (kind === 'cut' && restored && !expanded) return { kind: 'restored', text };
  const turned = kind === 'cut' && expanded ? 'expanded' : kind;
  return restored && kind !== 'lost' && kind !== 'break'
    ? { kind: turned, text, supplied: true }
    : { kind: turned, text };
}

/** Adds a stretch; letters that meet letters of their own kind, and breaks that meet breaks, are one. */
function add(parts: Part[], part: Part): void {
  const last = parts.at(-1);
  const joins =
    last?.kind === part.kind && last.supplied === part.supplied && /^(?:cut|restored|expanded|break)$/u.test(part.kind);
  if (last !== undefined && joins) parts.splice(-1, 1, { ...last, text: last.text + part.text });
  else parts.push(part);
}

/** What is wrong with a bracket where it stands: without its partner, within the wrong one, or with nothing in it. */
function wrongBracket(sign: string, open: string, held: boolean, before: string): string | null {
  const alone =
    sign === '[' ? open !== '' : sign === '(' ? open.endsWith('(') : !open.endsWith(sign === ']' ? '[' : '(');
  if (alone) return `The bracket ${sign} after "${before.slice(-12)}" has no partner. ${ONE_OF}.`;
  if ((sign === ']' || sign === ')') && !held) return `There is nothing between these brackets. ${ONE_OF}.`;
  return null;
}

/**
 * Reads a transcription of a legend. `[ ]` holds letters restored, `( )` letters that complete an abbreviation,
 * `…` (or `...`, `---`, `[…]`) letters lost; a space is a break, and so are `/ | , ;`, between lines, rings and fields.
 * Round brackets hold letters alone, and may stand inside square ones. The text is kept as written, without the space
 * around it; a break at either end parts nothing from nothing and is none.
 */
export function parseLegend(text: string): Outcome<Legend> {
  const written = text.trim();
  if (written === '') return refuse(NOTHING);
  if (written.length > LONGEST_LEGEND)
    return refuse(
      `A legend is at most ${LONGEST_LEGEND} characters here; this has ${written.length}. Put the rest in the story.`,
    );
  const parts: Part[] = [];
  let open = '';
  /** Whether the innermost bracket holds anything yet. */
  let held = false;
  for (let at = 0; at < written.length;) {
    const sign = written.charAt(at);
    if ('[]()'.includes(sign)) {
      const wrong = wrongBracket(sign, open, held, written.slice(0, at));
      if (wrong !== null) return refuse(wrong);
      open = sign === '[' || sign === '(' ? open + sign : open.slice(0, -1);
      held = sign === ']' || sign === ')';
      at += 1;
      continue;
    }
    const next = nextPart(written.slice(at));
    if (next === null) {
      const strange = String.fromCodePoint(written.codePointAt(at) ?? 0);
      return refuse(`A legend is letters, stops and marks; this has "${strange}". ${ONE_OF}.`);
    }
    const { part, length } = next;
    if (open.endsWith('(') && part.kind !== 'cut' && part.kind !== 'break')
      return refuse(`Round brackets hold letters alone; these hold "${part.text}". ${ONE_OF}.`);
    held = held || part.kind !== 'break';
    add(parts, within(part, open.startsWith('['), open.endsWith('(')));
    at += length;
  }
  if (open !== '') return refuse(`The bracket ${open.slice(-1)} is never closed. ${ONE_OF}.`);
  if (parts[0]?.kind === 'break') parts.shift();
  if (parts.at(-1)?.kind === 'break') parts.pop();
  if (parts.length === 0) return refuse(NOTHING);
  return good({ text: written, parts, direction: directionOf(written), script: scriptOf(written) });
}

function isRestored(part: Part | undefined): boolean {
  return part?.kind === 'restored' || part?.supplied === true;
}

/** Writes a legend with its brackets, from its parts: neighbours restored together share one pair of `[ ]`. */
export function formatLegend({ parts }: Pick<Legend, 'parts'>): string {
  let text = '';
  let restored = false;
  let expanded = false;
  for (const [i, part] of parts.entries()) {
    // A break belongs to no bracket; between two restored stretches it stays inside theirs.
    const within: boolean = part.kind === 'break' ? restored && isRestored(parts[i + 1]) : isRestored(part);
    if (expanded && (part.kind !== 'expanded' || within !== restored)) {
      text += ')';
      expanded = false;
    }
    if (within !== restored) {
      restored = within;
      text += restored ? '[' : ']';
    }
    if (part.kind === 'expanded' && !expanded) {
      expanded = true;
      text += '(';
    }
    text += part.text;
  }
  return text + (expanded ? ')' : '') + (restored ? ']' : '');
}
