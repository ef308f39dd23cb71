import type { Legend } from '../../../core/legends/legend.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { pieceWords } from '../../words/piece.ts';

/** A face in words: its legend as cut, the legend written out, and the picture. */
export type SideShown = { readonly name: string; readonly legend: Legend | null; readonly lang: string | null; readonly reading: string | null; readonly design: string | null };

const LANGS: Readonly<Record<string, string>> = { greek: 'el', cyrillic: 'ru', arabic: 'ar', hebrew: 'he' };

export function sidesShown(piece: PublicPiece): readonly SideShown[] {
  return (['obverse', 'reverse', 'edge'] as const).flatMap((face) => {
    const side = piece[face];
    if (side === null || side === undefined) return [];
    const legend = side.legend ?? null;
    return [
      {
        name: pieceWords.face[face],
        legend,
        lang: legend === null ? null : (LANGS[legend.script] ?? null),
        reading: side.reading ?? null,
        design: side.design ?? null,
      },
    ];
  });
}
