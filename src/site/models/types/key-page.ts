import type { Character, Shown } from '../../../core/types/key/character.ts';
import { rarityPrior } from '../../../core/types/key/identify.ts';
import type { TypeSeries } from '../../../catalogue/types/series.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { typesWords } from '../../words/types.ts';
import { leadingFace } from '../shared/face.ts';
import type { FoundFace } from '../../find/record.ts';
import { foundFace } from '../find/record-of.ts';
import type { PageHead } from '../shared/head.ts';
import type { Link } from '../sets/place-shown.ts';
import { foundSeries, leafIds, piecesOfType, seriesTrail } from './types-page.ts';

/** What the key in the browser works on: `data/types/<series>.json`. */
export type KeyFile = {
  /** How common each type is, by published rarity, in their order; null where nothing tells. */
  readonly prior: readonly number[] | null;
  readonly characters: readonly (Character & { readonly look: string | null })[];
  readonly types: readonly {
    readonly id: string;
    readonly label: string;
    readonly href: string;
    readonly shown: readonly Shown[];
    /** The cabinet's own pieces of it. */
    readonly pieces: readonly { readonly href: string; readonly title: string; readonly face: FoundFace }[];
  }[];
};

export type KeyPage = {
  readonly head: PageHead;
  readonly data: string;
  /** Whether published rarities can be taken into account. */
  readonly hasRarity: boolean;
  readonly characters: readonly { readonly label: string; readonly look: string | null }[];
  readonly rows: readonly { readonly type: Link; readonly cells: readonly string[] }[];
};

/** Pieces shown of one candidate. */
const SHOWN = 2;

export function keyFile(cabinet: Cabinet, id: string): KeyFile {
  const series = foundSeries(cabinet, id);
  return {
    prior: priorOf(series),
    characters: series.characters.map((character, at) => ({
      ...character,
      look: series.fields.characters[at]?.look ?? null,
    })),
    types: leafIds(series).map((type) => ({
      id: type,
      label: series.types.get(type)?.label ?? type,
      href: urls.type(id, type),
      shown: series.shown.get(type) ?? [],
      pieces: piecesOfType(cabinet, id, type)
        .slice(0, SHOWN)
        .map((piece) => ({
          href: urls.piece(piece.id),
          title: piece.title,
          face: foundFace(leadingFace(piece, cabinet.photographs)),
        })),
    })),
  };
}

export function keyPage(cabinet: Cabinet, id: string): KeyPage {
  const series = foundSeries(cabinet, id);
  return {
    head: {
      title: `${typesWords.key} · ${series.fields.title}`,
      here: urls.typeKey(id),
      trail: seriesTrail(series, true) ?? [],
    },
    data: urls.seriesJson(id),
    hasRarity: priorOf(series) !== null,
    characters: series.characters.map(({ label }, at) => ({ label, look: series.fields.characters[at]?.look ?? null })),
    rows: leafIds(series).map((type) => ({
      type: { href: urls.type(id, type), name: series.types.get(type)?.label ?? type },
      cells: series.characters.map((character, at) =>
        typesWords.shown(series.shown.get(type)?.[at] ?? { shows: 'unknown' }, character),
      ),
    })),
  };
}

function priorOf(series: TypeSeries): readonly number[] | null {
  return rarityPrior(leafIds(series).map((type) => series.rarities.get(type)?.[0]?.rarity ?? null));
}
