import process from 'node:process';
import { formatImprovement, improvementsOf } from '../catalogue/improvements.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { checkWhole } from './parts/check-whole.ts';
import { readWords } from './parts/command-line.ts';

const HELP = `npm run check                 every problem of the cabinet in content/, in one run
npm run check -- --cabinet DIR    another cabinet

  --every                         all the pieces that could be bettered, and all the ways

Each problem names the file, the line and the field, says what is wrong, and what to write instead.
When there is none, it also says what would most improve the catalogue; nothing of that has to be done.
Ends with 1 when there are problems, with 0 when there are none.
`;

/** Ways to improve that are told unasked. */
const TOLD = 3;

const { values, cabinet } = readWords(HELP, { cabinet: { type: 'string' }, every: { type: 'boolean' } });
const { records, problems } = await checkWhole(cabinet.at);
for (const found of problems) process.stdout.write(`${formatProblem(found, cabinet.shown)}\n\n`);
const pieces = `${records.pieces.length} ${records.pieces.length === 1 ? 'piece' : 'pieces'}`;
process.stdout.write(
  problems.length === 0
    ? `${pieces} in ${cabinet.shown}, no problems.\n`
    : `${problems.length} ${problems.length === 1 ? 'problem' : 'problems'} in ${cabinet.shown}.\n`,
);
const improvements = problems.length === 0 || values.every === true ? improvementsOf(records) : [];
if (improvements.length > 0) {
  const isEvery = values.every === true;
  const told = improvements.slice(0, isEvery ? undefined : TOLD);
  process.stdout.write(
    [
      '\nWhat would improve the catalogue most, when you have an evening:',
      ...told.map((improvement) => formatImprovement(improvement, isEvery ? Infinity : undefined)),
      ...(isEvery ? [] : ['All of it: npm run check -- --every']),
    ].join('\n\n') + '\n',
  );
}
process.exitCode = problems.length === 0 ? 0 : 1;
