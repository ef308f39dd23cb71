/** Which faces lie there, and how: pieces beside one another, or the second over the first. */
export const FACES = ['both', 'obverse', 'reverse'] as const;
export const LAYINGS = ['beside', 'over'] as const;
export type Faces = (typeof FACES)[number];
export type Laying = (typeof LAYINGS)[number];

/** How the upper face lies on the lower: degrees clockwise, and millimetres to the right and down. */
export type Lie = { readonly degrees: number; readonly across: number; readonly down: number };

export const STRAIGHT: Lie = { degrees: 0, across: 0, down: 0 };

export type CompareState = {
  /** Ids as the address has them, each once, in the order they lie. */
  readonly pieces: readonly string[];
  readonly faces: Faces;
  readonly laid: Laying;
  /** Whether reverses lie as they come up when the piece is turned about its height, or upright. */
  readonly turned: boolean;
  /** How the second lies over the first; straight where they are next to one another. */
  readonly lie: Lie;
};

/** As many as lie on a table that can still be read. */
export const MOST = 12;

/** Reads the query string of an address; what it does not know it leaves out. */
export function parseCompare(query: string): CompareState {
  const asked = new URLSearchParams(query);
  const ids = asked
    .getAll('pieces')
    .flatMap((some) => some.split(','))
    .map((id) => id.trim())
    .filter((id) => id !== '');
  return {
    pieces: [...new Set(ids)],
    faces: FACES.find((known) => known === asked.get('faces')) ?? 'both',
    laid: LAYINGS.find((known) => known === asked.get('laid')) ?? 'beside',
    turned: asked.get('turned') === 'yes',
    lie: asked.get('laid') === 'over' ? parseLie(asked.get('lie') ?? '') : STRAIGHT,
  };
}

/** Further apart than this, in millimetres, no two pieces lie over one another. */
const FARTHEST = 200;

/** `3,0.2,-0.4`: degrees, millimetres to the right, millimetres down. Anything else lies straight. */
function parseLie(text: string): Lie {
  if (!/^-?\d+(?:\.\d+)?(?:,-?\d+(?:\.\d+)?){2}$/.test(text)) return STRAIGHT;
  const [degrees = 0, across = 0, down = 0] = text.split(',').map(Number);
  const isNear = Math.abs(degrees) <= 180 && Math.max(Math.abs(across), Math.abs(down)) <= FARTHEST;
  return isNear ? roundedLie({ degrees, across, down }) : STRAIGHT;
}

/** A lie as an address has it: to a tenth of a degree and a hundredth of a millimetre. */
export function roundedLie({ degrees, across, down }: Lie): Lie {
  // What is added to nothing is never a nothing with a minus.
  const to = (steps: number, value: number): number => Math.round(value * steps) / steps + 0;
  return { degrees: to(10, degrees), across: to(100, across), down: to(100, down) };
}

/** How the lower lies on the upper, when the upper lies so on the lower. */
export function otherWay({ degrees, across, down }: Lie): Lie {
  const turn = (-degrees * Math.PI) / 180;
  return roundedLie({
    degrees: -degrees,
    across: -(across * Math.cos(turn) - down * Math.sin(turn)),
    down: -(across * Math.sin(turn) + down * Math.cos(turn)),
  });
}

/** The query string that reads back to the state: `?pieces=a,b&faces=reverse`; empty when nothing lies there. */
export function formatCompare({ pieces, faces, laid, turned, lie }: CompareState): string {
  const asked = [
    // Commas stay as they are, so that an address can be read and written by hand.
    ...(pieces.length === 0 ? [] : [`pieces=${pieces.map(encodeURIComponent).join(',')}`]),
    ...(faces === 'both' ? [] : [`faces=${faces}`]),
    ...(laid === 'beside' ? [] : [`laid=${laid}`]),
    ...(turned ? ['turned=yes'] : []),
    ...(laid === 'beside' || Object.values(lie).every((one) => one === 0)
      ? []
      : [`lie=${lie.degrees},${lie.across},${lie.down}`]),
  ];
  return asked.length === 0 ? '' : `?${asked.join('&')}`;
}

/** Whether a text has the form of an id. Only such a one is asked for. */
export function isId(text: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text);
}
