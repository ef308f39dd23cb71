/** A rule of the kind 1 / (1 + e^-(base + Σ weight × value)). */
export type Logistic = { readonly base: number; readonly weights: readonly number[] };

/** What one thing to learn from measures, and whether it was so. */
export type Lesson = { readonly values: readonly number[]; readonly isSo: boolean };

/** What holds every weight back, counted in lessons, of values brought to one spread. */
const HELD: number = 2;
const ROUNDS = 50;

/** The likeliest logistic rule, by Newton's method (T. Hastie, R. Tibshirani, J. Friedman, The Elements of Statistical Learning, 2nd ed., 4.4.1), every weight held back a little. */
export function fitLogistic(lessons: readonly Lesson[]): Logistic {
  const count = lessons[0]?.values.length ?? 0;
  const mean = sumOf(count, lessons, ({ values }) => values).map((sum) => sum / lessons.length);
  const spread = sumOf(count, lessons, ({ values }) => values.map((value, at) => (value - (mean[at] ?? 0)) ** 2)).map(
    (sum) => Math.sqrt(sum / lessons.length) || 1,
  );
  const rows = lessons.map(({ values, isSo }) => ({
    values: [1, ...values.map((value, at) => (value - (mean[at] ?? 0)) / (spread[at] ?? 1))],
    so: isSo ? 1 : 0,
  }));
  let now: number[] = Array.from({ length: count + 1 }, () => 0);
  for (let round = 0; round < ROUNDS; round += 1) {
    const slope = now.map((weight, at) => (at === 0 ? 0 : -HELD * weight));
    const bend = now.map((_, at) => now.map((_other, beside): number => (at === beside && at > 0 ? HELD : 0)));
    for (const { values, so } of rows) {
      const likely = 1 / (1 + Math.exp(-dot(now, values)));
      for (const [at, value] of values.entries()) {
        slope[at] = (slope[at] ?? 0) + (so - likely) * value;
        const row = bend[at] ?? [];
        for (const [beside, other] of values.entries())
          row[beside] = (row[beside] ?? 0) + likely * (1 - likely) * value * other;
      }
    }
    const step = solved(bend, slope);
    now = now.map((weight, at) => weight + (step[at] ?? 0));
    if (Math.max(...step.map(Math.abs)) < 1e-9) break;
  }
  const weights = now.slice(1).map((weight, at) => weight / (spread[at] ?? 1));
  return { base: (now[0] ?? 0) - dot(weights, mean), weights };
}

function sumOf(
  count: number,
  lessons: readonly Lesson[],
  each: (lesson: Lesson) => readonly number[],
): readonly number[] {
  const sums = Array.from({ length: count }, () => 0);
  for (const lesson of lessons) for (const [at, value] of each(lesson).entries()) sums[at] = (sums[at] ?? 0) + value;
  return sums;
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, value, at) => sum + value * (other[at] ?? 0), 0);
}

/** Solves a few linear equations by Gauss and Jordan's elimination. */
function solved(rows: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const all = rows.map((row, at) => [...row, right[at] ?? 0]);
  for (const [at, row] of all.entries())
    for (const other of all) {
      if (other === row) continue;
      const times = (other[at] ?? 0) / (row[at] ?? 1);
      for (let column = at; column < row.length; column += 1)
        other[column] = (other[column] ?? 0) - times * (row[column] ?? 0);
    }
  return all.map((row, at) => (row.at(-1) ?? 0) / (row[at] ?? 1));
}
