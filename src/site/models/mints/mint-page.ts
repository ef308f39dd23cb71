import type { Mint } from '../../../catalogue/catalogue.ts';
import { yearsOf } from '../../../core/dating/interval.ts';
import { formatYear } from '../../../core/dating/format-years.ts';
import type { Dating } from '../../../core/dating/dating.ts';
import type { Interval } from '../../../core/eras/era-scheme.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { keyedBy } from '../../keyed.ts';
import { urls } from '../../urls.ts';
import { capital } from '../../words/capital.ts';
import { countWords } from '../../words/counts.ts';
import { mintsWords } from '../../words/mints.ts';
import type { Board } from '../shared/board.ts';
import { boardOf } from '../shared/board.ts';
import { linkedMintOf } from '../open-data/linked-lists.ts';
import { linkedHead } from '../shared/head.ts';
import type { PageHead } from '../shared/head.ts';
import { identifiersOf } from '../shared/identifiers.ts';
import type { Identifier } from '../shared/identifiers.ts';
import { mintMap } from './map/mint-map.ts';
import type { Sited } from './map/mint-map.ts';
import { mostShown } from '../shared/most-shown.ts';
import { piecesOfMint, sitedMints, tallyOfMint } from './mints-page.ts';
import type { MapShown } from './mints-page.ts';
import type { Link } from '../sets/place-shown.ts';
import { issuersOf } from '../rulers/issuers.ts';
import { rulersNamed } from '../rulers/pieces-of-ruler.ts';
import { pieceRow, timeLine } from '../charts/timed.ts';
import { spanInWords } from '../charts/years.ts';
import type { TimeLine, UndrawnRow } from '../charts/timed.ts';

export type MintPage = {
  readonly head: PageHead;
  readonly name: string;
  readonly area: string | null;
  readonly note: string | null;
  /** How many pieces, in words. */
  readonly count: string;
  readonly source: string | null;
  readonly identifiers: readonly Identifier[];
  readonly map: MapShown | null;
  readonly names: TimeLine | null;
  readonly rulers: readonly Link[];
  /** Who was responsible for pieces in another's name. */
  readonly issuers: readonly Link[];
  readonly made: TimeLine | null;
  readonly board: Board | null;
  /** Pieces left off a long page, and where all of them are. */
  readonly more: number;
  readonly all: string;
};

export function mintIds({ lists }: Cabinet): readonly string[] {
  return Object.keys(lists.mints);
}

/** Pages of mints. Their keys are of what is drawn and not of the drawing: cutting a coast takes longer than all else on a page. */
export const mintPaths = keyedBy(
  (cabinet) => mintIds(cabinet).map((id) => ({ id })),
  async (cabinet, { id }) => ({ page: await withoutMap(cabinet, id), around: mintsAround(cabinet, id) }),
  withMap,
);

async function withoutMap(cabinet: Cabinet, id: string): Promise<MintPage> {
  const mint = cabinet.lists.mints[id];
  if (mint === undefined) throw new Error(`There is no mint ${id}.`);
  const { fields } = mint;
  const pieces = piecesOfMint(cabinet, id);
  const { shown, more } = mostShown(pieces);
  const count = countWords.tally(tallyOfMint(cabinet, id));
  const unsure = (piece: PublicPiece): string | null => {
    const how = piece.sure.mint ?? 'certain';
    return how === 'certain' ? null : mintsWords.unsure(how);
  };
  return {
    head: {
      title: fields.name,
      description: `${fields.name}: ${count}.`,
      here: urls.mint(id),
      ...linkedHead(linkedMintOf(cabinet, id)),
      trail: [{ name: mintsWords.title, href: urls.mints() }],
    },
    name: fields.name,
    area: fields.area ?? null,
    note: fields.note ?? null,
    source: fields.source ?? null,
    identifiers: identifiersOf(fields.identifiers),
    map: null,
    names: timeLine(nameRows(mint)),
    count: capital(count),
    rulers: rulersOf(pieces, cabinet),
    issuers: issuersOf(pieces).map(({ name, href }) => ({ name, href })),
    made: pieces.length === 0 ? null : timeLine(shown.map((piece) => pieceRow(piece, unsure(piece)))),
    board: pieces.length === 0 ? null : await boardOf(shown, unsure),
    more,
    all: urls.facet('mint', id),
  };
}

/** In whose names the pieces are, each once; two of one name by their realms. */
function rulersOf(pieces: readonly PublicPiece[], { lists }: Cabinet): readonly Link[] {
  const rulers = [...new Map(pieces.flatMap(rulersNamed).map((ruler) => [ruler.id, ruler.name]))];
  const isShared = (name: string): boolean => rulers.filter(([, other]) => other === name).length > 1;
  return rulers.map(([id, name]) => {
    const realm = lists.rulers[id]?.fields.realm;
    return {
      href: urls.ruler(id),
      name: isShared(name) && realm !== undefined ? mintsWords.ofRealm(name, realm) : name,
    };
  });
}

/** Degrees within which other mints are shown around one. */
const AROUND = 4;
const MAP = 480;

/** A mint and those near it, as they are set on its map; null where nobody says where it was. */
type Around = { readonly id: string; readonly name: string; readonly mints: readonly Sited[] } | null;

function mintsAround(cabinet: Cabinet, id: string): Around {
  const fields = cabinet.lists.mints[id]?.fields;
  const at = fields?.coordinates;
  if (fields === undefined || at === undefined) return null;
  const mints = sitedMints(cabinet).filter(
    (other) =>
      other.id === id || (Math.abs(other.north - at.north) <= AROUND && Math.abs(other.east - at.east) <= AROUND),
  );
  return { id, name: fields.name, mints };
}

function withMap({ page, around }: { readonly page: MintPage; readonly around: Around }): MintPage {
  const map = around === null ? null : mintMap(around.mints, MAP, around.id);
  if (around === null || map === null) return page;
  const { mint, at } = mintsWords.column;
  const rows = around.mints.map((one) => [one.name, mintsWords.degrees(one.north, one.east)]);
  return {
    ...page,
    map: {
      says: mintsWords.mapOf(around.name),
      map,
      table: { columns: [mint, at], rows },
    },
  };
}

/** A row a name, then one for the years in which it struck. Ends that are about are drawn hollow. */
function nameRows({ fields }: Mint): readonly UndrawnRow[] {
  const names = fields.names.map(({ name, from, to, lang }): UndrawnRow => {
    const span = spanOf(from, to);
    return {
      name,
      href: null,
      years: span === null ? mintsWords.noNames : namedFor(from, to, span),
      note: lang === undefined ? null : languageOf(lang),
      spans: span === null ? [] : [{ span, kind: isAbout(from) || isAbout(to) ? 'unsure' : 'sure' }],
    };
  });
  const struck = (fields.struck ?? []).map(({ from, to, note }): UndrawnRow => {
    const span = spanOf(from, to) ?? { low: -Infinity, high: Infinity };
    return {
      name: mintsWords.struck,
      href: null,
      years: namedFor(from, to, span),
      note: note ?? null,
      spans: [{ span, kind: 'reign' }],
    };
  });
  return [...names, ...struck];
}

/** `AD 866–954`; `from 1200` for a name still in use; `about AD 71–400`, or `from about 1016 to 1066` where one end is surer. */
function namedFor(from: Dating | undefined, to: Dating | undefined, span: Interval): string {
  const [first, last] = [from, to].map((end) => isAbout(end));
  const about = (years: string, is: boolean | undefined): string => (is === true ? mintsWords.about(years) : years);
  if (!Number.isFinite(span.low)) return spanInWords(span);
  if (span.high === Infinity) return mintsWords.since(about(formatYear(span.low), first));
  if (first === last) return about(spanInWords(span), first);
  return mintsWords.fromTo(about(formatYear(span.low), first), about(formatYear(span.high), last));
}

function spanOf(from: Dating | undefined, to: Dating | undefined): Interval | null {
  if (from === undefined && to === undefined) return null;
  return {
    low: from === undefined ? -Infinity : yearsOf(from).low,
    high: to === undefined ? Infinity : yearsOf(to).high,
  };
}

function isAbout(end: Dating | undefined): boolean {
  return end !== undefined && (end.about || end.doubtful);
}

/** A language by its English name, its code where there is none. */
function languageOf(code: string): string {
  return new Intl.DisplayNames(['en'], { type: 'language', fallback: 'code' }).of(code) ?? code;
}
