import process from 'node:process';
import { formatProblem } from '../catalogue/problem.ts';
import { checkWhole } from './parts/check-whole.ts';
import { readWords } from './parts/command-line.ts';

const HELP = `npm run check                 every problem of the cabinet in content/, in one run
npm run check -- --cabinet DIR    another cabinet

Each problem names the file, the line and the field, says what is wrong, and what to write instead.
Ends with 1 when there are problems, with 0 when there are none.
`;

const { cabinet } = readWords(HELP, { cabinet: { type: 'string' } });
const { records, problems } = await checkWhole(cabinet.at);
for (const found of problems) process.stdout.write(`${formatProblem(found, cabinet.shown)}\n\n`);
const pieces = `${records.pieces.length} ${records.pieces.length === 1 ? 'piece' : 'pieces'}`;
process.stdout.write(
  problems.length === 0
    ? `${pieces} in ${cabinet.shown}, no problems.\n`
    : `${problems.length} ${problems.length === 1 ? 'problem' : 'problems'} in ${cabinet.shown}.\n`,
);
process.exitCode = problems.length === 0 ? 0 : 1;
