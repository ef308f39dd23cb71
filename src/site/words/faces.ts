import type { PublicPiece } from '../../publish/public-piece.ts';

/** What a cast bar and a cut scrap have in place of an obverse and a reverse. */
const OF_A_LUMP: Readonly<Partial<Record<string, string>>> = { obverse: 'upper face', reverse: 'under face' };

/** A face by its name in a sentence. */
function called(face: string, { kind }: Pick<PublicPiece, 'kind'>): string {
  return (kind === 'ingot' || kind === 'hacksilver' ? OF_A_LUMP[face] : undefined) ?? face;
}

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** What a face is called, and what is said where there is no photograph of it. */
export const faceWords = {
  called,
  /** As the plan of a case has room for it. */
  short: (face: 'obverse' | 'reverse', piece: Pick<PublicPiece, 'kind'>) =>
    called(face, piece) === face
      ? { obverse: 'obv.', reverse: 'rev.' }[face]
      : { obverse: 'upper', reverse: 'under' }[face],
  /** Which faces of a piece are shown. */
  shown: (faces: readonly string[], piece: Pick<PublicPiece, 'kind'>) =>
    faces.length === 2 ? 'both faces' : called(faces[0] ?? 'obverse', piece),
  name: (face: string) => face.replace(/^detail-/, 'detail: ').replaceAll('-', ' '),
  /** A photograph in words, for those who do not see it: whose face, what is on it, and what is written there. */
  alt: (face: string, piece: PublicPiece) => {
    const side = face === 'obverse' || face === 'reverse' || face === 'edge' ? piece[face] : null;
    const legend = side?.legend?.text;
    const reading = side?.reading;
    return [
      side === null && face !== 'obverse' && face !== 'reverse' && face !== 'edge'
        ? `A detail of ${piece.title}.`
        : `The ${called(face, piece)} of ${piece.title}.`,
      side?.design === undefined ? '' : sentence(side.design),
      legend === undefined ? '' : sentence(`Legend: ${legend}${reading === undefined ? '' : `, that is, ${reading}`}`),
    ]
      .filter((part) => part !== '')
      .join(' ');
  },
  whole: 'The whole photograph: not to scale.',
  noPhotograph: (face: string, piece: PublicPiece) =>
    `The ${called(face, piece)} of ${piece.title}: no photograph${piece.status === 'lent' ? ', for it is lent' : ''}.`,
  noPhotographShort: 'No photograph yet',
  lentShort: 'lent',
  blank: (face: string, piece: PublicPiece) => `The ${called(face, piece)} of ${piece.title} is blank.`,
  blankShort: 'Blank',
  unmeasured: 'Size not recorded: drawn at 20 mm.',
} as const;
