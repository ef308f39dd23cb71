import sax from 'sax';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';

/** A shape of a drawing: the name of its SVG element, what may be drawn of it, and what it groups. */
export type Shape = {
  readonly element: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly inside: readonly Shape[];
};

/** A line drawing of one ink: nothing but shapes, in the coordinates of `box` (`0 0 64 48`). */
export type Drawing = { readonly box: string; readonly shapes: readonly Shape[] };

/** More than a line drawing of a mark needs, in letters of the file and in shapes. */
const MOST_LETTERS = 20_000;
const MOST_SHAPES = 300;
const DEEPEST = 10;
const BROKEN = 'This is no SVG that can be read. Save it again as plain SVG.';

const NUMBER = String.raw`-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?`;
const LENGTH = new RegExp(`^${NUMBER}(?:px)?$`, 'i');
const NUMBERS = /^[\d\s,.eE+-]+$/;
const PATH = /^[MLHVCSQTAZ\d\s,.e+-]*$/i;
const TRANSFORM = /^(?:\s*(?:translate|scale|rotate|matrix|skewX|skewY)\([\d\s,.eE+-]+\)[\s,]*)+$/;

/** The elements that are drawn, and how each of their own attributes is written. */
const DRAWN: Readonly<Record<string, Readonly<Record<string, RegExp>>>> = {
  g: {},
  path: { d: PATH },
  circle: { cx: LENGTH, cy: LENGTH, r: LENGTH },
  ellipse: { cx: LENGTH, cy: LENGTH, rx: LENGTH, ry: LENGTH },
  line: { x1: LENGTH, y1: LENGTH, x2: LENGTH, y2: LENGTH },
  polyline: { points: NUMBERS },
  polygon: { points: NUMBERS },
  rect: { x: LENGTH, y: LENGTH, width: LENGTH, height: LENGTH, rx: LENGTH, ry: LENGTH },
};

/** How any of them is drawn. */
const LOOKS: Readonly<Record<string, RegExp>> = {
  'stroke-width': LENGTH,
  'stroke-linecap': /^(?:butt|round|square)$/,
  'stroke-linejoin': /^(?:miter|round|bevel)$/,
  'stroke-dasharray': NUMBERS,
  'fill-rule': /^(?:nonzero|evenodd)$/,
  transform: TRANSFORM,
};

/** What says something of a file and draws nothing; it is left out, with all in it. */
const SILENT = /^(?:title|desc|metadata|defs|\w+:.*)$/;
/** What a drawing can do without and a page must not take from a file: it runs, fetches, or says something unseen. */
const RUNS = /^(?:script|foreignObject|image|use|a|animate\w*|set|style|iframe|audio|video)$/i;

/** A colour as the ink of the page, as its ground, or as nothing at all. */
function inkOf(colour: string): string {
  const plain = colour.trim().toLowerCase();
  if (plain === 'none' || plain === 'transparent') return 'none';
  return /^(?:white|#fff(?:fff)?|rgb\(255, ?255, ?255\))$/.test(plain) ? 'ground' : 'ink';
}

/**
 * Reads a drawing of a series. Only shapes are taken, one attribute at a time; every colour becomes the ink of the page and
 * white its ground, and words in the file (a title, an editor's notes) are left out. A sentence where a drawing holds what runs,
 * fetches or cannot be drawn so.
 */
export function readDrawing(text: string): Outcome<Drawing> {
  if (text.length > MOST_LETTERS)
    return refuse(`This drawing has ${text.length.toLocaleString('en')} letters and may have ${MOST_LETTERS.toLocaleString('en')}. Draw it with fewer points, or save it as plain SVG.`); // prettier-ignore
  const found = walk(text);
  if (found.problem !== null) return refuse(found.problem);
  if (found.box === null)
    return refuse('This drawing does not say how large it is. Write viewBox="0 0 64 48" into its first element.');
  const count = (shapes: readonly Shape[]): number => shapes.reduce((sum, { inside }) => sum + 1 + count(inside), 0);
  const drawn = count(found.shapes);
  if (drawn === 0)
    return refuse('Nothing is drawn in this file. Draw paths, lines or circles, and save it as plain SVG.');
  if (drawn > MOST_SHAPES)
    return refuse(`This drawing has ${String(drawn)} shapes and may have ${String(MOST_SHAPES)}. Join some of them.`);
  return good({ box: found.box, shapes: found.shapes });
}

type Open = Shape & { readonly inside: Shape[] };

/** A file on its way: what was read of it, how deep it goes now, and from which depth on nothing of it is drawn. */
type Walk = {
  box: string | null;
  root: Shape['attributes'];
  readonly shapes: Shape[];
  readonly open: Open[];
  problem: string | null;
  depth: number;
  silentFrom: number;
};

function walk(text: string): Pick<Walk, 'box' | 'shapes' | 'problem'> {
  const parser = sax.parser(true, { position: false });
  const found: Walk = { box: null, root: {}, shapes: [], open: [], problem: null, depth: 0, silentFrom: Infinity };
  parser.onerror = () => {
    found.problem ??= BROKEN;
  };
  parser.ondoctype = (type) => {
    if (type.includes('[')) found.problem ??= 'This drawing declares entities of its own. Save it again as plain SVG.';
  };
  parser.onopentag = ({ name, attributes }) => enter(found, name, attributes as Readonly<Record<string, string>>);
  parser.onclosetag = () => {
    if (found.depth < found.silentFrom && found.depth > 1) found.open.pop();
    if (found.depth === found.silentFrom) found.silentFrom = Infinity;
    found.depth -= 1;
  };
  try {
    parser.write(text).close();
  } catch {
    // After a first mistake the walker takes no more, and throws what was told to it.
    found.problem ??= BROKEN;
  }
  const { box, root, shapes, problem } = found;
  // What the whole drawing has, as `fill="none"`, its shapes have.
  const isPlain = Object.keys(root).length === 0 || shapes.length === 0;
  return { box, shapes: isPlain ? shapes : [{ element: 'g', attributes: root, inside: shapes }], problem };
}

function enter(found: Walk, name: string, attributes: Readonly<Record<string, string>>): void {
  found.depth += 1;
  const isUnsafe = (each: string): boolean => /^on/i.test(each) || /(?:^|:)href$/i.test(each);
  const runs = RUNS.test(name) ? `<${name}>` : Object.keys(attributes).find(isUnsafe);
  if (runs !== undefined)
    found.problem ??= `This drawing holds ${runs}, which no drawing of lines needs. Take it out, or save the file as plain SVG with its letters turned into paths.`;
  if (found.depth >= found.silentFrom || found.problem !== null) return;
  if (found.depth === 1 && name !== 'svg')
    found.problem = 'This file does not begin with <svg>. Save it again as plain SVG.';
  else if (found.depth > 1 && SILENT.test(name)) found.silentFrom = found.depth;
  else if (found.depth > DEEPEST) found.problem = 'The shapes of this drawing are in groups too deep. Ungroup them.';
  else take(found, name, attributes);
}

/** Takes a shape, or the size of the whole and what holds for all of it. */
function take(found: Walk, name: string, attributes: Readonly<Record<string, string>>): void {
  const isRoot = found.depth === 1;
  const read = shapeOf(isRoot ? 'g' : name, attributes);
  if (!read.ok) found.problem = read.problem;
  else if (isRoot) {
    found.box = boxOf(attributes);
    found.root = read.value.attributes;
  } else {
    const made: Open = { ...read.value, inside: [] };
    (found.open.at(-1)?.inside ?? found.shapes).push(made);
    found.open.push(made);
  }
}

/** The four numbers of a viewBox; of a width and a height where there is none. */
function boxOf({ viewBox, width, height }: Readonly<Record<string, string>>): string | null {
  const numbers = (viewBox ?? `0 0 ${width ?? ''} ${height ?? ''}`)
    .trim()
    .split(/[\s,]+/)
    .map((part) => Number(part.replace(/px$/, '')));
  const [, , across = 0, down = 0] = numbers;
  return numbers.length === 4 && numbers.every(Number.isFinite) && across > 0 && down > 0 ? numbers.join(' ') : null;
}

function shapeOf(element: string, attributes: Readonly<Record<string, string>>): Outcome<Omit<Shape, 'inside'>> {
  const own = DRAWN[element];
  if (own === undefined)
    return refuse(`This drawing holds <${element}>; only ${Object.keys(DRAWN).join(', ')} are drawn. Turn it into a path, or take it out.`); // prettier-ignore
  const said = { ...attributes, ...styleOf(attributes['style']) };
  const taken: Record<string, string> = {};
  for (const [name, text] of Object.entries(said)) {
    const written = text.trim();
    if (name === 'fill' || name === 'stroke') taken[name] = inkOf(written);
    const form = own[name] ?? LOOKS[name];
    if (form === undefined) continue;
    if (!form.test(written)) return refuse(`<${element}> has ${name}="${written.slice(0, 30)}", which is none. Save it again as plain SVG.`); // prettier-ignore
    taken[name] = written;
  }
  return good({ element, attributes: taken });
}

/** `fill:none;stroke:#000` as the attributes it stands for. */
function styleOf(style = ''): Readonly<Record<string, string>> {
  return Object.fromEntries(
    style.split(';').flatMap((part) => {
      const [name = '', ...value] = part.split(':');
      return value.length === 0 ? [] : [[name.trim(), value.join(':').trim()]];
    }),
  );
}
