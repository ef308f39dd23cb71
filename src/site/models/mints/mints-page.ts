import type { Mint } from '../../../catalogue/catalogue.ts';
import type { Tally } from '../../../core/sets/tally.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { onceFor } from '../../once-for.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { mintsWords } from '../../words/mints.ts';
import type { ChartTable } from '../charts/chart.ts';
import { filedUnder, gather } from '../shared/gather.ts';
import { faceOf, leadingFace } from '../shared/face.ts';
import { representative } from '../shared/representative.ts';
import { isCertain, tallyOf } from '../shared/tally.ts';
import type { PageHead } from '../shared/head.ts';
import { clustersOf } from './map/clusters.ts';
import { mintMap } from './map/mint-map.ts';
import type { MintMap, Sited } from './map/mint-map.ts';
import type { TimeLine, TimeRow } from '../charts/timed.ts';
import { byYears } from '../charts/years.ts';

export type MapShown = { readonly says: string; readonly map: MintMap; readonly table: ChartTable };

export type MintsPage = {
  readonly head: PageHead;
  readonly wide: MapShown | null;
  readonly close: readonly MapShown[];
  /** Those that are on no map; null where all are. */
  readonly unplaced: string | null;
  readonly areas: readonly {
    readonly area: string;
    readonly mints: TimeLine;
  }[];
};

/** Mints no further apart than this, in degrees, are shown together on a closer map. */
const NEAR = 2.6;
const CLOSE_ENOUGH = 3;
const WIDE_MAP = 720;
const CLOSE_MAP = 480;

export function mintsPage(cabinet: Cabinet): MintsPage {
  const { title, description } = mintsWords;
  const sited = sitedMints(cabinet);
  const close = clustersOf(sited, NEAR).filter((group) => group.length >= CLOSE_ENOUGH);
  // Those that have a closer map are one dot on the wide one, so that it can be read.
  const crowded = new Set(close.flatMap((group) => group.slice(1).map(({ id }) => id)));
  const isAllClose = close.length === 1 && close[0]?.length === sited.length;
  const mints = Object.values(cabinet.lists.mints).toSorted((a, b) => (a.fields.name < b.fields.name ? -1 : 1));
  return {
    head: { title, description, here: urls.mints() },
    wide: isAllClose
      ? null
      : mapOf(
          sited,
          sited.filter(({ id }) => !crowded.has(id)),
          mintsWords.mapSays(sited.length),
          WIDE_MAP,
        ),
    close: close
      .map((group) => mapOf(group, group, mintsWords.closeSays(group.length), CLOSE_MAP))
      .filter((shown) => shown !== null),
    unplaced: mintsWords.unplaced(
      mints.flatMap(({ fields }) => (fields.coordinates === undefined ? [fields.name] : [])),
    ),
    areas: gather(mints, ({ fields }) => countryOf(fields.area))
      .toSorted(
        (a, b) =>
          Number(a.key === mintsWords.elsewhere) - Number(b.key === mintsWords.elsewhere) ||
          a.key.localeCompare(b.key, 'en'),
      )
      .map(({ key, all }) => ({
        area: key,
        mints: { ticks: [], behind: [], rows: all.map((mint) => mintRow(mint, cabinet)) },
      })),
  };
}

/** A mint in the list, with a piece of it that shows its reverse, where the mint is named. */
function mintRow(mint: Mint, cabinet: Cabinet): TimeRow {
  const seen = representative(piecesOfMint(cabinet, mint.id), cabinet, (piece) => isCertain(piece, 'mint'));
  const reverse = seen === null ? null : faceOf(seen, 'reverse', cabinet.photographs);
  return {
    href: urls.mint(mint.id),
    name: mint.fields.name,
    years: otherNames(mint),
    note: countWords.tally(tallyOfMint(cabinet, mint.id)),
    face: seen === null || reverse?.shown === 'photograph' ? reverse : leadingFace(seen, cabinet.photographs),
    bars: [],
  };
}

function mapOf(mints: readonly Sited[], named: readonly Sited[], says: string, width: number): MapShown | null {
  const map = mintMap(named, width);
  if (map === null) return null;
  const { mint, at, pieces } = mintsWords.column;
  const rows = mints.map((one) => [one.name, mintsWords.degrees(one.north, one.east), countWords.range(one.pieces)]);
  return { says, map, table: { columns: [mint, at, pieces], rows } };
}

/** The mints whose coordinates are known, with how many pieces of each are here; the fullest first. */
export const sitedMints = onceFor((cabinet: Cabinet): readonly Sited[] =>
  Object.values(cabinet.lists.mints)
    .flatMap(({ id, fields }) => {
      const at = fields.coordinates;
      if (at === undefined) return [];
      return [{ ...at, id, name: fields.name, href: urls.mint(id), pieces: tallyOfMint(cabinet, id).here }];
    })
    .toSorted((a, b) => b.pieces.high - a.pieces.high),
);

/** The listed pieces of a mint, oldest first, certain or not. */
export function piecesOfMint({ listed }: Cabinet, id: string): readonly PublicPiece[] {
  return byMint(listed).get(id) ?? [];
}

/** How many pieces a mint has here, those whose mint is doubtful apart. */
export function tallyOfMint(cabinet: Cabinet, id: string): Tally {
  return tallyOf(piecesOfMint(cabinet, id), (piece) => isCertain(piece, 'mint'));
}

const byMint = onceFor((listed: readonly PublicPiece[]) =>
  filedUnder(byYears(listed), ({ mint }) => (mint !== null && typeof mint !== 'string' ? [mint.id] : [])),
);

/** The last part of an area, which is the country or the like: `Kent, England` is in England. */
function countryOf(area: string | undefined): string {
  return (
    area
      ?.split(/[,;]/)
      .at(area.includes(';') ? 1 : -1)
      ?.replace(/^\s*now /, '')
      .trim() ?? mintsWords.elsewhere
  );
}

function otherNames({ fields }: Mint): string {
  return [...new Set(fields.names.map(({ name }) => name))].filter((name) => name !== fields.name).join(', ');
}
