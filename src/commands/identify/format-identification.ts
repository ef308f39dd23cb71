import type { Answers } from '../../core/types/key/answers.ts';
import type { Identification } from '../../core/types/key/identify.ts';
import type { Key } from '../../core/types/key/key.ts';
import { separations } from '../../core/types/key/separations.ts';

/** Candidates told, and the least probability of one that is. */
const MOST = 8;
const LEAST = 0.005;

/** What remains, whether to stop, by what the first two differ, and what to look at next. */
export function formatIdentification(
  key: Key,
  answers: Answers,
  found: Identification,
  label: (id: string) => string,
): string {
  const likely = found.candidates.filter(({ probability }, at) => at < MOST && (at === 0 || probability >= LEAST));
  const lines = likely.map(({ id, probability, against }) => {
    const speaks = against.length === 0 ? '' : `, against it ${against.join(', ')}`;
    return `${(probability * 100).toFixed(1).padStart(5)} %  ${label(id)} (${id})${speaks}`;
  });
  const more = found.candidates.length - likely.length;
  const leading = found.leading.map(label).join(' or ');
  const [first, second] = likely;
  const differ = first === undefined || second === undefined ? [] : separations(key, first.id, second.id);
  const next = found.questions.slice(0, 3).map(({ character, gain }) => `${character} (${gain.toFixed(2)} bit)`);
  return [
    ...lines,
    ...(more > 0 ? [`        and ${String(more)} more, less likely`] : []),
    '',
    ...(found.outside
      ? [
          `Probably not in this list: too many of the ${String(answers.size)} answers speak against even the best of them.`,
        ]
      : found.stop === 'sure'
        ? [`${leading}${found.leading.length > 1 ? ': no character of this key separates them' : ''}.`]
        : found.stop === 'nothing-tells-more'
          ? ['No further question would tell much.']
          : []),
    ...(first !== undefined && second !== undefined
      ? [
          differ.length === 0
            ? `No character separates ${label(first.id)} and ${label(second.id)}.`
            : `${label(first.id)} and ${label(second.id)} differ in ${differ.map(({ character, always }) => (always ? character.id : `${character.id} (sometimes)`)).join(', ')}.`,
        ]
      : []),
    ...(found.stop === null && next.length > 0 ? [`Look next at ${next.join(', ')}.`] : []),
    '',
  ].join('\n');
}
