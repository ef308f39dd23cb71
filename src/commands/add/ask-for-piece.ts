import type { Records } from '../../catalogue/records.ts';
import { askText, askWhich, sayAloud } from '../parts/ask.ts';
import type { Consulted } from '../read/consulted.ts';
import { nearestName } from '../../catalogue/nearest.ts';
import { idOf, LISTED, namesIn, newName, reignFrom } from './names.ts';
import type { Listed } from './names.ts';
import type { Answers, NewFile } from './new-piece.ts';
import { nextNumber } from './new-piece.ts';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import { QUESTIONS, readAloud } from './questions.ts';
import { readLedger } from '../../import/cells/ledger-cell.ts';
import { isLedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';

type Asked = {
  /** What flags have said already; it is not asked again. */
  readonly said: Answers;
  readonly records: Records;
  readonly consulted: Consulted;
  /** Files of rulers, mints and denominations that are made on the way. */
  readonly made: NewFile[];
  /** Keeps what has been answered so far, for when the keeper is called away. */
  readonly keep: (answers: Answers) => Promise<void>;
};

const EMPTY = 'leave it empty if that is not recorded';

/** Asks for a piece step by step; each answer is read aloud as it is understood. */
export async function askForPiece({
  said,
  records,
  consulted,
  made,
  keep,
}: Asked): Promise<Record<string, string | readonly string[]>> {
  const answers: Record<string, string | readonly string[]> = { ...said };
  const currency = records.cabinet?.fields.currency;
  const numbers = records.pieces.map(({ fields }) => fields.number);
  answers['number'] ??= await askText('Its number in your inventory?', {
    initial: nextNumber(numbers),
    refuse: (given) =>
      given === '' ? 'A piece wants a number.' : numbers.includes(given) ? `${given} is another piece’s.` : null,
  });
  answers['kind'] ??= await askWhich('What kind of piece is it?', KIND_CHOICES);
  await keep(answers);
  const names: Partial<Record<Listed, string>> = {};
  for (const [listed, question] of NAMED) {
    if (said[listed] !== undefined) continue;
    const found = await askNames(listed, question, records, made);
    const [first] = found;
    if (first === undefined) continue;
    answers[listed] = listed === 'ruler' ? found.map(({ id }) => id) : first.id;
    names[listed] = found.map(({ name }) => name).join(' and ');
    await keep(answers);
  }
  for (const question of QUESTIONS) {
    const { flag, asks, example, isList } = question;
    if (asks === undefined || said[flag] !== undefined || (flag === 'problem' && answers['grade'] === undefined))
      continue;
    const given = await askText(`${asks} (${[example, EMPTY].filter((part) => part !== undefined).join('; ')})`, {
      refuse: (answer) => {
        if (answer === '') return null;
        const inLedger = question.isPrivate === true ? privateAnswer(flag, answer, currency) : null;
        if (inLedger !== null) return inLedger.ok ? null : inLedger.problem;
        const refused = partsOf(answer, isList).map((part) => readAloud(question, part, consulted));
        return refused.find((outcome) => !outcome.ok)?.problem ?? null;
      },
    });
    if (given === '') continue;
    const parts = partsOf(given, isList);
    answers[flag] = isList === true ? parts : given;
    await keep(answers);
    for (const part of question.isPrivate === true ? [] : parts) {
      const aloud = readAloud(question, part, consulted);
      if (aloud.ok && aloud.value !== '') sayAloud(aloud.value);
    }
    if (flag === 'grade' && !/^not graded/.test(given) && said['grade-scale'] === undefined)
      answers['grade-scale'] = await askText('On whose scale?', { initial: 'uk' });
  }
  answers['title'] ??= await askText('What shall it be called?', {
    initial: suggestedTitle(names),
    refuse: (given) => (given === '' ? 'A piece wants a title.' : null),
  });
  answers['story'] ??= await askText('Its story, in a few words? (you can write more in its file)');
  return answers;
}

/** `Penny of Edward I, York`, from what is known of it. */
function suggestedTitle({ denomination, ruler, mint }: Partial<Record<Listed, string>>): string {
  const what = [denomination, ruler].filter((name) => name !== undefined).join(' of ');
  const title = [what, mint].filter((name) => name !== undefined && name !== '').join(', ');
  return title.charAt(0).toUpperCase() + title.slice(1);
}

const KIND_CHOICES = KINDS.map((value) => ({ value, label: value }));
const NAMED: readonly (readonly [Listed, string])[] = [
  ['denomination', 'Which denomination is it?'],
  ['ruler', 'In whose name was it made?'],
  ['mint', 'Where was it made?'],
];

type FoundName = { readonly id: string; readonly name: string };

/** Names of one list; several rulers with a semicolon between. */
async function askNames(
  listed: Listed,
  question: string,
  records: Records,
  made: NewFile[],
): Promise<readonly FoundName[]> {
  const known = records[LISTED[listed]].map(({ fields }) => fields.name);
  const several = listed === 'ruler' ? 'two of a joint reign with a semicolon between; ' : '';
  const said = await askText(
    `${question} (${[...known.slice(0, 3), ''].join(', ').replace(/, $/, '…; ')}${several}none; unknown; ${EMPTY})`,
  );
  const found: FoundName[] = [];
  for (const name of listed === 'ruler' ? said.split(/\s*;\s*/) : [said]) {
    if (name === '') continue;
    const one = await nameSaid(listed, name, records, made);
    if (one === null) return askNames(listed, question, records, made);
    found.push(one);
  }
  return found;
}

/** A name that was said: of the list, of one much like it, or a new one; null where it is to be said again. */
async function nameSaid(listed: Listed, said: string, records: Records, made: NewFile[]): Promise<FoundName | null> {
  const named = (id: string): FoundName => ({
    id,
    name: records[LISTED[listed]].find((one) => one.id === id)?.fields.name ?? '',
  });
  const id = idOf(listed, said, records);
  if (id !== null) return named(id);
  const near = nearestName(said, namesIn(listed, records));
  const wanted = await askWhich(`There is no ${listed} "${said}" in the cabinet yet.`, [
    ...(near === null ? [] : [{ value: 'near', label: `It is ${near}` }]),
    { value: 'new', label: `Make a new ${listed} "${said}"` },
    { value: 'again', label: 'Say it again' },
  ]);
  if (wanted === 'again') return null;
  const nearId = wanted === 'near' && near !== null ? idOf(listed, near, records) : null;
  if (nearId !== null) return named(nearId);
  const fresh = newName(listed, said, await about(listed), records);
  if (fresh.made !== null) made.push(fresh.made);
  return { id: fresh.id, name: said };
}

async function about(listed: Listed): Promise<Readonly<Record<string, string | readonly Record<string, string>[]>>> {
  if (listed === 'denomination') return {};
  if (listed === 'mint') {
    const area = await askText(`In which region is it? (${EMPTY})`);
    return area === '' ? {} : { area };
  }
  const wanted = (given: string): string | null => (given === '' ? 'A ruler’s file wants this.' : null);
  const realm = await askText('What did they rule?', { placeholder: 'England', refuse: wanted });
  const reign = await askText('From when to when?', {
    placeholder: '1216/1272',
    refuse: (given) => {
      const read = reignFrom(given);
      return read.ok ? null : read.problem;
    },
  });
  const read = reignFrom(reign);
  return { realm, reigns: read.ok ? [read.value] : [] };
}

function partsOf(answer: string, isList: true | undefined): readonly string[] {
  return isList === true ? answer.split(/\s*[,;]\s*/).filter((part) => part !== '') : [answer];
}

/** What a refusal of import says of its mapping, which a single answer does not have. */
const OF_A_SHEET = /Say in the mapping [^.]*?, or write|Write [^.]* under read: in the mapping, or/;

/** A private answer as it will be in the ledger, read as import reads a cell: `28/11/2026`, and `240` in the cabinet's currency. */
export function privateAnswer(column: string, answer: string, currency: string | undefined): Outcome<string> {
  if (!isLedgerColumn(column)) return good(answer);
  const settings = currency === undefined ? {} : { currency };
  const said = readLedger({ text: answer, settings }, column, column, undefined);
  const unread = said.find(({ kind }) => kind === 'unread');
  if (unread?.kind === 'unread') return refuse(unread.because.replace(OF_A_SHEET, 'Write'));
  const [first] = said;
  return good(first?.kind === 'ledger' ? first.text : answer);
}
