import type { Records } from '../../catalogue/records.ts';
import { askText, askWhich, askYesOrNo, sayAloud } from '../parts/ask.ts';
import type { Consulted } from '../read/consulted.ts';
import { idOf, LISTED, newName, reignFrom } from './names.ts';
import type { Listed } from './names.ts';
import type { Answers, NewFile } from './new-piece.ts';
import { nextNumber } from './new-piece.ts';
import { KINDS, QUESTIONS, readAloud } from './questions.ts';

type Asked = {
  /** What flags have said already; it is not asked again. */
  readonly said: Answers;
  readonly records: Records;
  readonly consulted: Consulted;
  /** Files of rulers, mints and denominations that are made on the way. */
  readonly made: NewFile[];
};

const EMPTY = 'leave it empty if that is not recorded';

/** Asks for a piece step by step; each answer is read aloud as it is understood. */
export async function askForPiece({
  said,
  records,
  consulted,
  made,
}: Asked): Promise<Record<string, string | readonly string[]>> {
  const answers: Record<string, string | readonly string[]> = { ...said };
  const numbers = records.pieces.map(({ fields }) => fields.number);
  answers['number'] ??= await askText('Its number in your inventory?', {
    initial: nextNumber(numbers),
    refuse: (given) =>
      given === '' ? 'A piece wants a number.' : numbers.includes(given) ? `${given} is another piece’s.` : null,
  });
  answers['kind'] ??= await askWhich(
    'What kind of piece is it?',
    KINDS.map((value) => ({ value, label: value })),
  );
  const names: Partial<Record<Listed, string>> = {};
  for (const [listed, question] of NAMED) {
    if (said[listed] !== undefined) continue;
    const found = await askName(listed, question, records, made);
    if (found !== null) [answers[listed], names[listed]] = [listed === 'ruler' ? [found.id] : found.id, found.name];
  }
  for (const question of QUESTIONS) {
    const { flag, asks, example, isList } = question;
    if (asks === undefined || said[flag] !== undefined || (flag === 'problem' && answers['grade'] === undefined))
      continue;
    const given = await askText(`${asks} (${[example, EMPTY].filter((part) => part !== undefined).join('; ')})`, {
      refuse: (answer) => {
        if (answer === '') return null;
        const refused = partsOf(answer, isList).map((part) => readAloud(question, part, consulted));
        return refused.find((outcome) => !outcome.ok)?.problem ?? null;
      },
    });
    if (given === '') continue;
    const parts = partsOf(given, isList);
    answers[flag] = isList === true ? parts : given;
    for (const part of parts) {
      const aloud = readAloud(question, part, consulted);
      if (aloud.ok && aloud.value !== '') sayAloud(aloud.value);
    }
    if (flag === 'grade' && !/^not graded/.test(given) && said['grade-scale'] === undefined)
      answers['grade-scale'] = await askText('On whose scale?', { initial: 'uk' });
  }
  const suggested = [[names.denomination, names.ruler].filter((name) => name !== undefined).join(' of '), names.mint]
    .filter((name) => name !== undefined && name !== '')
    .join(', ');
  answers['title'] ??= await askText('What shall it be called?', {
    initial: suggested.charAt(0).toUpperCase() + suggested.slice(1),
    refuse: (given) => (given === '' ? 'A piece wants a title.' : null),
  });
  answers['story'] ??= await askText('Its story, in a few words? (you can write more in its file)');
  return answers;
}

const NAMED: readonly (readonly [Listed, string])[] = [
  ['denomination', 'What was it worth?'],
  ['ruler', 'In whose name was it made?'],
  ['mint', 'Where was it made?'],
];

async function askName(
  listed: Listed,
  question: string,
  records: Records,
  made: NewFile[],
): Promise<{ id: string; name: string } | null> {
  const known = records[LISTED[listed]].map(({ fields }) => fields.name);
  const said = await askText(`${question} (${known.slice(0, 3).join(', ')}…; none; unknown; ${EMPTY})`);
  if (said === '') return null;
  const id = idOf(listed, said, records);
  if (id !== null) return { id, name: records[LISTED[listed]].find((one) => one.id === id)?.fields.name ?? '' };
  if (!(await askYesOrNo(`There is no ${listed} "${said}" in the cabinet yet. Make one?`, true)))
    return askName(listed, question, records, made);
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
