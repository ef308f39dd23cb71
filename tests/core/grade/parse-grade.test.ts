import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatGrade, notGraded, SCALE_IDS, whyNotGraded } from '../../../src/core/grade/grade.ts';
import type { Grade, ScaleId } from '../../../src/core/grade/grade.ts';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';
import { SCALES, SOURCES, isScaleId } from '../../../src/core/grade/scales.ts';
import { NUMERIC_STEPS } from '../../../src/core/grade/steps.ts';
import { gradeMappings, risingInBritain, sameLine, thirtySteps } from '../../published/grade-tables.ts';
import { tries } from '../../tries.ts';

function gradeOf(text: string, scale?: ScaleId): Grade {
  const outcome = parseGrade(text, scale === undefined ? {} : { scale });
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value;
}

function problemOf(text: string, scale?: ScaleId): string {
  const outcome = parseGrade(text, scale === undefined ? {} : { scale });
  return outcome.ok ? '' : outcome.problem;
}

describe('the scales agree with the printed tables', () => {
  test.for(gradeMappings)('%s on the %s scale is %i–%i (%s)', ([write, scale, low, high]) => {
    const grade = gradeOf(write, scale);
    expect(grade.mappings.map((each) => [each.low, each.high])).toContainEqual([low, high]);
    expect(grade.low).toBeLessThanOrEqual(low);
    expect(grade.high).toBeGreaterThanOrEqual(high);
  });

  test('the numeric scale has exactly its thirty steps, and no other number is read', () => {
    expect(NUMERIC_STEPS).toEqual(thirtySteps);
    for (let number = 0; number <= 71; number++) {
      const outcome = parseGrade(String(number), { scale: 'numeric' });
      expect(outcome.ok).toBe(thirtySteps.includes(number));
    }
  });

  test.for(sameLine)('$line can be the same grade ($source)', ({ line }) => {
    const grades = line.map(([write, scale]) => gradeOf(write, scale));
    const low = Math.max(...grades.map((grade) => grade.low ?? 0));
    const high = Math.min(...grades.map((grade) => grade.high ?? 0));
    expect(low).toBeLessThanOrEqual(high);
  });

  test.for(risingInBritain)('$rising do not fall ($source)', ({ rising }) => {
    const middles = rising.map((write) => gradeOf(write, 'uk')).map((grade) => (grade.low ?? 0) + (grade.high ?? 0));
    expect(middles).toEqual(middles.toSorted((a, b) => a - b));
    expect(new Set(rising.map((write) => gradeOf(write, 'uk').words)).size).toBe(rising.length);
  });

  test('British EF is 50–58 in one note and 55–62 in a French table; both are kept, and the union shown', () => {
    expect(gradeOf('EF', 'uk')).toMatchObject({
      low: 50,
      high: 62,
      mappings: [
        { low: 50, high: 58 },
        { low: 55, high: 62 },
      ],
    });
  });

  test('every word of every scale is read as itself, by each of its names, and says its source', () => {
    for (const scale of SCALE_IDS) {
      for (const { word, names, mappings } of SCALES[scale].words) {
        for (const name of [word, ...names]) expect(gradeOf(name, scale).words).toBe(word);
        for (const [source, low, high] of mappings) {
          expect(SOURCES[source].length).toBeGreaterThan(10);
          expect(low).toBeLessThanOrEqual(high);
        }
      }
    }
  });
});

describe('words, qualifiers, faces and betweens', () => {
  test.for([
    ['VF', 'us', 20, 35],
    ['very fine', 'us', 20, 35],
    ['VF+', 'us', 30, 35],
    ['VF-', 'us', 20, 25],
    ['about VF', 'us', 15, 20],
    ['VF/F', 'us', 12, 35],
    ['VF-EF', 'us', 20, 45],
    ['F to VF', 'us', 12, 35],
    ['choice AU', 'us', 55, 58],
    ['AG', 'us', 3, 3],
    ['good VF', 'uk', 40, 54],
    ['GVF', 'uk', 40, 54],
    ['nearly extremely fine', 'uk', 40, 55],
    ['aUnc', 'uk', 55, 65],
    ['ss-vz', 'de', 20, 62],
    ['sehr schön bis vorzüglich', 'de', 20, 62],
    ['fast ss', 'de', 15, 40],
    ['-ss', 'de', 15, 40],
    ['vz-st', 'de', 50, 70],
    ['TTB à SUP', 'fr', 40, 62],
    ['presque SUP', 'fr', 50, 55],
    ['TTB+', 'fr', 50, 54],
    ['qSPL', 'it', 30, 55],
    ['quasi splendido', 'it', 30, 55],
    ['mBB', 'it', 30, 54],
    ['MBC+', 'es', 30, 54],
    ['casi EBC', 'es', 30, 55],
    ['zeer fraai', 'nl', 20, 54],
    ['01', 'nordic', 40, 45],
    ['1+', 'nordic', 20, 35],
    ['Superb EF', 'ancient', 50, 64],
  ] as const)('%s on the %s scale is %i–%i', ([write, scale, low, high]) => {
    expect(gradeOf(write, scale)).toMatchObject({ low, high, scale });
  });

  test('a word at home on several scales is read on all of them when none is named', () => {
    expect(gradeOf('VF')).toMatchObject({ low: 20, high: 54, alsoOn: ['us', 'ancient'] });
    expect(gradeOf('SPL')).toMatchObject({ low: 40, high: 64, alsoOn: ['it'] });
    expect(gradeOf('TTB').alsoOn).toBeUndefined();
  });

  test.for([
    ['MS-63', 63, 63],
    ['MS63', 63, 63],
    ['vf 20', 20, 20],
    ['63', 63, 63],
    ['MS 60-62', 60, 62],
    ['VF-20/25', 20, 25],
    ['MS-63+', 63, 64],
    ['AU-58+', 58, 60],
  ] as const)('%s is %i–%i on the numeric scale', ([write, low, high]) => {
    expect(gradeOf(write)).toMatchObject({ low, high, scale: 'numeric' });
  });

  // Denmark, Norway and Sweden grade in figures, as do others that count from the best; common practice.
  test.for('0, 01, 1+, 1/1+, 1-2, 1, 2, 3, 1?, 1-, 0/01, 01/0, 2+, 1+/01'.split(', '))(
    '%s names no scale and asks',
    (text) => {
      expect(problemOf(text)).toContain('grade-scale: nordic');
      expect(problemOf(text, 'uk')).not.toBe('');
    },
  );

  test('figures are read on the scale that is named, and what a question offers is read', () => {
    expect(gradeOf('1/1+', 'nordic')).toMatchObject({ low: 12, high: 35, words: '1/1+' });
    expect(gradeOf('1', 'numeric')).toMatchObject({ low: 1, high: 1 });
    expect(problemOf('1')).toContain('PO-1');
    expect(gradeOf('PO-1')).toMatchObject({ low: 1, high: 1 });
    expect(problemOf('3')).toContain('AG-3');
    for (const text of ['01', '1+']) expect(problemOf(text, 'numeric')).not.toBe('');
    for (const text of ['I/II', 'II-III', 'III']) expect(problemOf(text)).not.toBe('');
  });

  // Letters that Dutch lists use for another grade, and marks out of ten; common practice.
  test.for([
    ['Fr', 'grade-scale: uk or grade-scale: nl'],
    ['Pr', 'grade-scale: us or grade-scale: nl'],
    ['8/10', 'out of 10'],
    ['10/10', 'out of 10'],
    ['68/70', 'out of 70'],
  ] as const)('%s may be two grades and asks', ([text, says]) => {
    expect(problemOf(text)).toContain(says);
  });

  test('letters of one meaning, or of one scale, do not ask', () => {
    expect(gradeOf('Fr', 'nl')).toMatchObject({ low: 12, high: 20 });
    expect(gradeOf('Fair')).toMatchObject({ low: 2, high: 6 });
    expect(gradeOf('F').scale).toBe('uk');
    expect(gradeOf('VG-8/10')).toMatchObject({ low: 8, high: 10 });
    expect(gradeOf('ZF').scale).toBe('nl');
  });

  // "Mint State" is American, "as struck" British and said of ancient coins too. Common practice.
  test('words of one scale are not put on another', () => {
    expect(gradeOf('Mint State').scale).toBe('us');
    expect(gradeOf('Mint State').words).not.toContain('FDC');
    expect(problemOf('Mint State', 'uk')).toContain('British');
    expect(gradeOf('about as struck')).toMatchObject({ scale: 'uk', alsoOn: ['ancient'] });
    expect(gradeOf('virtually as struck', 'uk').words).toBe('near Unc');
  });

  test('what stands beside a grade is read', () => {
    expect(gradeOf('MS-64 RB')).toMatchObject({ low: 64, colour: 'red and brown' });
    expect(gradeOf('PR-65 DCAM')).toMatchObject({ low: 65, proof: true, remarks: ['DCAM'] });
    expect(gradeOf('VF, strike 4/5, surface 3/5', 'ancient')).toMatchObject({ strike: 4, surface: 3 });
    expect(gradeOf('VF, toned (weak strike)', 'uk').remarks).toEqual(['toned', 'weak strike']);
    expect(gradeOf('PP', 'de').proof).toBe(true);
  });
});

describe('problems', () => {
  test.for([
    ['EF details, cleaned', 'cleaned'],
    ['AU details (scratched)', 'scratched'],
    ['AU-55 details', 'not said which'],
    ['AU-55 det. cleaned', 'cleaned'],
    ['VF, cleaned', 'cleaned'],
    // Without a comma, as lists and spreadsheets have it. Common practice.
    ['VF-30 cleaned', 'cleaned'],
    ['VF pierced', 'pierced'],
    ['Fine edge bruise', 'edge bruise'],
    ['good VF lightly cleaned', 'lightly cleaned'],
    ['ss, gelocht', 'gelocht'],
    ['TTB, rayures', 'rayures'],
    ['BB, foro', 'foro'],
    ['MBC, limpiada', 'limpiada'],
    ['vz, Henkelspur', 'Henkelspur'],
  ] as const)('%s is a details piece: %s', ([write, problem]) => expect(gradeOf(write).problem).toBe(problem));

  test('the problem of the piece joins the one in the grade, and is not said twice', () => {
    const with_ = (text: string, problem: string) => {
      const outcome = parseGrade(text, { scale: 'uk', problem });
      return outcome.ok ? outcome.value.problem : '';
    };
    expect(with_('VF, cleaned', 'edge chipped')).toBe('cleaned; edge chipped');
    expect(with_('VF details', 'holed')).toBe('holed');
    expect(with_('VF, holed', 'holed')).toBe('holed');
  });
});

describe('not graded is not poor', () => {
  test('the reason is kept and there is no interval', () => {
    expect(gradeOf('not graded: cut')).toMatchObject({ notGraded: 'cut', low: null, high: null, mappings: [] });
    expect(gradeOf('ungraded').notGraded).toBe('no reason given');
    expect(notGraded('an ingot')).toMatchObject({ notGraded: 'an ingot', low: null });
  });

  test.for([
    [{ kind: 'ingot', altered: false, treatments: [] }, 'an ingot'],
    [{ kind: 'coin', altered: true, treatments: [] }, 'altered'],
    [{ kind: 'coin', altered: false, treatments: ['cut'] }, 'cut'],
    [{ kind: 'coin', altered: false, treatments: ['pierced'] }, null],
  ] as const)('%o: %s', ([piece, reason]) => expect(whyNotGraded(piece)).toBe(reason));
});

describe('what cannot be read says what to write', () => {
  test.for([
    ['AU-57', undefined, 'The numeric scale has no step 57. Write 55 or 58.'],
    ['VF-40', undefined, 'VF goes with 20 to 35; this says "VF-40". Write EF-40.'],
    ['71', undefined, 'from 1 to 70'],
    ['MS-63', 'uk', 'Write grade-scale: numeric.'],
    ['MS 62-60', undefined, 'Write 60-62.'],
    ['TTB', 'de', 'not a grade on the German scale'],
    ['VF blah', 'uk', 'not a grade on the British scale'],
    ['VF, sings at night', 'uk', 'not known here'],
    ['VF/F/VG', 'uk', 'not a grade'],
    ['casi SC-', 'es', 'not a grade'],
    ['', undefined, 'not a grade'],
  ] as const)('%s (%s): %s', ([write, scale, because]) => expect(problemOf(write, scale)).toContain(because));

  test('the scales are known by their names', () => {
    expect(isScaleId('uk')).toBe(true);
    expect(isScaleId('british')).toBe(false);
  });
});

const worded = fc.constantFrom(...SCALE_IDS).chain((scale) => {
  const word = fc.constantFrom(...SCALES[scale].words.map((row) => row.word));
  const prints = SCALES[scale].qualifiers.map(({ print }) => (print.length === 1 ? print : `${print} `));
  // BC+, SC- and fast st take no second qualifier.
  const qualified = fc
    .tuple(fc.constantFrom('', ...prints), word)
    .map(([qualifier, one]) => (/[-+?]$|^fast /.test(one) ? one : `${qualifier}${one}`));
  const text = fc.oneof(
    qualified,
    fc.tuple(qualified, qualified).map((faces) => faces.join('/')),
  );
  return fc.record({ scale: fc.constant(scale), text });
});
const numeric = fc.record({
  scale: fc.constant<ScaleId>('numeric'),
  text: fc.constantFrom(...NUMERIC_STEPS).map(String),
});
const problem = fc.option(fc.constantFrom('cleaned', 'edge chipped; scratched', 'two old holes'), { nil: undefined });

const beside = fc.constantFrom('', ', toned', ', strike 4/5, surface 2/5', ', RB', ', scratched', ', toned, scratched');

// Grades I to V of German paper money: common practice.
test.for(['III', 'I-II', 'II+'])('%s of German paper money is no grade of a coin, and is told', (text) => {
  const read = parseGrade(text, { scale: 'de' });
  expect(read.ok ? '' : read.problem).toContain('paper money');
});

describe('there and back', () => {
  test('a printed grade is read back with the same meaning', () => {
    fc.assert(
      fc.property(fc.oneof(worded, numeric), beside, problem, ({ scale, text: grade }, said, ails) => {
        const text = `${grade}${said}`;
        const outcome = parseGrade(text, { scale, ...(ails === undefined ? {} : { problem: ails }) });
        if (!outcome.ok) throw new Error(`${scale} ${text}: ${outcome.problem}`);
        const again = gradeOf(formatGrade(outcome.value), scale);
        expect({ ...again, text }).toEqual({ ...outcome.value, text });
        expect(outcome.value.low ?? 0).toBeLessThanOrEqual(outcome.value.high ?? 0);
      }),
      { numRuns: tries(1500) },
    );
  });

  test('a grade not given is read back with its reason', () => {
    expect(gradeOf(formatGrade(notGraded('hacksilver')))).toEqual(notGraded('hacksilver'));
  });
});
