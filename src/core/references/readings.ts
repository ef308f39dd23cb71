/** How a reference is written here, for a visitor's table. */
export const REFERENCE_READINGS: readonly { readonly write: string; readonly means: string }[] = [
  { write: 'north 1018', means: 'the piece is number 1018 of the work with the key north' },
  { write: 'cf. north 176', means: 'it is like number 176 without being it' },
  { write: 'north 1018 var.', means: 'it is a variety of number 1018' },
  { write: 'north unlisted', means: 'the work does not have it' },
  { write: 'north 1018?', means: 'it may be number 1018' },
  { write: 'north 1018 (this coin)', means: 'it is the very coin that the work describes there' },
  { write: 'RIC II.1² 123', means: 'number 123 of volume II.1 in its second edition' },
  { write: 'north 1018, pl. 5, 3', means: 'what it is, and where it is illustrated' },
  { write: 'ric-3 223-5', means: 'it is one of the numbers 223 to 225' },
  { write: 'ric-6 London 121a', means: 'a number under the heading London' },
];
