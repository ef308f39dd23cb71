import { licenceAddress } from '../../../publish/licences.ts';
import {
  linkedDenomination,
  linkedGraph,
  linkedHome,
  linkedMint,
  linkedRuler,
  linkedSeries,
  linkedSet,
  linkedType,
} from '../../../publish/linked-lists.ts';
import type { LinkedWhole } from '../../../publish/linked-lists.ts';
import { listedPiece } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { inFull, urls } from '../../urls.ts';
import { openDataWords } from '../../words/open-data.ts';
import { linkedExhibit } from '../exhibit/exhibit-head.ts';
import { shownExhibit } from '../exhibit/shown-exhibit.ts';
import { setOnBoard } from '../sets/set-picture.ts';
import { setStatesOf } from '../sets/set-states-of.ts';
import { foundSeries, seriesIds } from '../types/types-page.ts';
import { linkedData } from './linked.ts';

export function linkedRulerOf({ lists }: Cabinet, id: string): object | undefined {
  const ruler = lists.rulers[id];
  return ruler && linkedRuler(ruler, inFull(urls.ruler(id)));
}

export function linkedMintOf({ lists }: Cabinet, id: string): object | undefined {
  const mint = lists.mints[id];
  return mint && linkedMint(mint, inFull(urls.mint(id)));
}

export function linkedSetOf(cabinet: Cabinet, id: string): object | undefined {
  const state = setStatesOf(cabinet).find((one) => one.id === id);
  if (state === undefined) return undefined;
  const filled = state.places.flatMap((place) => (place.state === 'filled' ? (place.piece ?? []) : []));
  const set = {
    page: inFull(urls.set(id)),
    title: state.title,
    rule: cabinet.lists.sets.find((one) => one.id === id)?.fields.rule ?? null,
    picture: setOnBoard(cabinet, id).length === 0 ? null : inFull(urls.setPicture(id)),
    pieces: [...new Set(filled)].map((piece) => ({
      page: inFull(urls.piece(piece)),
      title: listedPiece(cabinet, piece)?.title ?? piece,
    })),
  };
  return linkedSet(set, wholeOf(cabinet));
}

export function linkedTypeOf(cabinet: Cabinet, series: string, id: string): object {
  return linkedType(foundSeries(cabinet, series), id, typesAt(series));
}

export function linkedSeriesOf(cabinet: Cabinet, series: string): readonly object[] {
  return linkedSeries(foundSeries(cabinet, series), typesAt(series), wholeOf(cabinet));
}

export function linkedHomeOf(cabinet: Cabinet): object {
  const { about, keeper } = cabinet.lists.cabinet;
  return linkedHome(wholeOf(cabinet), {
    about: about ?? null,
    keeper,
    count: cabinet.listed.length,
    data: {
      page: inFull(urls.data()),
      title: `${cabinet.lists.cabinet.title}: ${openDataWords.title}`,
      description: openDataWords.description,
      files: [
        { address: inFull(urls.piecesJson()), format: 'application/json' },
        { address: inFull(urls.piecesCsv()), format: 'text/csv' },
        { address: inFull(urls.linkedWhole()), format: 'application/ld+json' },
      ],
    },
  });
}

/** Everything that is linked data, as one file: `catalogue.jsonld`. Unlisted pieces are not in it. */
export function linkedWhole(cabinet: Cabinet): object {
  const { rulers, mints, denominations, sets, exhibits } = cabinet.lists;
  const found = (records: readonly (object | undefined)[]): readonly object[] =>
    records.filter((record) => record !== undefined);
  return linkedGraph([
    linkedHomeOf(cabinet),
    ...cabinet.listed.map((piece) => linkedData(cabinet, piece)),
    ...found(Object.keys(rulers).map((id) => linkedRulerOf(cabinet, id))),
    ...found(Object.keys(mints).map((id) => linkedMintOf(cabinet, id))),
    ...Object.entries(denominations).map(([id, one]) => linkedDenomination(one, `${inFull(urls.linkedWhole())}#${id}`)),
    ...seriesIds(cabinet).flatMap((series) => linkedSeriesOf(cabinet, series)),
    ...found(sets.map(({ id }) => linkedSetOf(cabinet, id))),
    ...exhibits.map((exhibit) => linkedExhibit(shownExhibit(cabinet, exhibit), cabinet)),
  ]);
}

function typesAt(series: string): Parameters<typeof linkedType>[2] {
  return { series: inFull(urls.series(series)), type: (id) => inFull(urls.type(series, id)) };
}

function wholeOf({ lists: { cabinet } }: Cabinet): LinkedWhole {
  const { title, language, licence } = cabinet;
  return { page: inFull(urls.home()), title, language, licence: licenceAddress(licence?.texts ?? '') };
}
