/** What is measured of a rim to tell how sure it is; `RimJudgement` has the first two. */
export type Signs = {
  readonly unlike: number;
  readonly outside: number;
  /** How far it is from a circle, as a part of its radius. */
  readonly oval: number;
  /** How much of the path it was drawn through lies on it, 0 to 1: what cloth or letters give by chance wanders about. */
  readonly onIt: number;
};

/** How sure a rim with these signs is, 0 to 1. */
export type Sureness = (signs: Signs) => number;

/** What each sign adds, in logarithms of the odds, and what there is without any. */
export type Weights = { readonly base: number } & Signs;

/**
 * Fitted by logistic regression to every rim found in 50 photographs with known coins and in 13 variants of each
 * (tests/photographs/fit); the figures in DEVELOPERS.md are of the background that was left out. What the fit gave no
 * weight is not measured: the evidence along the rim and beyond it, how far its path strays in the mean, and whether a
 * silhouette agrees.
 */
export const WEIGHTS: Weights = {
  base: -8.66,
  unlike: 5.35,
  outside: -16.54,
  oval: -47.07,
  onIt: 9.26,
};

/** What is less sure than this is not cut out; and from here on nothing else is looked for that could be meant instead. */
export const SURE_ENOUGH = 0.7;
export const VERY_SURE = 0.9;

/** The rule with these weights: the likelihood that a rim is the true one. */
export function surenessBy(weights: Weights): Sureness {
  return ({ unlike, outside, oval, onIt }) => {
    const odds =
      weights.base + weights.unlike * unlike + weights.outside * outside + weights.oval * oval + weights.onIt * onIt;
    return 1 / (1 + Math.exp(-odds));
  };
}

export const sureness = surenessBy(WEIGHTS);
