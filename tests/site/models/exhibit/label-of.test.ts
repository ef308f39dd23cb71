import { beforeAll, describe, expect, test } from 'vitest';
import type { PublicPiece } from '../../../../src/publish/public-piece.ts';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import { labelOf } from '../../../../src/site/models/exhibit/label-of.ts';
import { nameless, withoutName } from '../../../../src/site/models/paper/print-forms.ts';
import { shownExhibit } from '../../../../src/site/models/exhibit/shown-exhibit.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let cabinet: Cabinet;
beforeAll(async () => {
  cabinet = await wholeCabinet('content');
});
const piece = (id: string): PublicPiece => cabinet.listed.find((one) => one.id === id) ?? expect.fail(`no piece ${id}`);

describe('a label', () => {
  test('says what the keeper wrote', () => expect(labelOf(piece('york-penny-3b'), 'My words.')).toBe('My words.'));

  test('else tells what it is, when, of what and how heavy, and one book', () => {
    // What content/pieces/york-penny-3b/piece.md records.
    expect(labelOf(piece('york-penny-3b'), undefined).replaceAll('\u00a0', ' ')).toBe(
      'Penny of Edward I, York, class 3b. 1280–81. Silver, 1.38 g ± 0.01. North 1017.',
    );
  });

  // The trade's rule that a copy is shown as one: common practice, and law in places (16 CFR 304 for what is sold).
  test('calls a modern copy a copy, whatever the keeper wrote', () => {
    expect(labelOf(piece('raven-replica'), 'The raven of Anlaf.')).toBe('A modern copy. The raven of Anlaf.');
    expect(labelOf(piece('raven-replica'), 'A modern copy, marked COPY.')).toBe('A modern copy, marked COPY.');
  });
});

describe('an anonymous exhibit', () => {
  test('has the keeper’s name in none of its words', () => {
    const { keeper } = cabinet.lists.cabinet;
    const [first] = cabinet.lists.exhibits;
    if (first === undefined) throw new Error('The demo has no exhibit.');
    const shown = { ...shownExhibit(cabinet, first), statement: `Laid out by ${keeper}.`, acknowledgements: keeper };
    const clear = withoutName(shown, keeper);
    // The books keep their authors, whoever they are.
    expect(JSON.stringify({ ...clear, bibliography: [], furtherReading: [] })).not.toContain(keeper);
    expect(clear.statement).toBe('Laid out by the exhibitor.');
  });

  test('finds the name over a line break and in any letters', () => {
    expect(nameless('By HESTER\nLayerthorpe, York', 'Hester Layerthorpe')).toBe('By the exhibitor, York');
  });
});
