import process from 'node:process';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { readTypes } from '../catalogue/types/types-of.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { offerTypes } from './parts/offer-types.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run types                   the series of the cabinet in content/, and how many pieces have a type
npm run types -- --assign       proposes a type for every piece that has none, and writes type: after you agree

  --yes                   writes without asking what follows from an exact reference alone
  --cabinet DIR           another cabinet

A type is proposed where a reference of the piece is the very number of one type and nothing the piece says contradicts it;
and, where no reference tells, where its ruler, denomination, mint and date leave one type of a series (never with --yes).
Where several types fit, they are listed and nothing is written.
`;

const { values, cabinet } = readWords(HELP, {
  cabinet: { type: 'string' },
  assign: { type: 'boolean' },
  yes: { type: 'boolean' },
});
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
if (problems.length > 0)
  endWith(
    `${problems.map((found) => formatProblem(found, cabinet.shown)).join('\n\n')}\n\nFix the problems above first.`,
  );
const { types } = readTypes(records);
if (values.assign !== true) {
  for (const series of types.series) {
    const of = records.pieces.filter(
      ({ fields }) =>
        fields.type !== undefined && (series.types.has(fields.type) || fields.type.startsWith(`${series.id}/`)),
    );
    process.stdout.write(
      `${series.id}: ${series.fields.title}, ${String(series.types.size)} types, ${String(of.length)} ${of.length === 1 ? 'piece' : 'pieces'}\n`,
    );
  }
  if (types.series.length === 0) process.stdout.write(`There is no series in ${cabinet.shown}/types.\n`);
} else await offerTypes(cabinet.at, records, values.yes === true);
