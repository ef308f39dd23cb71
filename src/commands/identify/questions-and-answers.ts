import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { parseAnswer } from '../../core/types/key/answers.ts';
import type { Answer, Answers } from '../../core/types/key/answers.ts';
import { sureBroader, together } from '../../core/types/key/identify.ts';
import type { Candidate, Identification, Question } from '../../core/types/key/identify.ts';
import { NOTHING } from '../../core/types/key/key.ts';
import type { Key } from '../../core/types/key/key.ts';
import { separations } from '../../core/types/key/separations.ts';
import { askText, askWhich } from '../parts/ask.ts';

/** Answers as words of a command line: `crown=pearls`, `weight=1.38 g`. */
export function answersIn(words: readonly string[], key: Key): Outcome<Answers> {
  const answers = new Map<string, Answer>();
  for (const word of words) {
    const at = word.indexOf('=');
    const [id, text] = [word.slice(0, Math.max(0, at)), word.slice(at + 1)];
    const character = key.characters.find((one) => one.id === id);
    if (at === -1 || character === undefined)
      return refuse(
        `"${word}" is no answer. Write one of ${key.characters.map((one) => one.id).join(', ')}, = and what you see.`,
      );
    const answer = parseAnswer(text, character, key.outcomes[key.characters.indexOf(character)]?.names ?? []);
    if (!answer.ok) return answer;
    answers.set(id, answer.value);
  }
  return good(answers);
}

const CANNOT_TELL = '?';
const SEVERAL = '/';

/** Asks one question; null when nobody can tell. */
export async function askQuestion(key: Key, { character: id, gain }: Question): Promise<Answer | null> {
  const at = key.characters.findIndex((one) => one.id === id);
  const character = key.characters[at];
  if (character === undefined) return null;
  const names = key.outcomes[at]?.names ?? [];
  const message = `${character.label}? (tells ${gain.toFixed(2)} bit)`;
  if (character.kind === 'states') {
    const label = (name: string): string =>
      name === NOTHING ? 'it has none' : (character.states.find((state) => state.id === name)?.label ?? name);
    const chosen = await askWhich(message, [
      ...names.map((name) => ({ value: name, label: label(name) })),
      { value: SEVERAL, label: 'one of several', hint: 'write them next' },
      { value: CANNOT_TELL, label: 'I cannot tell' },
    ]);
    if (chosen === CANNOT_TELL) return null;
    if (chosen !== SEVERAL) return { states: [chosen] };
  }
  const refused = (text: string): string | null => {
    const read = text === '' ? null : parseAnswer(text, character, names);
    return read?.ok === false ? read.problem : null;
  };
  const text = await askText(`${message} Leave it empty when you cannot tell.`, {
    placeholder: names.join('/'),
    refuse: refused,
  });
  const read = text === '' ? null : parseAnswer(text, character, names);
  return read?.ok === true ? read.value : null;
}

/** A question with why it comes so soon or so late: what it tells, how often it can be seen, and whether it takes trouble. */
function whyAsk(key: Key, { character: id, gain }: Question): string {
  const { seen = 1, cost = 1 } = key.characters.find((one) => one.id === id) ?? {};
  const often = seen < 1 ? [`seen on ${String(Math.round(seen * 100))} of 100`] : [];
  const trouble = cost > 1 ? [`${String(cost)} times the trouble`] : [];
  return `${id} (${[`${gain.toFixed(2)} bit`, ...often, ...trouble].join(', ')})`;
}

/** Candidates told, and the least probability of one that is. */
const MOST = 8;
const LEAST = 0.005;

function candidateLine({ id, probability, against }: Candidate, label: (id: string) => string): string {
  const speaks = against.length === 0 ? '' : `, against it ${against.join(', ')}`;
  return `${(probability * 100).toFixed(1).padStart(5)} %  ${label(id)} (${id})${speaks}`;
}

/** What remains, whether to stop, by what the first two differ, and what to look at next. */
export function formatIdentification(
  key: Key,
  answers: Answers,
  found: Identification,
  label: (id: string) => string,
  broaderOf: (id: string) => string | null,
): string {
  const likely = found.candidates.filter(({ probability }, at) => at < MOST && (at === 0 || probability >= LEAST));
  const more = found.candidates.length - likely.length;
  const leading = found.leading.map(label).join(' or ');
  const [first, second] = likely;
  const differ = first === undefined || second === undefined ? [] : separations(key, first.id, second.id);
  const next = found.questions.slice(0, 3).map((question) => whyAsk(key, question));
  const broader = answers.size === 0 ? [] : together(found.candidates, broaderOf);
  const sure = found.stop === 'sure' || found.outside || found.unshown.length > 0 ? null : sureBroader(broader);
  return [
    ...likely.map((candidate) => candidateLine(candidate, label)),
    ...(more > 0 ? [`        and ${String(more)} more, less likely`] : []),
    '',
    ...(broader.length === 0
      ? []
      : [
          `Taken together: ${broader
            .slice(0, 6)
            .map(({ id, probability }) => `${label(id)} (${id}) ${(probability * 100).toFixed(1)} %`)
            .join(', ')}.`,
        ]),
    ...(sure === null ? [] : [`Most likely ${label(sure.id)}, whichever type of it.`]),
    ...(found.unshown.length > 0
      ? [
          `No type in this list is known to show what was answered of ${found.unshown.join(', ')}. Look again; if it is right, the piece is not in the list.`,
        ]
      : !found.outside && (first?.against.length ?? 0) > 0
        ? ['No type agrees with every answer.']
        : []),
    ...(found.outside
      ? [
          found.untold && first !== undefined
            ? `Nothing in this list fits. ${label(first.id)} is not put out only because the series says nothing of what was answered.`
            : `Probably not in this list: too many of the ${String(answers.size)} answers speak against even the best of them.`,
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
