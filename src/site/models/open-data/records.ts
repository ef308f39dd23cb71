import type { SetState, Upgrade } from '../../../core/sets/set-state.ts';
import { licenceAddress } from '../../../publish/licences.ts';
import { csvwMetadata, piecesCsv } from '../../../publish/pieces-csv.ts';
import { publicFacts } from '../../../publish/public-facts.ts';
import type { PublicFacts } from '../../../publish/public-facts.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { inFull, urls } from '../../urls.ts';
import { openDataWords } from '../../words/open-data.ts';
import { setStatesOf } from '../sets/set-states-of.ts';

/** The public facts of every listed piece, in the order of inventory numbers: `pieces.json`. */
export function pieceFacts(cabinet: Cabinet): readonly PublicFacts[] {
  return cabinet.listed.map((piece) => publicFacts(piece, inFull(urls.piece(piece.id))));
}

/** The same facts as a table: `pieces.csv`. */
export function pieceTable(cabinet: Cabinet): string {
  return piecesCsv(pieceFacts(cabinet));
}

/** What that table is, in a file beside it. */
export function tableMetadata({ lists: { cabinet } }: Cabinet): object {
  const { title, language, licence } = cabinet;
  return csvwMetadata({
    title: `${title}: ${openDataWords.piecesCsv}`,
    description: openDataWords.piecesCsvSays,
    page: inFull(urls.data()),
    language,
    licence: licenceAddress(licence?.texts ?? ''),
  });
}

/** How far a set has come, as its file gives it. What the keeper may buy next and for how much is not in it. */
export type SetRecord = Pick<
  SetState,
  'id' | 'title' | 'of' | 'filled' | 'excused' | 'places' | 'spares' | 'leftOut'
> & {
  readonly address: string;
  readonly upgrades: readonly Pick<Upgrade, 'place' | 'from' | 'to' | 'certain' | 'made' | 'because'>[];
};

/** Every set as its file gives it, in the order of the sets. */
export const setRecords = onceFor((cabinet: Cabinet): readonly SetRecord[] =>
  setStatesOf(cabinet).map(({ id, title, of, filled, excused, places, spares, upgrades, leftOut }) => ({
    id,
    address: inFull(urls.set(id)),
    title,
    of,
    filled,
    excused,
    places,
    spares,
    upgrades,
    leftOut,
  })),
);
