import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import type { Legend, Part, PartKind } from './legend.ts';
import { directionOf, scriptOf } from './script.ts';

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
