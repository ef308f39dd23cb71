/** Phrases of the picture viewer. */
export const zoomWords = {
  name: 'A photograph',
  how: 'Drag to move. Tap, pinch or use the wheel to zoom.',
  keys: 'Keys: arrows move, + and − zoom in and out, 0 shows the whole piece, Esc closes.',
  nearer: 'Zoom in',
  farther: 'Zoom out',
  whole: 'The whole piece',
  close: 'Close',
  millimetres: 'mm',
  fetching: 'Loading the largest picture …',
  missing: 'The largest picture could not be loaded; this is a smaller one.',
  finest: 'This is full size.',
  wide: (millimetres: number) =>
    `The view is ${millimetres < 10 ? millimetres.toFixed(1) : Math.round(millimetres)} mm wide.`,
} as const;
