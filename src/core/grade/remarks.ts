import type { Grade } from './grade.ts';

/** Words for what ails a piece, in the languages of the lists. Common practice. */
const FAULTS: readonly RegExp[] = [
  /clean|polish|whizz|scrub|brush|dipped|lacquer|gereinigt|poliert|geputzt|nettoy|pulit[ao]|lucidat|limpiad|gepoetst|schoongem|gereinigd/,
  /scratch|graffit|hairline|gouge|scrape|kratzer|kr\.|rayure|graffi|raya|raspad|krasje|krassen/,
  /gilt|gilded|gilding|silvered|plated|vergoldet|versilbert|\bdoré|\bdorat|\bdorad|verguld|artificial|\bre-?toned/,
  /(?<!w)hole|gaatje|doorboord|oogje|beschadig|pierc|plug|gelocht|\bloch|\btrou(?!ble)|\bperc|fori|forat|foro|perfora|agujero/,
  /mount|solder|jewel|loop|henkel|hsp|hksp|broschier|monture|b[ée]li[èe]re|appiccagnolo|montura|soldad/,
  /tool|smooth|re-?engrav|\balter(?:ed|ation)|repair|recolou?r|repatinat|retusch|tooled|ritocc|repar/,
  /corro|verdigris|pitt|porous|poros|granular|rust|korro|zinkfra|piqu|porosit/,
  /bent|straighten|crack|chip|fragment|broken|crimp|creas|verbogen|geknickt|\briss|pli[ée]|f[êe]l[ée]|piegat|\brott[ao]\b|doblad|\brot[ao]\b|grieta/,
  /clip|filed|shaved|damag|defac|counterstamp|test ?cut|chop|burn|\bfire\b|environment|stain|spot(?!less)|fleck|tache|macchi|mancha/,
];

/** Words for a part of the piece: a fault when nothing else is said of it. */
const PLACES = /edge|rim|randfehler|rf\b|randtik|schrötlingsfehler|tranche|bordo|canto|golpe|colp[oi]|coups?\b/;

/** What was so when it left the mint, and what is said not to be there, as far as it is said. */
const NO_FAULT =
  /^.*\bas (?:struck|made)\b|\b(?:(?:rotated|rusted|rusty|cracked|clashed|worn|polished|filled|broken|repaired) die|die (?:crack|rust|flaw|break|polish|clash)\w*)|^un(?:cleaned|polished|circulated)\b|^(?:no|not|never|without|free (?:of|from)|ohne|sans|senza|sin|zonder)\b.*?(?=[,;]| (?:but|aber|mais|ma|pero|maar) |$)/;

/** Words that describe and find no fault. Common practice. */
const REMARKS: readonly RegExp[] = [
  /\b(?:ton(?:e|es|ed|ing)|patina|patin[ée]e?|lust(?:re|er|rous)|bloom|colou?r|cabinet|eye appeal|attractive|pleasing|scarce|rare)\b/,
  /\b(?:prooflike|pl|dpl|dmpl|cam|dcam|ucam|cameo|deep cameo|ultra cameo|specimen)\b/,
  /\b(?:weak|soft|flat|double|well|bold|full|whole|centred|centered|off-?centre|off-?center|struck|strike|as struck|as made|round flan)\b/,
];

const COLOURS: ReadonlyMap<string, 'red' | 'red and brown' | 'brown'> = new Map([
  ['rd', 'red'],
  ['red', 'red'],
  ['rb', 'red and brown'],
  ['red and brown', 'red and brown'],
  ['red-brown', 'red and brown'],
  ['bn', 'brown'],
  ['brown', 'brown'],
]);

const OUT_OF_FIVE = /^(strike|surfaces?):? ?([1-5])(?:\/5| of 5)?$/;

/** What a phrase beside a grade says; `'unknown'` when nothing here knows it. */
export type Said =
  | { readonly kind: 'problem' | 'remark'; readonly words: string }
  | { readonly kind: 'colour'; readonly colour: 'red' | 'red and brown' | 'brown' }
  | { readonly kind: 'strike' | 'surface'; readonly outOfFive: number }
  | { readonly kind: 'unknown'; readonly words: string };

export function readRemark(words: string): Said {
  const low = words.toLowerCase();
  const colour = COLOURS.get(low);
  if (colour !== undefined) return { kind: 'colour', colour };
  const [, face = '', points] = OUT_OF_FIVE.exec(low) ?? [];
  if (points !== undefined) return { kind: face === 'strike' ? 'strike' : 'surface', outOfFive: Number(points) };
  // "Not cleaned but scratched" is scratched.
  const left = low.replace(NO_FAULT, '');
  if (left !== low) return { kind: FAULTS.some((pattern) => pattern.test(left)) ? 'problem' : 'remark', words };
  // "Cleaned but attractive" is cleaned; "weak strike at the edge" is no damage.
  if (FAULTS.some((pattern) => pattern.test(low))) return { kind: 'problem', words };
  if (!/\d/.test(low) && REMARKS.some((pattern) => pattern.test(low))) return { kind: 'remark', words };
  if (PLACES.test(low)) return { kind: 'problem', words };
  return { kind: 'unknown', words };
}

type Beside = Pick<Grade, 'colour' | 'strike' | 'surface' | 'remarks'>;

/** What was said beside a grade and is no fault, in the fields of the grade. */
export function besideGrade(said: readonly Said[]): Beside {
  const remarks = said.flatMap((each) => (each.kind === 'remark' ? [each.words] : []));
  return said.reduce<Beside>(
    (beside, each) => {
      if (each.kind === 'colour') return { ...beside, colour: each.colour };
      if (each.kind === 'strike') return { ...beside, strike: each.outOfFive };
      return each.kind === 'surface' ? { ...beside, surface: each.outOfFive } : beside;
    },
    remarks.length === 0 ? {} : { remarks },
  );
}
