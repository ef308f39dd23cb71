import { describe, expect, test } from 'vitest';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../../src/publish/public-piece.ts';
import { fineTotals } from '../../../../src/site/models/measures/measures-page.ts';
import { layOutWeights } from '../../../../src/site/models/measures/lay-out-weights.ts';
import { seriesCharts } from '../../../../src/site/models/measures/series-charts.ts';
import { weightCharts } from '../../../../src/site/models/measures/weight-rows.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';
import { measuresWords } from '../../../../src/site/words/measures.ts';

function piece(number: string, facts: string): string {
  return `---\nnumber: "${number}"\ntitle: Piece ${number}\nkind: coin\n${facts}---\nA story.\n`;
}

async function cabinetWith(files: Readonly<Record<string, string | null>>) {
  const { pieces: linked, ...lists } = linkRecords(readCabinet(changed(await markedCabinet(), files)).records);
  const pieces = publicPieces({ ...lists, pieces: linked });
  return { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs: {}, changed: {} };
}

const NOTHING_ELSE = {
  'pieces/plain-penny/piece.md': null,
  'pieces/old-medal/piece.md': null,
  'pieces/unlisted-groat/piece.md': null,
};

describe('fine metal in the cabinet', () => {
  // The sovereign: 123.27447 grains of 22 carats, Coinage Act 1870, first schedule; 0.2354 troy ounce fine is common practice; told to three figures.
  const SOVEREIGN = 'metal: gold\nweight: 123.27447 grains\nfineness: 22 ct\n';

  test('a sovereign holds 0.235 troy ounce of fine gold', async () => {
    const { listed } = await cabinetWith({ ...NOTHING_ELSE, 'pieces/one/piece.md': piece('1', SOVEREIGN) });
    expect(fineTotals(listed)).toEqual([
      { metal: 'Gold', total: '7.32 g, which is 0.235 troy ounces', counted: 'in 1 piece', left: '' },
    ]);
  });

  test('an unlisted piece is in no total, whatever is handed in', async () => {
    const files = { ...NOTHING_ELSE, 'pieces/one/piece.md': piece('1', `${SOVEREIGN}publish: unlisted\n`) };
    expect(fineTotals((await cabinetWith(files)).pieces)).toEqual([]);
  });

  test('what was sold or plated is not counted, and what is not known is said', async () => {
    const { listed } = await cabinetWith({
      ...NOTHING_ELSE,
      'pieces/one/piece.md': piece('1', SOVEREIGN),
      'pieces/two/piece.md': piece('2', `status: sold\n${SOVEREIGN}`),
      'pieces/three/piece.md': piece('3', 'metal: copper, gold-plated\nweight: 4 g\nfineness: 22 ct\n'),
      'pieces/four/piece.md': piece('4', 'metal: gold\nweight: 4 g\n'),
    });
    expect(fineTotals(listed).map(({ counted, left }) => [counted, left])).toEqual([
      ['in 1 piece', '1 more piece of this metal is left out, because weight or fineness is not recorded.'],
    ]);
  });
});

/** 243 and 300 pence to the Tower pound of 5,400 grains: Craik, The History of British Commerce (1844). */
const PENNY = `name: penny
plural: pennies
standards:
  - { from: 1279, to: 1345, weight: 22 2/9 grains, fineness: 925/1000, metal: silver, source: Craik 1844 }
  - { from: 1351, to: 1411, weight: 18 grains, fineness: 925/1000, metal: silver, source: Craik 1844 }
`;

describe('weights against the standard', () => {
  const penny = (number: string, date: string, weight: string, more = '') =>
    piece(number, `denomination: penny\nmetal: silver\ndate: ${date}\nweight: ${weight}\n${more}`);

  test('each piece lies in the row of its standard; one that lost metal is hollow', async () => {
    const cabinet = await cabinetWith({
      ...NOTHING_ELSE,
      'denominations/penny.yaml': PENNY,
      'pieces/one/piece.md': penny('1', '1280', '1.40 g'),
      'pieces/two/piece.md': penny('2', '1281', '1.02 g', 'treatments: [clipped]\n'),
      'pieces/three/piece.md': penny('3', '1360', '1.10 g'),
      'pieces/four/piece.md': penny('4', '1340/1355', '1.20 g'),
    });
    const [chart] = weightCharts(cabinet);
    expect(chart?.rows.map(({ says, dots }) => [says, dots.map(({ isHollow }) => isHollow)])).toEqual([
      ['1279–1345: 1.44 g', [true, true, false]],
      ['1351–1411: 1.166 g', [false]],
    ]);
  });

  test('a penny of copper is in the row of those without a standard', async () => {
    const cabinet = await cabinetWith({
      ...NOTHING_ELSE,
      'denominations/penny.yaml': PENNY,
      'pieces/one/piece.md': penny('1', '1280', '1.40 g'),
      'pieces/two/piece.md': penny('2', '1281', '18.8 g').replace('silver', 'copper'),
      'pieces/three/piece.md': penny('3', '1281', '18.8 g'),
    });
    expect(weightCharts(cabinet)[0]?.table.rows.map((row) => row.slice(2))).toEqual([
      ['1279–1345: 1.44 g', '97'],
      [measuresWords.weights.noStandard, 'not known'],
      [measuresWords.weights.noStandard, 'not known'],
    ]);
  });

  // Success criterion 2.5.8 of WCAG 2.2: circles of 24 CSS pixels around two targets do not meet.
  test.for([
    ['wide', 896],
    ['narrow', 340],
  ] as const)('on a %s page of %i pixels no two dots are nearer than 24 pixels', async ([page, pixels]) => {
    const weights = ['1.40', '1.40', '1.38', '1.41', '1.36', '1.30', '1.02'];
    const pieces = weights.map((grams, at): [string, string] => [
      `pieces/p${String(at)}/piece.md`,
      penny(String(100 + at), '1280', `${grams} g`),
    ]);
    const cabinet = await cabinetWith({
      ...NOTHING_ELSE,
      'denominations/penny.yaml': PENNY,
      ...Object.fromEntries(pieces),
    });
    const [chart] = weightCharts(cabinet);
    const [row] = chart === undefined ? [] : layOutWeights(chart, page);
    const at = (row?.dots ?? []).map(({ x, y }) => ({ x: (x / 100) * pixels, y }));
    expect(at).toHaveLength(weights.length);
    for (const [index, one] of at.entries())
      for (const other of at.slice(index + 1))
        expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThanOrEqual(24);
  });

  test('a standard of two authorities says whose its ends are', async () => {
    const disputed = PENNY.replace(
      'weight: 22 2/9 grains',
      "weight: 22 grains, weight-to: 22 1/2 grains, note: 'One says 22, another 22 1/2.'",
    );
    const pieces = ['1', '2', '3'].map((number): [string, string] => [
      `pieces/p${number}/piece.md`,
      penny(number, number === '3' ? '1360' : '1280', '1.40 g'),
    ]);
    const cabinet = await cabinetWith({
      ...NOTHING_ELSE,
      'denominations/penny.yaml': disputed,
      ...Object.fromEntries(pieces),
    });
    expect(weightCharts(cabinet)[0]?.rows.map(({ note }) => note)).toEqual(['One says 22, another 22 1/2.', null]);
  });

  test('a crowd is drawn as columns that hold all of it', async () => {
    const many = Object.fromEntries(
      Array.from({ length: 40 }, (_, at) => [
        `pieces/p${String(at)}/piece.md`,
        penny(String(100 + at), '1280', '1.40 g'),
      ]),
    );
    const [chart] = weightCharts(await cabinetWith({ ...NOTHING_ELSE, 'denominations/penny.yaml': PENNY, ...many }));
    expect(chart?.rows[0]?.dots).toHaveLength(40);
    for (const page of ['wide', 'narrow'] as const) {
      const [row] = chart === undefined ? [] : layOutWeights(chart, page);
      expect(row?.dots).toEqual([]);
      expect(row?.columns).toHaveLength(1);
      expect(row?.columns[0]?.height).toBeCloseTo(140);
    }
  });

  test('the table of a crowd tells of each standard as a whole, and does not grow with the pieces', async () => {
    const many = Object.fromEntries(
      Array.from({ length: 300 }, (_, at) => [
        `pieces/p${String(at)}/piece.md`,
        penny(String(100 + at), at < 100 ? '1280' : '1360', `${at === 7 ? '1.30' : '1.44'} g`),
      ]),
    );
    const [chart] = weightCharts(await cabinetWith({ ...NOTHING_ELSE, 'denominations/penny.yaml': PENNY, ...many }));
    expect(chart?.table.rows.map(([standard, pieces]) => [standard, pieces])).toEqual([
      ['1279–1345: 1.44 g', '100'],
      ['1351–1411: 1.166 g', '200'],
    ]);
    expect(chart?.table.rows[0]?.[2]).toBe('1.3–1.44');
  });

  test('the penny of 1351 is lighter, and no baser', async () => {
    const cabinet = await cabinetWith({ 'denominations/penny.yaml': PENNY });
    expect(seriesCharts(cabinet)[0]?.steps.map(({ ways }) => ways)).toEqual(['lighter']);
  });
});
