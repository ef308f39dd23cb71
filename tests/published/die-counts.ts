/** A die-count table of one hoard study, by ruler: coins, dies, dies known from one coin; Good's estimate and coverage as printed. */
export const DIE_COUNTS: readonly {
  readonly ruler: string;
  readonly n: number;
  readonly d: number;
  readonly d1: number;
  readonly good: number;
  readonly coverage: number;
}[] = [
  { ruler: 'Augustus', n: 318, d: 69, d1: 12, good: 72, coverage: 96.2 },
  { ruler: 'Vespasian', n: 316, d: 76, d1: 15, good: 80, coverage: 95.3 },
  { ruler: 'Titus', n: 250, d: 50, d1: 7, good: 51, coverage: 97.2 },
  { ruler: 'Nerva', n: 135, d: 19, d1: 3, good: 19, coverage: 97.8 },
  { ruler: 'Trajan', n: 408, d: 91, d1: 16, good: 95, coverage: 96.1 },
  { ruler: 'Hadrian', n: 90, d: 24, d1: 12, good: 28, coverage: 86.7 },
];
