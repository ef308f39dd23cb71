import type { LaidPiece } from '../shared/board.ts';

const EMPTY = { id: '', number: '', href: '#', title: '…', line: '', note: ' ' } as const;

/** Two empty pieces, one with a picture and one without, from which the script lays what it finds. */
export const PATTERN_PIECES: readonly LaidPiece[] = [
  {
    ...EMPTY,
    face: {
      shown: 'photograph',
      face: 'obverse',
      wide: '',
      millimetres: 0,
      unmeasured: false,
      alt: '',
      src: 'data:,',
      small: '',
      tiny: '',
      srcset: '',
      pictures: [],
      hints: { piece: '', board: '' },
      width: 1,
      height: 1,
      largest: '',
      isWhole: false,
      metal: 'stuff',
      under: null,
    },
  },
  {
    ...EMPTY,
    face: {
      shown: 'disc',
      face: 'obverse',
      wide: '',
      millimetres: 0,
      tall: '',
      alt: '',
      outline: 'round',
      metal: 'stuff',
      says: '',
      away: null,
      unmeasured: false,
    },
  },
];
