import type { PublicPiece } from '../../publish/public-piece.ts';

/** What a face is called, and what is said where there is no photograph of it. */
export const faceWords = {
  name: (face: string) => face.replace(/^detail-/, 'detail: ').replaceAll('-', ' '),
  noPhotograph: (face: string, piece: PublicPiece) => `The ${face} of ${piece.title}: no photograph.`,
  noPhotographShort: 'No photograph yet',
  blank: (piece: PublicPiece) => `The back of ${piece.title} is blank.`,
  blankShort: 'Blank',
  unmeasured: 'Size not recorded: drawn at 20 mm.',
} as const;
