import { isLatinReading } from '../../../core/legends/suggest-reading.ts';
import type { Legend, Script } from '../../../core/legends/parse-legend.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { capital } from '../../words/capital.ts';
import { faceWords } from '../../words/faces.ts';
import { pieceWords } from '../../words/piece.ts';

/** A face in words: its legend as cut, the legend written out, and the picture. */
export type SideInWords = {
  readonly name: string;
  readonly legend: Legend | null;
  /** The language tag that names its script; null for Latin letters. */
  readonly lang: string | null;
  readonly reading: string | null;
  /** `la` where it is Latin; else it is in the keeper's own language. */
  readonly readIn: 'la' | null;
  readonly design: string | null;
};

const LANGS: Readonly<Partial<Record<Script, string>>> = { greek: 'el', cyrillic: 'ru', arabic: 'ar', hebrew: 'he' };

/** Obverse, reverse and edge, each where something is said of it. */
export function sidesOf(piece: PublicPiece): readonly SideInWords[] {
  return (['obverse', 'reverse', 'edge'] as const).flatMap((face) => {
    const side = piece[face];
    if (side === null || side === undefined) return [];
    const { legend, reading, design } = side;
    const lang = legend === undefined ? undefined : LANGS[legend.script];
    return [
      {
        name: capital(faceWords.called(face, piece)),
        legend: legend ?? null,
        lang: lang ?? null,
        reading: reading ?? null,
        readIn: reading !== undefined && isLatinReading(reading) ? 'la' : null,
        design:
          design === undefined || !piece.fromType.includes(`${face}.design`)
            ? (design ?? null)
            : `${design} (${[pieceWords.afterType, pieceWords.doubt[piece.sure.type ?? 'certain']].filter((part) => part !== '').join(', ')})`,
      },
    ];
  });
}
