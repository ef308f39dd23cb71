import process from 'node:process';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { raritiesKnown } from '../catalogue/types/read-rarities.ts';
import type { TypeSeries } from '../catalogue/types/series.ts';
import { readTypes } from '../catalogue/types/types-of.ts';
import { identify, rarityPrior, sureBroader, together } from '../core/types/key/identify.ts';
import { keyOf, NOTHING } from '../core/types/key/key.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { canAsk, sayAloud, askText, askWhich } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { parseAnswer } from '../core/types/key/answers.ts';
import type { Answer, Answers } from '../core/types/key/answers.ts';
import type { Candidate, Identification, Question } from '../core/types/key/identify.ts';
import type { Key } from '../core/types/key/key.ts';
import { separations } from '../core/types/key/separations.ts';

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

/** Asks one question, in the words of the series where it has any; null when nobody can tell. */
export async function askQuestion(
  key: Key,
  { character: id }: Question,
  asksAloud: ReadonlyMap<string, string>,
): Promise<Answer | null> {
  const at = key.characters.findIndex((one) => one.id === id);
  const character = key.characters[at];
  if (character === undefined) return null;
  const names = key.outcomes[at]?.names ?? [];
  const message = asksAloud.get(id) ?? `${character.label}?`;
  if (character.kind === 'states') {
    const label = (name: string): string =>
      name === NOTHING ? 'it has none' : (character.states.find((state) => state.id === name)?.label ?? name);
    const chosen = await askWhich(message, [
      ...names.map((name) => ({ value: name, label: label(name) })),
      { value: SEVERAL, label: 'one of several', hint: 'write them next' },
      { value: CANNOT_TELL, label: 'I cannot make it out' },
    ]);
    if (chosen === CANNOT_TELL) return null;
    if (chosen !== SEVERAL) return { states: [chosen] };
  }
  const refused = (text: string): string | null => {
    const read = text === '' ? null : parseAnswer(text, character, names);
    return read?.ok === false ? read.problem : null;
  };
  const text = await askText(`${message} Leave it empty when you cannot make it out.`, {
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

/** Where the answers lead: not into the list, to a type, or nowhere further. */
function whereItLeads(found: Identification, label: (id: string) => string): readonly string[] {
  const [first] = found.candidates;
  if (found.outside && found.untold && first !== undefined)
    return [
      `Nothing in this list fits. ${label(first.id)} is left only because the series says nothing of what you saw.`,
    ];
  if (found.outside && found.unshown.length > 0) return ['It is probably not in this list.'];
  if (found.outside)
    return ['It is probably not in this list: too much of what you saw speaks against even the nearest type.'];
  if (found.stop === 'nothing-tells-more') return ['Nothing else on it would tell you more.'];
  if (found.stop !== 'sure') return [];
  const how = found.leading.length > 1 ? ': no mark in this list separates them' : ', as far as this list goes';
  return [`It is ${found.leading.map(label).join(' or ')}${how}.`];
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
    ...(sure === null ? [] : [`${label(sure.id)} is nearly certain, whichever type of it.`]),
    ...(found.unshown.length > 0
      ? [
          `No type in this list is known to show what you saw of ${found.unshown.join(', ')}. Look again; if you are right, the piece is not in the list.`,
        ]
      : !found.outside && (first?.against.length ?? 0) > 0
        ? ['No type agrees with all you saw.']
        : []),
    ...whereItLeads(found, label),
    ...(first !== undefined && second !== undefined
      ? [
          differ.length === 0
            ? `No mark in this list separates ${label(first.id)} and ${label(second.id)}.`
            : `${label(first.id)} and ${label(second.id)} differ in ${differ.map(({ character, always }) => (always ? character.id : `${character.id} (sometimes)`)).join(', ')}.`,
        ]
      : []),
    ...(found.stop === null && next.length > 0 ? [`Look next at ${next.join(', ')}.`] : []),
    '',
  ].join('\n');
}

const HELP = `npm run identify -- SERIES                      which type of a series in types/ lies before you, question by question
npm run identify -- SERIES crown=pearls weight="1.38 g"     from answers given at once, without a question

  CHARACTER=STATE         an answer; a/b for either, - for "has none", a worn legend with ? and *
  --strict                one answer against a type puts it out; without it, any answer may be a mistake
  --rarity                commoner types count for more, by their published rarity
  --cabinet DIR           another cabinet

It asks what tells most by itself at each step (information gain, by the chance to see it and the trouble it takes), which
is a good order and not always the shortest. "I cannot make it out" is an answer. It stops when one type has 95 per cent, or when
no question would tell 0.05 bit, and says so when nothing in the list seems to fit.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  cabinet: { type: 'string' },
  strict: { type: 'boolean' },
  rarity: { type: 'boolean' },
});
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
const missing = problems.find(({ kind }) => kind === 'cabinet-missing');
if (missing !== undefined) endWith(missing.says);
const { types } = readTypes(records);
const [name, ...words] = positionals;
const series = chosen(types.series, name);
if (series.characters.length === 0)
  endWith(`The series ${series.id} has no characters to ask about. Add them under characters: in its series.yaml.`);
const leaves = [...series.shown].map(([id, shown]) => ({ id, shown }));
const key = keyOf(series.characters, leaves);
const given = answersIn(words, key);
if (!given.ok) endWith(given.problem);
const strict = values.strict === true;
const prior =
  values.rarity === true ? rarityPrior(leaves.map(({ id }) => raritiesKnown(series.rarities.get(id)))) : undefined;
if (prior === null)
  endWith(
    `The series ${series.id} has no rarities of one scale that gives numbers, so they cannot count. Leave --rarity out.`,
  );
const manner = { strict, prior };
const asksAloud = new Map(
  series.fields.characters.flatMap(({ id, ask }) => (ask === undefined ? [] : [[id, ask] as const])),
);
const label = (id: string): string => series.types.get(id)?.label ?? id;
const broaderOf = (id: string): string | null => series.types.get(id)?.broader ?? null;

if (words.length > 0 || !canAsk()) {
  process.stdout.write(formatIdentification(key, given.value, identify(key, given.value, manner), label, broaderOf));
} else {
  const answers = new Map(given.value);
  const passed = new Set<string>();
  for (;;) {
    const found = identify(key, answers, manner);
    const next = found.questions.find(({ character }) => !passed.has(character));
    if (found.stop !== null || next === undefined) {
      process.stdout.write(`\n${formatIdentification(key, answers, found, label, broaderOf)}`);
      break;
    }
    const answer = await askQuestion(key, next, asksAloud);
    if (answer === null) passed.add(next.character);
    else answers.set(next.character, answer);
    const [first] = identify(key, answers, manner).candidates;
    if (first !== undefined) sayAloud(`Most likely ${label(first.id)} (${(first.probability * 100).toFixed(0)} %).`);
  }
}

function chosen(all: readonly TypeSeries[], id: string | undefined): TypeSeries {
  const found = all.find((one) => one.id === id);
  if (found !== undefined) return found;
  const known = all.map((one) => one.id).join(', ');
  return endWith(
    known === ''
      ? `There is no series in ${cabinet.shown}/types. Add a folder with series.yaml and types.csv.`
      : `${id === undefined ? 'Name a series' : `There is no series ${id}`}. Write one of ${known}.`,
  );
}
