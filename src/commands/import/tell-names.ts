import type { Offer } from '../../import/names/lent-lists.ts';
import type { NameQuestion } from '../../import/names/name.ts';

/** Questions of a kind that are told; the rest is in the file. */
const TOLD = 20;

/** Which spellings were taken for one, and which names stand apart though they may be one, with the file in which either is changed. */
export function tellNames(questions: readonly NameQuestion[], shownFile: string): string {
  const joined = questions.filter(({ isParted }) => !isParted);
  const apart = questions.filter(({ isParted }) => isParted);
  return [
    ...section(joined, `Taken for one and the same, as ${shownFile} says; change it there if they are not:`),
    ...section(
      apart,
      `Kept apart, though they may be one, as ${shownFile} says; put them in one line there if they are one:`,
    ),
  ].join('\n\n');
}

function section(questions: readonly NameQuestion[], title: string): readonly string[] {
  if (questions.length === 0) return [];
  const more = questions.length > TOLD ? [`  … and ${questions.length - TOLD} more`] : [];
  return [[title, ...questions.slice(0, TOLD).map(inWords), ...more].join('\n')];
}

/** `mints/bishapur: Bishapur (12 pieces); nearly Nishapur, mints/nishapur (3)`. */
function inWords({ kind, id, spelled, uses, like }: NameQuestion): string {
  const pieces = `${uses} ${uses === 1 ? 'piece' : 'pieces'}`;
  const near = like
    .slice(0, 3)
    .map((one) => `${one.name}, ${kind}/${one.id} (${one.uses === 0 ? 'no piece in this sheet' : one.uses})`);
  return `  ${kind}/${id}: ${spelled.join(', ')} (${pieces})${near.length === 0 ? '' : `; nearly ${near.join(' or ')}`}`;
}

/** The names that the lists which come with the program have, with what those files bring. */
export function tellOffers(offers: readonly Offer[], isTaken: boolean): string {
  if (offers.length === 0) return '';
  const lines = offers
    .slice(0, TOLD)
    .map(({ file, name, says }) => `  ${file.replace('.yaml', '')}: ${name}${says === '' ? '' : ` (${says})`}`);
  const more = offers.length > TOLD ? [`  … and ${offers.length - TOLD} more`] : [];
  const title = isTaken
    ? 'Taken from the lists that come with the program:'
    : 'In the lists that come with the program, with reigns, coordinates and standards; add --lists to take them from there:';
  return [title, ...lines, ...more].join('\n');
}
