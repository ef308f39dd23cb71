import { join } from 'node:path';
import process from 'node:process';
import { checkCabinet, today } from '../catalogue/check-cabinet.ts';
import { recoverCabinet } from '../catalogue/keep/change-cabinet.ts';
import { PRIVATE_FILE, writeWhole } from '../catalogue/keep/flush.ts';
import { readFolder } from '../catalogue/files.ts';
import { linkRecords } from '../catalogue/link.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { isScaleId } from '../core/grade/scales.ts';
import { endWith, readWords } from './parts/command-line.ts';
import { concernsPlan, planSets } from './plan/plan-sets.ts';
import { formatPlan, plainPlan } from './plan/format-plan.ts';
import { GUIDE, readGuide } from './plan/read-guide.ts';
import { readPlanRequest } from './plan/read-plan-request.ts';
import { PRIVACY } from '../privacy/privacy.ts';

const HELP = `npm run plan -- --budget "600 GBP"      what to buy next for the sets of the cabinet in content/

  --budget "600 GBP"      what a year may cost, with its currency; what is left of a year does not pass to the next
  --purchases 6           how many pieces a year at most; without it, as many as the budget pays for
  --years 3               how many years ahead; without it, one
  --set mints-of-1279     one set (several: repeat it); without it, every set that private/guide.csv prices
  --fewer-and-better      nothing below the set's aim
  --cabinet DIR           another cabinet

Fills as many places as it can, then improves as much as it can, then costs as little as it can, never over a year's budget
even if every piece goes for the high end of its price. Prices come from private/guide.csv and from nowhere else.
The plan is printed here and written to private/plan.md in the cabinet. It is private and is published nowhere.
`;

const { values, positionals, cabinet } = readWords(HELP, {
  budget: { type: 'string' },
  purchases: { type: 'string' },
  years: { type: 'string' },
  set: { type: 'string', multiple: true },
  'fewer-and-better': { type: 'boolean' },
  cabinet: { type: 'string' },
});
await recoverCabinet(cabinet.at);
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
const missing = problems.find(({ kind }) => kind === 'cabinet-missing');
if (missing !== undefined) endWith(missing.says);
const request = readPlanRequest({ ...values, words: positionals }, records.named.sets);
if (!request.ok) endWith(request.problem);
const first = problems.filter(concernsPlan);
if (first.length > 0) {
  const inFull = first.map((found) => formatProblem(found, cabinet.shown)).join('\n\n');
  const count = first.length === 1 ? 'the problem' : `the ${first.length} problems`;
  endWith(`${inFull}\n\nNothing was planned: fix ${count} above first.`);
}
const folder = await readFolder(cabinet.at);
const text = folder?.files.find(({ file }) => file === GUIDE)?.text ?? null;
if (text === null)
  endWith(
    `There is no ${GUIDE} in ${cabinet.shown}, and a plan needs prices. Write one that begins with the line set,place,grade,low,high,currency,source,date.`,
  );
const scales = new Map(records.sets.map(({ id, fields }) => [id, fields['aim-scale'] ?? 'uk']));
const guide = readGuide(text, (set) => {
  const scale = scales.get(set);
  return scale !== undefined && isScaleId(scale) ? scale : undefined;
});
const day = today();
const planned = planSets(linkRecords(records), guide, request.value, Number(day.slice(0, 4)));
if (!planned.ok) endWith(planned.problem);
const markdown = formatPlan(planned.value, day);
const file = join(cabinet.at, 'private', 'plan.md');
await writeWhole(file, markdown, PRIVATE_FILE);
process.stdout.write(`${plainPlan(markdown)}\nWritten to ${join(cabinet.shown, 'private', 'plan.md')}\n`);
