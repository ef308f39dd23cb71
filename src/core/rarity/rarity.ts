/** One class of a rarity scale: how it is written, in words, and between how many pieces it stands for (null: no number is given). */
export type RarityClass = {
  readonly name: string;
  readonly words: string;
  readonly low: number | null;
  readonly high: number | null;
};

/** A scale with its printed source, commonest class first. */
export type RarityScale = {
  readonly id: string;
  readonly title: string;
  /** Names it goes by in lists, in small letters. */
  readonly names: readonly string[];
  /** What is counted. */
  readonly counts: string;
  readonly source: string;
  readonly classes: readonly RarityClass[];
};

/** A rarity as given: it always names its scale. */
export type Rarity = {
  readonly text: string;
  readonly scale: string;
  readonly class: string;
  readonly low: number | null;
  readonly high: number | null;
};
