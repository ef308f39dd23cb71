import process from 'node:process';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { raritiesKnown } from '../catalogue/types/read-rarities.ts';
import type { TypeSeries } from '../catalogue/types/series.ts';
import { readTypes } from '../catalogue/types/types-of.ts';
import { identify, rarityPrior } from '../core/types/key/identify.ts';
import { keyOf } from '../core/types/key/key.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { answersIn, askQuestion, formatIdentification } from './identify/questions-and-answers.ts';
import { canAsk, sayAloud } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run identify -- SERIES                      which type of a series in types/ lies before you, question by question
npm run identify -- SERIES crown=pearls weight="1.38 g"     from answers given at once, without a question

  CHARACTER=STATE         an answer; a/b for either, - for "has none", a worn legend with ? and *
  --strict                one answer against a type puts it out; without it, any answer may be a mistake
  --rarity                commoner types count for more, by their published rarity
  --cabinet DIR           another cabinet

It asks what tells most by itself at each step (information gain, by the chance to see it and the trouble it takes), which
is a good order and not always the shortest. "I cannot tell" is an answer. It stops when one type has 95 per cent, or when
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
    const answer = await askQuestion(key, next);
    if (answer === null) passed.add(next.character);
    else answers.set(next.character, answer);
    const [first] = identify(key, answers, manner).candidates;
    if (first !== undefined) sayAloud(`Most likely ${label(first.id)}, ${(first.probability * 100).toFixed(0)} %.`);
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
