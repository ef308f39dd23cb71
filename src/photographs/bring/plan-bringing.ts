import type { FiledPiece } from '../../catalogue/records.ts';

/** A photograph that will be copied: to the face its name says, or to the faces that are seen in it. */
export type Bringing = { readonly from: string; readonly piece: string; readonly face: string | null };
/** A photograph that stays where it is, and why. */
export type LeftOut = { readonly from: string; readonly because: string };
export type BringingPlan = { readonly brought: readonly Bringing[]; readonly leftOut: readonly LeftOut[] };

/** Which photographs go to which piece and face. A face that has a photograph keeps it, and of two for one face the first goes. */
export function planBringing(paths: readonly string[], pieces: readonly FiledPiece[]): BringingPlan {
  const known = pieces.map(({ id, fields }) => ({ id, number: fields.number }));
  const brought: Bringing[] = [];
  const leftOut: LeftOut[] = [];
  const taken = new Map(
    pieces.flatMap(({ id, pictures }) => pictures.map(({ face, file }) => [`${id} ${face}`, file])),
  );
  const matched = paths.map((from) => ({ from, match: matchName(from, known) }));
  for (const { from, match } of matched) {
    if (!match.ok) {
      leftOut.push({ from, because: match.because });
      continue;
    }
    const { piece, face } = match;
    const unnamed = matched.filter(({ match: other }) => other.ok && other.piece === piece && other.face === null);
    if (face === null && unnamed.length > 1) {
      const because = `${unnamed.length} pictures are of ${piece} and do not say of which face. Add obverse or reverse to their names.`;
      leftOut.push({ from, because });
      continue;
    }
    const there = (face === null ? ['obverse', 'reverse'] : [face]).map((one) => taken.get(`${piece} ${one}`));
    const held = there.find((file) => file !== undefined);
    if (held !== undefined) {
      leftOut.push({
        from,
        because: `${held} is there already, and nothing is written over. Take that one away first if this is better.`,
      });
      continue;
    }
    for (const one of face === null ? ['obverse', 'reverse'] : [face]) taken.set(`${piece} ${one}`, from);
    brought.push({ from, piece, face });
  }
  return { brought, leftOut };
}

/** A piece a photograph may be of. */
export type KnownPiece = { readonly id: string; readonly number: string };

/** What a file's name says: of which piece it is, and of which face; null where it does not say the face. */
export type NameMatch =
  | { readonly ok: true; readonly piece: string; readonly face: string | null }
  | { readonly ok: false; readonly because: string };

/** The words for a face, in the languages of those who send pictures; `1` and `2`, `a` and `b` in that order. */
const FACES: Readonly<Record<string, readonly string[]>> = {
  obverse: ['o', 'ob', 'obv', 'obverse', 'a', 'av', 'avers', 'vs', 'vorderseite', 'voorzijde', 'dritto', 'anverso', 'front', '1'],
  reverse: ['r', 're', 'rev', 'reverse', 'b', 'rv', 'revers', 'rs', 'rückseite', 'rueckseite', 'keerzijde', 'rovescio', 'reverso', 'back', '2'],
  edge: ['edge', 'rand', 'tranche', 'bordo', 'canto'],
}; // prettier-ignore

/** A camera's own name: four signs and a count of four figures. Source: Design rule for Camera File system (JEITA CP-3461). */
const CAMERA = /^(?=.*[a-z_])[a-z0-9_]{4}\d{4}(?:\s*\(\d+\))?$/;

/**
 * Which piece and face a photograph shows, by its path below the folder that is imported: the inventory number or the
 * id of a piece, in the file's name or in that of its folder, and a word for the face.
 */
export function matchName(path: string, pieces: readonly KnownPiece[]): NameMatch {
  const steps = path.normalize('NFKC').toLowerCase().split(/[\\/]/);
  const stem = (steps.pop() ?? '').replace(/\.[^.]+$/, '').trim();
  const named = CAMERA.test(stem) ? byId(stem, pieces) : (byId(stem, pieces) ?? byNumber(stem, pieces));
  const isOnlyFace = wordsOf(stem).length === 1 && faceIn(wordsOf(stem)) !== null;
  const above = steps.reverse().map((folder) => byId(folder, pieces) ?? byNumber(folder, pieces));
  const inFolder = above.find((found) => found !== null) ?? null;
  // A picture that is called 1.jpg in the folder of a piece is of its first face, whichever piece has the number 1.
  if (named !== null && !(isOnlyFace && inFolder !== null)) return settled(named, path);
  if (inFolder !== null)
    return settled({ ...inFolder, face: (CAMERA.test(stem) ? null : faceIn(wordsOf(stem))) ?? inFolder.face }, path);
  return {
    ok: false,
    because: CAMERA.test(stem)
      ? 'This is a name a camera gave, and its figures are a count of pictures. Put the number of the piece before it, or the picture into a folder of that name.'
      : 'No number and no id of a piece is in this name. Name it like 0123-obverse.jpg.',
  };
}

type Found = { readonly pieces: readonly string[]; readonly face: string | null };

function settled({ pieces, face }: Found, path: string): NameMatch {
  const [piece, ...others] = pieces;
  return piece !== undefined && others.length === 0
    ? { ok: true, piece, face }
    : { ok: false, because: `${path} could be of ${pieces.join(' or ')}. Write the number in full, with its noughts.` };
}

/** The longest id that is in a name as itself. */
function byId(name: string, pieces: readonly KnownPiece[]): Found | null {
  const plain = name.replace(/[\s_]+/g, '-');
  const at = (id: string): number => `-${plain}-`.indexOf(`-${id}-`);
  const found = pieces.filter(({ id }) => at(id) !== -1).sort((a, b) => b.id.length - a.id.length)[0];
  if (found === undefined) return null;
  const start = at(found.id);
  const rest = `${plain.slice(0, Math.max(0, start - 1))}-${plain.slice(start + found.id.length)}`;
  return { pieces: [found.id], face: faceIn(wordsOf(rest)) };
}

/** An inventory number that is in a name as a word of its own, or with a word for the face at its end: `0123o`. */
function byNumber(name: string, pieces: readonly KnownPiece[]): Found | null {
  const words = wordsOf(name);
  for (const isSame of [exactly, withoutNoughts]) {
    // The longest run of words first: an inventory number may hold a hyphen or a point itself.
    for (let length = words.length; length > 0; length -= 1) {
      for (let from = 0; from + length <= words.length; from += 1) {
        const rest = [...words.slice(0, from), ...words.slice(from + length)];
        const run = words.slice(from, from + length).join(' ');
        // A figure or two among other words is a king's, a day's or a count, and no inventory number.
        if (/^\d{1,2}$/.test(run) && rest.some((word) => faceIn([word]) === null)) continue;
        const found = pieces.filter(({ number }) => isSame(run, number));
        if (found.length > 0) return { pieces: found.map(({ id }) => id), face: faceIn(rest) };
        const [, figures = '', word = ''] = /^(.*\d)(\p{L}+)$/u.exec(run) ?? [];
        const joined = faceIn([word]) === null ? [] : pieces.filter(({ number }) => isSame(figures, number));
        if (joined.length > 0) return { pieces: joined.map(({ id }) => id), face: faceIn([word]) };
      }
    }
  }
  return null;
}

function exactly(run: string, number: string): boolean {
  return run === wordsOf(number.toLowerCase()).join(' ');
}

function withoutNoughts(run: string, number: string): boolean {
  return /^\d+$/.test(run) && /^\d+$/.test(number) && run.replace(/^0+/, '') === number.replace(/^0+/, '');
}

function wordsOf(name: string): readonly string[] {
  return name.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
}

/** The face a name tells: the last word of it that is one. */
function faceIn(words: readonly string[]): string | null {
  const at = words.findIndex((word) => word.startsWith('detail'));
  if (at !== -1) {
    const which = [words[at]?.slice('detail'.length), ...words.slice(at + 1)].filter(
      (word) => word !== undefined && word !== '',
    );
    return `detail-${which.map((word) => word?.replace(/[^a-z0-9]+/g, '')).join('-') || '1'}`;
  }
  const named = words.findLast((word) => Object.values(FACES).some((said) => said.includes(word)));
  return Object.entries(FACES).find(([, said]) => named !== undefined && said.includes(named))?.[0] ?? null;
}
