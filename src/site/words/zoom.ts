/** Phrases of the glass that a photograph is looked at under. */
export const closerWords = {
  name: 'A photograph',
  how: 'Drag to move. A tap, a pinch or the wheel brings it nearer.',
  keys: 'Keys: arrows move, + and − bring it nearer and farther, 0 shows the whole piece, Esc closes.',
  nearer: 'Nearer',
  farther: 'Farther',
  whole: 'The whole piece',
  close: 'Close',
  millimetres: 'mm',
  fetching: 'Fetching the largest picture …',
  missing: 'The largest picture could not be fetched; this is a smaller one.',
  finest: 'Nothing finer is in this photograph.',
} as const;
