import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import type { Legend, Part, PartKind } from './legend.ts';
import { directionOf, scriptOf } from './script.ts';

/** No rim holds more: a longer text is a story and belongs below the front matter. */
const LONGEST = 1000;

/** A legend's cuts, in the order they are tried. A space never joins another kind of break. */
const CUTS: readonly (readonly [PartKind, RegExp])[] = [
  ['lost', /^(?:…|\.{3,}|-{3,})/u],
  ['break', /^(?:\s*[,،;/|‖]\s*|\s+)/u],
  ['mark', /^[+*✠✚✙✝†‡☩☧☥★☆✶✦✱⁕❀✿❁⚜☾☽☀☼♁♥♣♠♦⚔⚒⚓❖◆◇●○◦□■△▲]\uFE0F?/u],
  ['stop', /^(?:[·•∙‧⸱:.'’‘`´~=_^"“”⁚⁝⸫⸬∴⁘×-]|[־׳״؛])/u],
  ['cut', /^[\p{L}\p{M}\p{N}&⁊\u200C\u200D]+/u],
];

const ONE_OF =
  'Write [ ] for letters restored, ( ) for letters supplied to complete an abbreviation, … for letters lost';

function nextPart(rest: string): Part | null {
  for (const [kind, pattern] of CUTS) {
    const text = pattern.exec(rest)?.[0];
    if (text !== undefined) return { kind, text };
  }
  return null;
}

/** What a bracket turns a stretch into: letters change kind, everything else is marked as supplied. */
function within(part: Part, restored: boolean, expanded: boolean): Part {
  const letters = part.kind === 'cut';
  if (letters && expanded)
    return restored ? { kind: 'expanded', text: part.text, supplied: true } : { kind: 'expanded', text: part.text };
  if (letters && restored) return { kind: 'restored', text: part.text };
  return restored && part.kind !== 'lost' ? { ...part, supplied: true } : part;
}

/**
 * Reads a transcription of a legend. `[ ]` holds letters restored, `( )` letters that complete an abbreviation,
 * `…` (or `...`, `---`, `[…]`) letters lost; a space is a break, and so are `/ | , ;`, between lines, rings and fields.
 * Round brackets may stand inside square ones. The text is kept as written, without the space around it.
 */
export function parseLegend(text: string): Outcome<Legend> {
  const written = text.trim();
  if (written === '')
    return refuse('A legend needs at least one letter or mark; leave the field out when there is none.');
  if (written.length > LONGEST)
    return refuse(
      `A legend is at most ${LONGEST} characters here; this has ${written.length}. Put the rest in the story.`,
    );
  const parts: Part[] = [];
  let restored = false;
  let expanded = false;
  for (let at = 0; at < written.length;) {
    const sign = written.charAt(at);
    if (
      sign === '['
        ? restored || expanded
        : sign === ']'
          ? !restored || expanded
          : sign === '('
            ? expanded
            : sign === ')' && !expanded
    )
      return refuse(
        `The bracket ${sign} after "${written.slice(Math.max(0, at - 12), at)}" has no partner. ${ONE_OF}.`,
      );
    if (sign === '[' || sign === ']') restored = sign === '[';
    else if (sign === '(' || sign === ')') expanded = sign === '(';
    else {
      const part = nextPart(written.slice(at));
      if (part === null) {
        const strange = String.fromCodePoint(written.codePointAt(at) ?? 0);
        return refuse(`A legend is letters, stops and marks; this has "${strange}". ${ONE_OF}.`);
      }
      parts.push(within(part, restored, expanded));
      at += part.text.length;
      continue;
    }
    at += 1;
  }
  if (restored || expanded) return refuse(`The bracket ${expanded ? '(' : '['} is never closed. ${ONE_OF}.`);
  if (parts.length === 0) return refuse(`There is nothing between these brackets. ${ONE_OF}.`);
  return good({ text: written, parts, direction: directionOf(written), script: scriptOf(written) });
}
