/** Which faces lie there, and how: pieces beside one another, or the second over the first. */
export const FACES = ['both', 'obverse', 'reverse'] as const;
export const LAYINGS = ['beside', 'over'] as const;
export type Faces = (typeof FACES)[number];
export type Laying = (typeof LAYINGS)[number];

export type CompareState = {
  /** Ids as the address has them, each once, in the order they lie. */
  readonly pieces: readonly string[];
  readonly faces: Faces;
  readonly laid: Laying;
  /** Whether reverses lie as they come up when the piece is turned about its height, or upright. */
  readonly turned: boolean;
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
  };
}

/** The query string that reads back to the state: `?pieces=a,b&faces=reverse`; empty when nothing lies there. */
export function formatCompare({ pieces, faces, laid, turned }: CompareState): string {
  const asked = [
    // Commas stay as they are, so that an address can be read and written by hand.
    ...(pieces.length === 0 ? [] : [`pieces=${pieces.map(encodeURIComponent).join(',')}`]),
    ...(faces === 'both' ? [] : [`faces=${faces}`]),
    ...(laid === 'beside' ? [] : [`laid=${laid}`]),
    ...(turned ? ['turned=yes'] : []),
  ];
  return asked.length === 0 ? '' : `?${asked.join('&')}`;
}

/** Whether a text has the form of an id. Only such a one is asked for. */
export function isId(text: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text);
}
