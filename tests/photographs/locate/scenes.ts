import sharp from 'sharp';
import type { Photograph } from '../../../src/photographs/render/open-photograph.ts';

/** A thing that lies in a scene of 960 by 720: a round piece, or one with straight sides. */
export type Lying =
  | { readonly x: number; readonly y: number; readonly r: number; readonly colour?: Colour }
  | {
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly colour?: Colour;
    };

type Colour = keyof typeof METALS;
type Board = keyof typeof BOARDS;

/** A photograph drawn with known pieces. */
export type Scene = {
  readonly name: string;
  readonly board: Board;
  readonly pieces: readonly Lying[];
  /** A shadow to the lower right: how far, how soft, how dark. */
  readonly shadow?: readonly [far: number, soft: number, dark: number];
  readonly ruler?: 'below' | 'right' | 'out of the picture' | 'close by';
  /** Grains of a sensor in poor light, as the usual departure of a pixel from its value, of 255. */
  readonly noise?: number;
  readonly plain?: boolean;
  readonly bright?: boolean;
};

/** How large every scene is drawn, and how large its photograph is, in pixels. */
const SCENE = { width: 960, height: 720 } as const;
export const PHOTOGRAPH = { width: 960, height: 720 } as const;

const METALS = {
  silver: ['#dfe1e3', '#a9adb0', '#6c7073'],
  gold: ['#f0d27a', '#c8a24a', '#7c5f1e'],
  copper: ['#c98a63', '#96603f', '#54311d'],
  dark: ['#5b5145', '#3f372d', '#221d17'],
  lead: ['#a3a7aa', '#888c8f', '#626669'],
} as const;

const BOARDS = {
  grey: '<rect width="960" height="720" fill="#8f9294"/>',
  white: '<rect width="960" height="720" fill="#f4f4f2"/>',
  black: '<rect width="960" height="720" fill="#17181a"/>',
  slate: '<rect width="960" height="720" fill="#3a3d40"/>',
  blue: '<rect width="960" height="720" fill="#2c4a72"/>',
  lit: '<rect width="960" height="720" fill="url(#lit)"/>',
  dusk: '<rect width="960" height="720" fill="#8f9294"/><rect width="960" height="720" fill="url(#dusk)"/>',
  wood: `<rect width="960" height="720" fill="#8a6844"/>${Array.from({ length: 36 }, (_, at) => `<path d="M0 ${at * 20 + 6} q 240 ${at % 3 === 0 ? 14 : -10} 480 0 t 480 0" stroke="#7a5a39" stroke-width="${3 + (at % 4)}" fill="none" opacity="0.35" filter="url(#grain)"/>`).join('')}`,
  cloth: `<rect width="960" height="720" fill="#5f646a"/><rect width="960" height="720" fill="url(#weave)"/>`,
} as const;

const DEFS = `<defs>
<linearGradient id="lit"><stop stop-color="#c4c7c9"/><stop offset="1" stop-color="#6f7274"/></linearGradient>
<radialGradient id="dusk" r="0.75"><stop offset="0.3" stop-color="#000" stop-opacity="0"/><stop offset="1" stop-color="#000" stop-opacity="0.6"/></radialGradient>
<pattern id="weave" width="6" height="6" patternUnits="userSpaceOnUse"><path d="M0 0h3v3h-3zM3 3h3v3h-3z" fill="#676c72"/></pattern>
<filter id="grain"><feGaussianBlur stdDeviation="1.5"/></filter>
${Object.entries(METALS)
  .map(
    ([name, [light, middle, dark]]) =>
      `<linearGradient id="${name}" x2="0.7" y2="1"><stop stop-color="${light}"/><stop offset="0.5" stop-color="${middle}"/><stop offset="1" stop-color="${dark}" stop-opacity="1"/></linearGradient>`,
  )
  .join('')}
</defs>`;

function outlineOf(piece: Lying, fill: string): string {
  return 'r' in piece
    ? `<circle cx="${piece.x}" cy="${piece.y}" r="${piece.r}" fill="${fill}"/>`
    : `<rect x="${piece.x - piece.width / 2}" y="${piece.y - piece.height / 2}" width="${piece.width}" height="${piece.height}" fill="${fill}"/>`;
}

/** Letters round the rim, a ring of beads, and something like a head. */
function reliefOf(piece: Lying, [light, , dark]: readonly string[]): string {
  const r = 'r' in piece ? piece.r : Math.min(piece.width, piece.height) / 2;
  const at = (part: number): number => part * r;
  const ring = (reach: number, wide: number, long: number, gap: number, colour = dark): string =>
    `<circle cx="${piece.x}" cy="${piece.y}" r="${at(reach)}" fill="none" stroke="${colour}" stroke-width="${at(wide)}" stroke-dasharray="${at(long)} ${at(gap)}"/>`;
  const head = `<ellipse cx="${piece.x}" cy="${piece.y}" rx="${at(0.26)}" ry="${at(0.34)}" fill="${light}" stroke="${dark}" stroke-width="${at(0.03)}"/>`;
  return `${ring(0.76, 0.16, 0.1, 0.07)}${ring(0.6, 0.03, 0.03, 0.03, light)}${head}`;
}

function pieceSvg(piece: Lying, { shadow, plain, bright }: Scene): string {
  const colour = piece.colour ?? 'silver';
  const [far, soft, dark] = shadow ?? [0, 0, 0];
  const cast =
    shadow === undefined
      ? ''
      : `<filter id="soft" x="-50%" y="-50%" width="200%" height="200%"><feGaussianBlur stdDeviation="${soft}"/></filter><g transform="translate(${far} ${far})" opacity="${dark}" filter="url(#soft)">${outlineOf(piece, '#000')}</g>`;
  const r = 'r' in piece ? piece.r : Math.min(piece.width, piece.height) / 2;
  const glare = bright
    ? `<ellipse cx="${piece.x - r * 0.4}" cy="${piece.y - r * 0.45}" rx="${r * 0.3}" ry="${r * 0.16}" fill="#fff" opacity="0.9" filter="url(#grain)"/>`
    : '';
  return `${cast}${outlineOf(piece, `url(#${colour})`)}${plain ? '' : reliefOf(piece, METALS[colour])}${glare}`;
}

const RULERS = {
  below: [120, 640, 0],
  right: [880, 60, 90],
  'out of the picture': [-40, 640, 0],
  'close by': [0, 0, 0],
};

function rulerSvg({ ruler, pieces }: Scene): string {
  if (ruler === undefined) return '';
  const [first] = pieces;
  const half = first === undefined ? 0 : 'r' in first ? first.r : first.height / 2;
  const [x, y, turn] = ruler === 'close by' ? [130, (first?.y ?? 0) + half + 12, 0] : RULERS[ruler];
  const marks = Array.from(
    { length: 60 },
    (_, at) => `<rect x="${at * 11.5 + 8}" width="1.6" height="${at % 5 === 0 ? 24 : 13}" fill="#222"/>`,
  );
  return `<g transform="translate(${x} ${y}) rotate(${turn})"><rect width="${ruler === 'right' ? 600 : 700}" height="56" fill="#e8e3cf"/>${marks.join('')}</g>`;
}

/** The box of a piece in the photograph of its scene. */
export function boxIn(piece: Lying): { left: number; top: number; width: number; height: number } {
  const scale = PHOTOGRAPH.width / SCENE.width;
  const [width, height] = 'r' in piece ? [2 * piece.r, 2 * piece.r] : [piece.width, piece.height];
  return {
    left: (piece.x - width / 2) * scale,
    top: (piece.y - height / 2) * scale,
    width: width * scale,
    height: height * scale,
  };
}

/** Draws a scene as a photograph would show it, a little soft and with grains: rows of red, green, blue. */
export async function photographOf(scene: Scene): Promise<Photograph> {
  const { width, height } = PHOTOGRAPH;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${SCENE.width} ${SCENE.height}">${DEFS}${BOARDS[scene.board]}${rulerSvg(scene)}${scene.pieces.map((piece) => pieceSvg(piece, scene)).join('')}</svg>`;
  const data = await sharp(Buffer.from(svg)).removeAlpha().blur(0.9).raw().toBuffer();
  const usual = scene.noise ?? 2.5;
  for (let at = 0; at < data.length; at += 1)
    data[at] = Math.min(255, Math.max(0, Math.round((data[at] ?? 0) + usual * (GRAINS[at % GRAINS.length] ?? 0))));
  return { width, height, rgb: data, full: { width, height } };
}

/** Grains of a usual departure of 1: sums of two even draws of a small generator (D. Lehmer, 1951), as near to a bell as need be. */
const GRAINS = ((): Float32Array => {
  let state = 48_271;
  const draw = (): number => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647 - 0.5;
  return Float32Array.from({ length: 1_000_003 }, () => Math.sqrt(6) * (draw() + draw()));
})();

const MIDDLE = { x: 480, y: 360, r: 250 } as const;
const one = (name: string, board: Board, piece: Lying, more: Partial<Scene> = {}): Scene => ({
  name,
  board,
  pieces: [piece],
  ...more,
});

/** Scenes with one piece, or two faces in one frame, whose places are known because they were drawn there. */
export const SCENES: readonly Scene[] = [
  one('silver on grey', 'grey', MIDDLE),
  one('gold on grey', 'grey', { ...MIDDLE, colour: 'gold' }),
  one('copper on grey', 'grey', { ...MIDDLE, colour: 'copper' }),
  one('lead on grey, nearly the colour of its board', 'grey', { ...MIDDLE, colour: 'lead' }),
  one('silver on white', 'white', MIDDLE),
  one('gold on white', 'white', { ...MIDDLE, colour: 'gold' }),
  one('dark bronze on white', 'white', { ...MIDDLE, colour: 'dark' }),
  one('silver on black', 'black', MIDDLE),
  one('dark bronze on black', 'black', { ...MIDDLE, colour: 'dark' }),
  one('dark bronze on slate', 'slate', { ...MIDDLE, colour: 'dark' }),
  one('dark bronze on slate, off centre', 'slate', { x: 330, y: 420, r: 170, colour: 'dark' }),
  one('copper on slate', 'slate', { ...MIDDLE, colour: 'copper' }),
  one('silver on blue', 'blue', MIDDLE),
  one('copper on blue', 'blue', { ...MIDDLE, colour: 'copper' }),
  one('off centre to the left', 'grey', { x: 260, y: 300, r: 200 }),
  one('off centre to the lower right', 'grey', { x: 700, y: 480, r: 180 }),
  one('close to the rim of the picture', 'grey', { x: 215, y: 215, r: 195 }),
  one('large, nearly filling the picture', 'grey', { x: 480, y: 360, r: 335 }),
  one('small in a large board', 'grey', { x: 560, y: 330, r: 90 }),
  one('small and dark', 'slate', { x: 420, y: 400, r: 95, colour: 'dark' }),
  one('small gold on white', 'white', { x: 600, y: 420, r: 85, colour: 'gold' }),
  one('on a board lit from one side', 'lit', MIDDLE),
  one('copper on a board lit from one side', 'lit', { ...MIDDLE, colour: 'copper' }),
  one('on a board that darkens to its corners', 'dusk', { x: 500, y: 340, r: 220 }),
  one('gold on a board that darkens to its corners', 'dusk', { x: 450, y: 380, r: 200, colour: 'gold' }),
  one('on wood', 'wood', { ...MIDDLE }),
  one('gold on wood', 'wood', { ...MIDDLE, colour: 'gold' }),
  one('on cloth', 'cloth', { ...MIDDLE }),
  one('dark bronze on cloth', 'cloth', { ...MIDDLE, colour: 'dark' }),
  one('with a soft shadow', 'grey', MIDDLE, { shadow: [14, 14, 0.45] }),
  one('with a long soft shadow', 'white', { x: 440, y: 330, r: 220 }, { shadow: [26, 18, 0.4] }),
  one('with a hard shadow', 'white', MIDDLE, { shadow: [12, 3, 0.5] }),
  one('gold with a hard shadow', 'grey', { x: 460, y: 340, r: 210, colour: 'gold' }, { shadow: [16, 4, 0.55] }),
  one('copper with a soft shadow on white', 'white', { ...MIDDLE, colour: 'copper' }, { shadow: [18, 10, 0.5] }),
  one('a ruler below', 'grey', { x: 480, y: 330, r: 220 }, { ruler: 'below' }),
  one('a ruler to the right', 'slate', { x: 420, y: 360, r: 230 }, { ruler: 'right' }),
  one('a ruler that runs out of the picture', 'grey', { x: 500, y: 320, r: 240, colour: 'copper' }, { ruler: 'out of the picture' }),
  one('a ruler close by', 'grey', { x: 480, y: 300, r: 200 }, { ruler: 'close by' }),
  one('a small piece and a long ruler', 'blue', { x: 480, y: 330, r: 90, colour: 'gold' }, { ruler: 'below' }),
  one('a square piece', 'grey', { x: 480, y: 360, width: 420, height: 420 }),
  one('a square piece of copper with a shadow', 'white', { x: 470, y: 340, width: 400, height: 400, colour: 'copper' }, { shadow: [12, 8, 0.4] }),
  one('an oblong ingot', 'slate', { x: 480, y: 360, width: 620, height: 180 }),
  one('an upright bar', 'grey', { x: 500, y: 360, width: 160, height: 520, colour: 'gold' }),
  one('a worn piece with nothing on it', 'grey', { ...MIDDLE, colour: 'copper' }, { plain: true }),
  one('a worn dark piece with nothing on it', 'slate', { ...MIDDLE, colour: 'dark' }, { plain: true }),
  one('in poor light', 'grey', MIDDLE, { noise: 9 }),
  one('dark bronze in poor light', 'slate', { ...MIDDLE, colour: 'dark' }, { noise: 6 }),
  one('with a bright glare', 'black', MIDDLE, { bright: true }),
  { name: 'two faces in one frame', board: 'grey', pieces: [{ x: 260, y: 360, r: 180 }, { x: 700, y: 360, r: 180 }] },
  { name: 'two faces close together', board: 'slate', pieces: [{ x: 265, y: 350, r: 195 }, { x: 690, y: 366, r: 195 }] },
  { name: 'two faces of gold on white', board: 'white', pieces: [{ x: 250, y: 300, r: 150, colour: 'gold' }, { x: 680, y: 420, r: 150, colour: 'gold' }] },
  { name: 'two dark faces and a ruler', board: 'slate', pieces: [{ x: 270, y: 320, r: 170, colour: 'dark' }, { x: 690, y: 320, r: 170, colour: 'dark' }], ruler: 'below' },
  { name: 'two faces with shadows', board: 'lit', pieces: [{ x: 250, y: 360, r: 170, colour: 'copper' }, { x: 690, y: 360, r: 170, colour: 'copper' }], shadow: [14, 9, 0.45] },
  { name: 'two square faces', board: 'grey', pieces: [{ x: 260, y: 360, width: 300, height: 300 }, { x: 700, y: 360, width: 300, height: 300 }] },
]; // prettier-ignore
