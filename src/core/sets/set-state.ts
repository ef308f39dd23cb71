export type PlaceState = {
  readonly id: string;
  readonly label: string;
  readonly state: 'filled' | 'possible' | 'filler' | 'wanted' | 'excused';
  /** The piece that stands here. */
  readonly piece?: string;
  /** The other pieces that could stand here, the best first. */
  readonly others?: readonly string[];
  /** Why this piece stands here, why nothing does, or why nothing can. */
  readonly because?: string;
};

export type Upgrade = {
  readonly place: string;
  /** The lesser piece. */
  readonly from: string;
  /** The better piece. */
  readonly to: string;
  readonly certain: boolean;
  /** Whether the better piece is already in the place and has displaced the other. */
  readonly made: boolean;
  readonly because: string;
};

export type Wanted = {
  readonly place: string;
  readonly label: string;
  readonly why: 'empty' | 'filler' | 'possible' | 'below the aim';
  readonly because: string;
};

export type Count = { readonly low: number; readonly high: number };

/** How far a set has come. All of it may be published; pieces kept private must be left out before it is counted. */
export type SetState = {
  readonly id: string;
  readonly title: string;
  /** How many places there are to fill; excused places are not among them. */
  readonly of: number;
  /**
   * Filled for certain, and the most that any arrangement could fill if every doubtful piece were what it may be, which may be more
   * than the filled and possible places of the one shown. Fillers count in neither.
   */
  readonly filled: Count;
  readonly excused: number;
  readonly places: readonly PlaceState[];
  /** Pieces that fit and are not needed. */
  /** `label` is of the place that it fits best. */
  readonly spares: readonly { readonly piece: string; readonly label: string; readonly because: string }[];
  readonly upgrades: readonly Upgrade[];
  /** Pieces that would fit a place but for one thing. */
  readonly leftOut: readonly { readonly piece: string; readonly because: string }[];
  readonly wanted: readonly Wanted[];
  /** The places that have a piece by the year in which it came, in the order of places; the year is null where it is not dated. */
  readonly history: readonly { readonly year: number | null; readonly came: readonly PlaceState['state'][] }[];
};
