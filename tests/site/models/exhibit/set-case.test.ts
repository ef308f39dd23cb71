import { beforeAll, describe, expect, test } from 'vitest';
import type { SetCase } from '../../../../src/site/models/exhibit/set-case.ts';
import { setCase } from '../../../../src/site/models/exhibit/set-case.ts';
import { shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let cases: readonly SetCase[] = [];
beforeAll(async () => {
  const cabinet = await wholeCabinet('content');
  const [first] = cabinet.lists.exhibits;
  if (first === undefined) throw new Error('The demo has no exhibit.');
  const shown = shownExhibit(cabinet, first);
  cases = shown.cases.map((one) => setCase(one, shown.label));
});

describe('the demo exhibit', () => {
  test('fits its two cases', () => {
    for (const one of cases) console.log(one.misfits, one.groups.map(g => [g.heading.width, g.heading.height, g.text?.card.width, g.text?.card.height, ...g.cells.map(c => c.labelBox.height)]));
    expect(cases.flatMap(({ misfits }) => misfits)).toEqual([]);
  });
});
