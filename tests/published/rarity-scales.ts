const BREEN = 'W. Breen, Complete Encyclopedia (1988), "rarity scale", as printed in 1949';
const URS = 'The Numismatist, June 1992, class limits as reprinted';
const RIC = 'RIC I (1984), p. xxii';

/** What class so many pieces are in, at both ends of each class. */
export const RARITY_CLASSES: readonly (readonly [scale: string, known: number, name: string, source: string])[] = [
  ['american', 1, 'R-8', BREEN], ['american', 3, 'R-8', BREEN], ['american', 4, 'R-7', BREEN], ['american', 12, 'R-7', BREEN],
  ['american', 13, 'R-6', BREEN], ['american', 30, 'R-6', BREEN], ['american', 31, 'R-5', BREEN], ['american', 75, 'R-5', BREEN],
  ['american', 76, 'R-4', BREEN], ['american', 200, 'R-4', BREEN], ['american', 201, 'R-3', BREEN], ['american', 500, 'R-3', BREEN],
  ['american', 501, 'R-2', BREEN], ['american', 1250, 'R-2', BREEN], ['american', 1300, 'R-1', BREEN],
  ['universal', 1, 'URS-1', URS], ['universal', 2, 'URS-2', URS], ['universal', 4, 'URS-3', URS], ['universal', 5, 'URS-4', URS],
  ['universal', 16, 'URS-5', URS], ['universal', 17, 'URS-6', URS], ['universal', 64, 'URS-7', URS], ['universal', 125, 'URS-8', URS],
  ['universal', 126, 'URS-9', URS], ['universal', 251, 'URS-10', URS], ['universal', 2001, 'URS-13', URS], ['universal', 250_001, 'URS-20', URS],
  ['ric-1', 1, 'R5', RIC], ['ric-1', 2, 'R4', RIC], ['ric-1', 5, 'R4', RIC], ['ric-1', 6, 'R3', RIC], ['ric-1', 10, 'R3', RIC], ['ric-1', 15, 'R2', RIC], ['ric-1', 20, 'R', RIC],
]; // prettier-ignore
