import type { PublicPiece } from '../../publish/public-piece.ts';

const FACE: Readonly<Partial<Record<string, string>>> = {
  obverse: 'The obverse',
  reverse: 'The reverse',
  edge: 'The edge',
};

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** What a face is called, and what is said where there is no photograph of it. */
export const faceWords = {
  name: (face: string) => face.replace(/^detail-/, 'detail: ').replaceAll('-', ' '),
  /** A photograph in words, for those who do not see it: whose face, what is on it, and what is written there. */
  alt: (face: string, piece: PublicPiece) => {
    const side = face === 'obverse' || face === 'reverse' || face === 'edge' ? piece[face] : null;
    const legend = side?.legend?.text;
    const reading = side?.reading;
    return [
      `${FACE[face] ?? 'A detail'} of ${piece.title}.`,
      side?.design === undefined ? '' : sentence(side.design),
      legend === undefined ? '' : sentence(`Legend: ${legend}${reading === undefined ? '' : `, that is, ${reading}`}`),
    ]
      .filter((part) => part !== '')
      .join(' ');
  },
  small: 'A small photograph: it is soft at this size.',
  whole: 'The whole photograph: not to scale.',
  noPhotograph: (face: string, piece: PublicPiece) => `The ${face} of ${piece.title}: no photograph.`,
  noPhotographShort: 'No photograph yet',
  blank: (face: string, piece: PublicPiece) => `The ${face} of ${piece.title} is blank.`,
  blankShort: 'Blank',
  unmeasured: 'Size not recorded: drawn at 20 mm.',
} as const;
