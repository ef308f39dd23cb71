import { expect, test } from 'vitest';
import type { PhotographManifest } from '../../../../src/photographs/cache/manifest.ts';
import type { PublicPiece } from '../../../../src/publish/public-piece.ts';
import { representative } from '../../../../src/site/models/shared/representative.ts';

// Common practice: a list is illustrated by an ordinary piece in good state.
type Facts = Partial<Record<'status' | 'problem' | 'mint', string>> & { readonly low?: number; readonly of?: string };
const piece = (id: string, { status = 'kept', problem, mint, low, of = 'penny' }: Facts = {}): PublicPiece =>
  ({
    id, kind: 'coin', status, denomination: { id: of, name: of }, treatments: [], problem: problem ?? null,
    sure: mint === undefined ? {} : { mint }, grade: low === undefined ? null : { low },
  }) as unknown as PublicPiece; // prettier-ignore
const seen = (...ids: readonly string[]) => ({
  photographs: Object.fromEntries(ids.map((id) => [id, []])) as PhotographManifest,
});
const isCertain = ({ sure }: PublicPiece): boolean => sure.mint === undefined;

test.for([
  ['the kind of which there are most', [piece('styca', { of: 'styca', low: 50 }), piece('a'), piece('b')], 'a'],
  ['the highest grade', [piece('a', { low: 15 }), piece('b', { low: 40 })], 'b'],
  ['no problem before a higher grade', [piece('a', { low: 15 }), piece('b', { low: 40, problem: 'holed' })], 'a'],
  ['what is certain', [piece('a', { mint: 'possible', low: 60 }), piece('b')], 'b'],
  ['what is doubtful where nothing else is', [piece('a', { mint: 'possible' })], 'a'],
  ['nothing that is no longer here', [piece('a', { status: 'sold' })], null],
  ['the first of equals', [piece('a', { low: 20 }), piece('b', { low: 20 })], 'a'],
] as const)('a list shows %s', ([, pieces, expected]) => {
  const cabinet = seen('a', 'b', 'styca');
  expect(representative(pieces, cabinet, isCertain)?.id ?? null).toBe(expected);
});

test('what has no photograph stands for nobody', () => {
  expect(representative([piece('a')], seen('b'), isCertain)).toBeNull();
});
