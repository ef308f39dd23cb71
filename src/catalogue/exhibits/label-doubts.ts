import { yearsOf } from '../../core/dating/interval.ts';
import type { Catalogue, Piece } from '../catalogue.ts';
import { isBlank, known } from '../schema/fields.ts';
import type { ReadExhibit } from './exhibit-texts.ts';
import type { Remark } from './remark.ts';

const SOURCE = 'our own judgement';
/** A word that leaves open what its sentence says. */
const OPEN =
  /\?|\b(?:probabl[ey]|possibl[ey]|perhaps|maybe|likely|attributed|uncertain|doubtful|usually|thought|said to|may|might)\b/iu;

/** A doubt that a piece keeps and the words of a label drop: a judge reads the label alone. */
export function doubtRemarks({ texts }: ReadExhibit, catalogue: Catalogue): readonly Remark[] {
  return texts.flatMap(({ is, words, path, piece, isOwn }): readonly Remark[] => {
    if (is !== 'label' || piece === null || !isOwn) return [];
    const certain = words.split(/(?<=[.;!])\s+/u).filter((sentence) => !OPEN.test(sentence));
    return doubted(piece, catalogue).flatMap(({ fact, doubt, names }): readonly Remark[] => {
      const said = names.find((name) => certain.some((sentence) => sentence.includes(name)));
      return said === undefined
        ? []
        : [
            {
              path,
              says: `The label says “${said}” as certain, and of ${piece.id} sure: says ${fact}: ${doubt}. Write “${doubt === 'probable' ? 'probably' : 'possibly'}” before it.`,
              source: SOURCE,
            },
          ];
    });
  });
}

type Doubted = { readonly fact: string; readonly doubt: string; readonly names: readonly string[] };

/** The statements of a piece that are not certain, each with the words by which a label would make it. */
function doubted({ fields }: Piece, { rulers, mints }: Catalogue): readonly Doubted[] {
  const { sure = {}, ruler, mint, makers = [], date } = fields;
  const held = known(date);
  const years = held === null ? null : yearsOf(held);
  const ends =
    years === null ? [] : [years.low, years.high].filter(Number.isFinite).map((year) => String(Math.abs(year)));
  const facts = [
    ['ruler', (known(ruler) ?? []).flatMap((id) => namesOf(rulers[id]?.fields.name))],
    ['mint', namesOf(mint === undefined || isBlank(mint) ? undefined : mints[mint]?.fields.name)],
    ['makers', makers.map(({ name }) => name)],
    ['date', ends],
  ] as const;
  return facts.flatMap(([fact, names]) => {
    const doubt = sure[fact] ?? 'certain';
    return doubt === 'certain' ? [] : [{ fact, doubt, names }];
  });
}

/** A name as labels have it: without what is in brackets or after *of*. */
function namesOf(name: string | undefined): readonly string[] {
  return name === undefined ? [] : [name.replace(/\s*\(.*\)|\s+of\s.*$/u, '')];
}
