import { beforeAll, describe, expect, test } from 'vitest';
import { widthOfText } from '../../../../src/core/cases/typeset-text.ts';
import type { PublicPiece } from '../../../../src/publish/public-piece.ts';
import type { Cabinet } from '../../../../src/site/cabinet.ts';
import type { Mark } from '../../../../src/site/models/paper/marks.ts';
import { TICKET_SIZES, ticketFor } from '../../../../src/site/models/paper/tickets.ts';
import { wholeCabinet } from '../../whole-cabinet.ts';

let cabinet: Cabinet;
beforeAll(async () => {
  cabinet = await wholeCabinet('content');
});
const piece = (id: string): PublicPiece => cabinet.listed.find((one) => one.id === id) ?? expect.fail(`no piece ${id}`);
const FIT = TICKET_SIZES[0] ?? expect.fail('no holder');
const ticketOfPiece = (one: PublicPiece, holder = FIT) => ticketFor(one, holder).cutOut;
const discs = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'oval' ? [mark.box] : []));
const lines = (marks: readonly Mark[]) =>
  marks.flatMap((mark) =>
    mark.kind === 'text' ? [{ ...mark, says: mark.line.map(({ text }) => text).join('') }] : [],
  );

describe('a ticket', () => {
  // Common practice: round tickets of 24 to 45 mm, no smaller than the piece that lies on them.
  test('is from 24 to 45 mm wide and holds the piece, if one so wide can', () => {
    for (const one of cabinet.listed) {
      const boxes = discs(ticketOfPiece(one).marks);
      expect(boxes).toHaveLength(2);
      for (const { width, height } of boxes) {
        expect(width).toBe(height);
        expect(width).toBeGreaterThanOrEqual(24);
        expect(width).toBeLessThanOrEqual(45);
      }
    }
    const penny = ticketOfPiece(piece('york-penny-3b'));
    expect(discs(penny.marks)[0]?.width).toBe(24);
  });

  test('no line leaves the circle', () => {
    for (const one of cabinet.listed) {
      const { marks } = ticketOfPiece(one);
      const boxes = discs(marks);
      for (const { says, x, y, size } of lines(marks)) {
        const disc = boxes.find(({ left, width }) => Math.abs(left + width / 2 - x) < 0.01) ?? expect.fail('no disc');
        const radius = disc.width / 2;
        const half = widthOfText(says, (size * 72) / 25.4) / 2;
        // From the height of a capital above the line to the line itself: EB Garamond's capitals are 0.65 of its size.
        for (const edge of [y - 0.65 * size, y]) {
          expect(Math.hypot(half, edge - disc.top - radius), `${one.id}: ${says}`).toBeLessThanOrEqual(radius);
        }
      }
    }
  });

  // The order of the trade. Common practice.
  test('tells number, ruler, denomination, mint and date on the front; reference, weight, axis and issuer on the back', () => {
    const told = lines(ticketOfPiece(piece('york-penny-3b')).marks).map(({ says }) => says);
    const front = told.slice(0, told.lastIndexOf('0142'));
    const back = told.slice(told.lastIndexOf('0142'));
    expect(front).toEqual(['0142', 'Edward I', 'penny', 'York', '1280–81']);
    expect(back.map((says) => says.replaceAll('\u00a0', ' '))).toEqual([
      '0142',
      'North 1017',
      'silver, 1.38 g ± 0.01',
      'die axis 6h',
      'The king',
    ]);
  });

  const frontOf = (one: PublicPiece) => {
    // A pocket of two inches, in which every fact has room.
    const told = lines(ticketOfPiece(one, TICKET_SIZES.at(-1)).marks).map(({ says }) => says.replaceAll('\u00a0', ' '));
    const second = told.lastIndexOf(one.number);
    return [told.slice(0, second), told.slice(second)].map((side) => side.join(' | '));
  };

  // What a love token is, is what was made of the coin: common practice.
  test('an altered piece is what was made of it, and not the coin that it was', () => {
    const altered = { host: 'Penny of a king, 1797', done: [{ what: 'engraved' as const }] };
    const [front = '', back = ''] = frontOf({ ...piece('york-penny-3b'), title: 'Love token', altered });
    expect(front).toContain('Love token | made from: Penny of a king, 1797');
    expect(front + back).not.toMatch(/Edward I|York|The king/);
  });

  // A ticket names the actual authority beside the stated one, and doubt is written “?” or “prob.”. Common practice.
  test('names for whom it was struck, and keeps every doubt', () => {
    const named = (name: string) => ({ id: name, name });
    const short = {
      ...piece('york-penny-3b'),
      rulers: [named('Henry II')],
      struckFor: [named('John')],
      issuer: 'Abbot of Selby',
      sure: {
        mint: 'possible', ruler: 'probable', 'struck-for': 'possible', references: 'probable', issuer: 'possible', date: 'probable', denomination: 'possible', metal: 'possible',
      },
    } as const; // prettier-ignore
    expect(frontOf(short)).toEqual([
      '0142 | prob. Henry II (for John?) | penny? | York? | prob. 1280–81',
      '0142 | prob. North 1017 | silver?, 1.38 g ± 0.01 | die axis 6h | Abbot of Selby?',
    ]);
  });

  test('goes by its issuer where it names no ruler, and by its title where it has neither', () => {
    const of = (facts: Partial<PublicPiece>) => frontOf({ ...piece('york-penny-3b'), rulers: 'none', ...facts })[0];
    expect(of({ issuer: 'Archbishop Wigmund' })).toBe('0142 | Archbishop Wigmund | penny | York | 1280–81');
    const title = 'Penny in the name of St Peter, with the sword';
    expect(of({ issuer: null, title })).toBe('0142 | Penny in the name of St Peter | York | 1280–81');
    expect(of({ issuer: 'unknown', title: 'St Peter money, York' })).toBe(
      '0142 | St Peter money | penny | York | 1280–81',
    );
  });

  test('what does not fit is left out, from the end, seen to be and told, and never made smaller', () => {
    const long = 'An unusually long reference that would never fit a round ticket of this size in any number of lines';
    const crowded = {
      ...piece('york-penny-3b'),
      dated: long,
      rulers: [{ id: 'a', name: 'Edward I' }],
      denomination: { id: 'b', name: long },
    };
    const small = TICKET_SIZES.find(({ id }) => id === 'round-24') ?? expect.fail('no well of 24 mm');
    const { cutOut, leftOut } = ticketFor(crowded, small);
    const told = lines(cutOut.marks);
    const front = told
      .map(({ says }) => says)
      .slice(
        0,
        told.findLastIndex(({ says }) => says === '0142'),
      );
    expect(front).toEqual(['0142', 'Edward I', '…']);
    expect(leftOut).toEqual([long, 'York', '1280–81']);
    expect(new Set(told.map(({ size }) => size)).size).toBe(1);
  });

  // A keeper who leaves the size to the program gets the date, and a well that is made (common practice: 24, 28, 32 mm).
  test('is one well wider than its piece needs where a fact would be left out, and loses none in the demo', () => {
    expect(discs(ticketOfPiece(piece('st-peter-sword')).marks)[0]?.width).toBe(28);
    for (const one of cabinet.listed) expect.soft([one.number, ticketFor(one, FIT).leftOut]).toEqual([one.number, []]);
  });

  // The pockets that are sold are squares of 2 inches; trays have wells of 24 to 45 mm. Common practice.
  test.for(TICKET_SIZES)('for $id has two sides of one size, the same way from the fold', (holder) => {
    const { marks } = ticketOfPiece(piece('york-penny-3b'), holder);
    const sides = marks.flatMap((mark) =>
      'name' in mark && mark.name === 'ticket' && 'box' in mark ? [mark.box] : [],
    );
    const fold = marks.flatMap((mark) => (mark.kind === 'line' && mark.name === 'fold' ? [mark.x1] : []));
    const [front, back] = sides;
    if (front === undefined || back === undefined) expect.fail('a ticket has two sides');
    if (holder.across !== null) expect(front.width).toBe(holder.across);
    expect([back.width, back.height, back.top]).toEqual([front.width, front.height, front.top]);
    expect((fold[0] ?? 0) - front.left - front.width).toBeCloseTo(back.left - (fold[0] ?? 0), 9);
  });
});
