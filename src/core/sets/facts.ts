import type { Fact, Lists } from './set-rule.ts';
import type { HowSure, SetPiece } from './set-piece.ts';

/** What a piece states of one fact, folded for comparing. */
export type Stated = {
  readonly values: ReadonlySet<string>;
  /** References given only as `cf.` or `var.`. */
  readonly near: ReadonlySet<string>;
  readonly sure: HowSure;
};

export type Facts = Readonly<Record<Fact, Stated>>;

/** How sentences call a fact. */
export const FACT_WORDS: Readonly<Record<Fact, string>> = {
  kind: 'kind', ruler: 'ruler', 'struck-for': 'ruler', issuer: 'issuer', mint: 'mint', area: 'area',
  denomination: 'denomination', metal: 'metal', tag: 'tag', shape: 'shape', made: 'way of making',
  references: 'reference', realm: 'realm', die: 'die',
}; // prettier-ignore

/** Small letters and digits, joined by hyphens: `East Riding` and `east-riding` are one value. */
export function folded(text: string): string {
  return (
    text
      .normalize('NFC')
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}]+/gu)
      ?.join('-') ?? ''
  );
}

/** Everything a rule may ask of a piece. Its area is its mint's when it has none of its own, its realms are its rulers'. */
export function factsOf(piece: SetPiece, lists: Lists): Facts {
  const { sure } = piece;
  const rulers = piece.host === undefined ? piece.rulers : [...piece.rulers, piece.host];
  const mintArea = lists.mints.find((mint) => mint.id === piece.mint)?.area;
  const realms = lists.rulers.flatMap(({ id, realm }) => (rulers.includes(id) && realm !== undefined ? [realm] : []));
  const cited = (exact: boolean) =>
    piece.references.filter(({ relation }) => exact === (relation === 'is') && relation !== 'unlisted');
  const reference = ({ work, number }: { work: string; number: string }) => `${work} ${number}`;
  return {
    kind: stated([piece.kind], sure['kind']),
    ruler: stated(rulers, sure['ruler']),
    'struck-for':
      piece.struckFor.length === 0 ? stated(rulers, sure['ruler']) : stated(piece.struckFor, sure['struck-for']),
    issuer: stated([piece.issuer], sure['issuer']),
    mint: stated([piece.mint], sure['mint']),
    area: stated([piece.area ?? mintArea], sure['mint']),
    denomination: stated([piece.denomination], sure['denomination']),
    metal: stated([piece.metal], sure['metal']),
    tag: stated(piece.tags, 'certain'),
    shape: stated([piece.shape], 'certain'),
    made: stated([piece.made], 'certain'),
    references: stated(cited(true).map(reference), sure['references'], cited(false).map(reference)),
    realm: stated(realms, sure['ruler']),
    die: stated(dieNames(piece), 'certain'),
  };
}

function stated(
  values: readonly (string | undefined)[],
  sure: HowSure | undefined,
  near: readonly string[] = [],
): Stated {
  const known = values.filter((value) => value !== undefined);
  return { values: new Set(known.map(folded)), near: new Set(near.map(folded)), sure: sure ?? 'certain' };
}

function dieNames({ dies }: SetPiece): readonly string[] {
  const { obverse, reverse } = dies ?? {};
  return [
    ...(obverse === undefined ? [] : [obverse, `obverse ${obverse}`]),
    ...(reverse === undefined ? [] : [reverse, `reverse ${reverse}`]),
    ...(obverse === undefined || reverse === undefined ? [] : [`${obverse} ${reverse}`]),
  ];
}
