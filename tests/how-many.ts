import process from 'node:process';

/**
 * How many examples a property draws: few in every run of the tests, and many with `MANY=1 npx vitest run --project unit`,
 * for whoever has changed a parser or a search and wants to know more than a run can tell.
 */
export function howMany(few: number, many: number): number {
  return process.env['MANY'] === undefined ? few : many;
}
