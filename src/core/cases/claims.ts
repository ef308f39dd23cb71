/** What `the first` and its like do not claim when one of these follows: a reign, an issue, a part of a time. */
const COUNTED_THINGS =
  'reign issue coinage type class half quarter part time year day week month decade century edition volume line letter word name king queen two three four few';
const AFTER_ORDINAL = new RegExp(
  String.raw`^(?:\p{L}+-)?(?:${COUNTED_THINGS.replaceAll(' ', '|')}|(?:of|is|was|and|to)\b|,)`,
  'u',
);

/** Whose it is said to be, and what is claimed: of itself, or, as a group, by an ordinal. */
const WHOSE = String.raw`(?:(?:the|its|his|her|their|a|an|\p{Lu}\p{L}+[’']s)\s+)?`;
const FEW = 'one|two|three|four|five|six|seven|eight|nine|ten|\\d{1,2}';
const EXTANT = 'known|recorded|extant|surviv(?:e|es|ed|ing)|exist|examples?|specimens?';
const ALONE = [
  String.raw`unique|only\s+(?:known|recorded|surviving|example|specimen)`,
  String.raw`only\s+(?:${FEW})(?:\s+(?:other|others|coins?|pieces?|pennies|are|is|have been))*\s+(?:${EXTANT})`,
  String.raw`one\s+of\s+(?:only\s+)?(?:${FEW})\s+(?:${EXTANT})`,
  String.raw`no\s+others?\s+(?:is|are)\s+known`,
].join('|');
const FOREMOST = String.raw`(?:finest|rarest|earliest|largest|heaviest|best|oldest)(?:\s+known)?`;
const CLAIMS = new RegExp(
  String.raw`(?<![\p{L}’'-])${WHOSE}(?:(?:${ALONE}|${FOREMOST})(?!\p{L})|(first|last)(?=\s))`,
  'giu',
);

/** The claims in a text that a judge would ask a book for: unique, only known, finest, rarest, the first of its kind. */
export function claimsIn(text: string): readonly string[] {
  return Array.from(text.matchAll(CLAIMS)).flatMap((match) => {
    const claim = match[0].trim();
    if (/(?<!\p{L})(?:at|for)\s+$/iu.test(text.slice(0, match.index))) return [];
    const rest = text.slice(match.index + match[0].length).trimStart();
    if (match[1] === undefined) return [claim];
    // `First` and `last` claim something only of a kind of thing, as in "the first English sixpence".
    const isOfKind = /^(?:the|its|his|her|their|\p{Lu}\p{L}+[’']s)\s/iu.test(claim) && !AFTER_ORDINAL.test(rest);
    return isOfKind && /^\p{L}/u.test(rest) ? [`${claim} ${rest.split(/[\s,.;:]/)[0] ?? ''}`] : [];
  });
}

/** What a text says of how complete a set is: so many of so many, or all of it. */
export type Completeness =
  | { readonly says: string; readonly is: 'counted'; readonly low: number; readonly high: number; readonly of: number }
  | { readonly says: string; readonly is: 'whole' };

const HOW_MANY = String.raw`(?<![\d/.–-])(\d{1,3})(?:\s*(?:to|–|-)\s*(\d{1,3}))?`;
const OF_HOW_MANY = String.raw`(?:out\s+)?of\s+(?:the\s+|all\s+)?(\d{1,3})(?![\d/]|\s*(?:mm|g|per))`;
const COUNTED = new RegExp(String.raw`${HOW_MANY}\s+${OF_HOW_MANY}`, 'gu');
const WHOLE = /\b(?:a |the )?complete (?:set|series|run|collection)\b|\b(?:set|series|run) (?:is|are) complete\b/giu;

/** What a text says of how complete something is. */
export function completenessIn(text: string): readonly Completeness[] {
  const counted = Array.from(text.matchAll(COUNTED)).map((match): Completeness => {
    const low = Number(match[1]);
    return {
      says: match[0],
      is: 'counted',
      low,
      high: match[2] === undefined ? low : Number(match[2]),
      of: Number(match[3]),
    };
  });
  const whole = Array.from(text.matchAll(WHOLE))
    .filter(
      (match) => !/(?:not|no longer|far from|almost|nearly)\s+(?:a\s+|the\s+)?$/i.test(text.slice(0, match.index)),
    )
    .map((match): Completeness => ({ says: match[0], is: 'whole' }));
  return [...counted, ...whole];
}
