import { beforeAll, describe, expect, test } from 'vitest';
import type { PublicPiece } from '../../../src/publish/public-piece.ts';
import type { Cabinet } from '../../../src/site/cabinet.ts';
import { labelText } from '../../../src/catalogue/exhibits/label-text.ts';
import { wholeCabinet } from '../../site/whole-cabinet.ts';

let cabinet: Cabinet;
beforeAll(async () => {
  cabinet = await wholeCabinet('content');
});
const piece = (id: string): PublicPiece => cabinet.listed.find((one) => one.id === id) ?? expect.fail(`no piece ${id}`);

describe('a label', () => {
  test('says what the keeper wrote', () =>
    expect(labelText(piece('york-penny-3b'), 'My words.').label).toBe('My words.'));

  test('else tells what it is, when, of what and how heavy, and one book', () => {
    // What content/pieces/york-penny-3b/piece.md records.
    expect(labelText(piece('york-penny-3b'), undefined).label.replaceAll('\u00a0', ' ')).toBe(
      'Penny of Edward I, York, class 3b. 1280–81. Silver, 1.38 g ± 0.01. North 1017.',
    );
  });

  // The trade's rule that a copy is shown as one: common practice, and law in places (16 CFR 304 for what is sold).
  test('calls a modern copy a copy, whatever the keeper wrote', () => {
    expect(labelText(piece('raven-replica'), 'The raven of Anlaf.').label).toBe('A modern copy. The raven of Anlaf.');
    expect(labelText(piece('raven-replica'), 'A modern copy, marked COPY.').label).toBe('A modern copy, marked COPY.');
  });
});
