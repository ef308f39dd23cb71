/** The side of the square on which everything is worked, in pixels; the photograph is made smaller at the end. */
export const SIDE = 1200;

/** The radius at which a piece of normal size lies on the square: 82 per cent of the width. */
export const RADIUS = 492;

/** One number for each pixel, row by row. */
export type Field = Float32Array<ArrayBuffer>;

export function blank(): Field {
  return new Float32Array(SIDE * SIDE);
}

/** The field smoothed by a bell of the given width (standard deviation, in pixels). */
export function blurred(field: Field, sigma: number): Field {
  if (sigma < 0.3) return field.slice();
  if (sigma < 2.2) return belled(field, sigma);
  const wide = Math.sqrt(4 * sigma * sigma + 1);
  const low = Math.floor(wide) % 2 === 0 ? Math.floor(wide) - 1 : Math.floor(wide);
  const lows = Math.round((12 * sigma * sigma - 3 * low * low - 12 * low - 9) / (-4 * low - 4));
  const [from, into] = [field.slice(), blank()];
  for (let pass = 0; pass < 3; pass += 1) {
    const reach = ((pass < lows ? low : low + 2) - 1) / 2;
    boxed(from, into, reach, 1, SIDE);
    boxed(into, from, reach, SIDE, 1);
  }
  return from;
}

/** A running mean along one direction. `step` goes along a line, `next` to the following line. */
function boxed(from: Field, into: Field, reach: number, step: number, next: number): void {
  const share = 1 / (2 * reach + 1);
  for (let line = 0; line < SIDE; line += 1) {
    const start = line * next;
    const first = from[start] ?? 0;
    const last = from[start + (SIDE - 1) * step] ?? 0;
    let sum = first * reach;
    for (let at = 0; at < reach; at += 1) sum += from[start + at * step] ?? 0;
    for (let at = 0; at < SIDE; at += 1) {
      sum += at + reach < SIDE ? (from[start + (at + reach) * step] ?? 0) : last;
      into[start + at * step] = sum * share;
      sum -= at - reach >= 0 ? (from[start + (at - reach) * step] ?? 0) : first;
    }
  }
}

function belled(field: Field, sigma: number): Field {
  const reach = Math.ceil(sigma * 2.5);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, at) => Math.exp(-((at - reach) ** 2) / (2 * sigma * sigma)));
  const whole = bell.reduce((sum, one) => sum + one, 0);
  const middle = blank();
  const out = blank();
  spread(field, middle, bell, whole, reach, 1, SIDE);
  spread(middle, out, bell, whole, reach, SIDE, 1);
  return out;
}

function spread(
  from: Field,
  into: Field,
  bell: number[],
  whole: number,
  reach: number,
  step: number,
  next: number,
): void {
  for (let line = 0; line < SIDE; line += 1) {
    for (let at = 0; at < SIDE; at += 1) {
      let sum = 0;
      if (at >= reach && at < SIDE - reach) {
        let source = line * next + (at - reach) * step;
        for (let tap = 0; tap <= 2 * reach; tap += 1, source += step) sum += (from[source] ?? 0) * (bell[tap] ?? 0);
        into[line * next + at * step] = sum / whole;
        continue;
      }
      for (let away = -reach; away <= reach; away += 1) {
        const place = Math.min(SIDE - 1, Math.max(0, at + away));
        sum += (from[line * next + place * step] ?? 0) * (bell[away + reach] ?? 0);
      }
      into[line * next + at * step] = sum / whole;
    }
  }
}

/** How far each pixel within a mask (over one half) lies from what is outside it, in pixels. Felzenszwalb and Huttenlocher, 2012. */
export function depthWithin(mask: Field): Field {
  const out = blank();
  const [left, top, right, bottom] = boxOf(mask);
  if (right < left) return out;
  const far = 1e12;
  for (let y = top; y <= bottom; y += 1)
    for (let x = left; x <= right; x += 1) out[y * SIDE + x] = (mask[y * SIDE + x] ?? 0) > 0.5 ? far : 0;
  for (let x = left; x <= right; x += 1) squareDepth(out, top * SIDE + x, SIDE, bottom - top + 1);
  for (let y = top; y <= bottom; y += 1) squareDepth(out, y * SIDE + left, 1, right - left + 1);
  for (let at = 0; at < out.length; at += 1) if ((out[at] ?? 0) > 0) out[at] = Math.sqrt(out[at] ?? 0);
  return out;
}

/** Left, top, right and bottom of what is in the mask, with a pixel round it where there is room. */
function boxOf(mask: Field): [number, number, number, number] {
  let [left, top, right, bottom] = [SIDE, SIDE, -1, -1];
  for (let y = 0; y < SIDE; y += 1) {
    for (let x = 0; x < SIDE; x += 1) {
      if ((mask[y * SIDE + x] ?? 0) <= 0.5) continue;
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
  }
  if (right < 0) return [0, 0, -1, -1];
  return [Math.max(0, left - 1), Math.max(0, top - 1), Math.min(SIDE - 1, right + 1), Math.min(SIDE - 1, bottom + 1)];
}

const heights = new Float64Array(SIDE);
const roots = new Int32Array(SIDE);
const bounds = new Float64Array(SIDE + 1);

function squareDepth(field: Field, start: number, step: number, length: number): void {
  for (let at = 0; at < length; at += 1) heights[at] = field[start + at * step] ?? 0;
  let top = 0;
  roots[0] = 0;
  bounds[0] = -1e20;
  bounds[1] = 1e20;
  for (let at = 1; at < length; at += 1) {
    const own = (heights[at] ?? 0) + at * at;
    let crossing = meeting(own, at, roots[top] ?? 0);
    while (crossing <= (bounds[top] ?? 0)) {
      top -= 1;
      crossing = meeting(own, at, roots[top] ?? 0);
    }
    top += 1;
    roots[top] = at;
    bounds[top] = crossing;
    bounds[top + 1] = 1e20;
  }
  top = 0;
  for (let at = 0; at < length; at += 1) {
    while ((bounds[top + 1] ?? 0) < at) top += 1;
    const root = roots[top] ?? 0;
    field[start + at * step] = (at - root) ** 2 + (heights[root] ?? 0);
  }
}

function meeting(own: number, at: number, root: number): number {
  return (own - (heights[root] ?? 0) - root * root) / (2 * at - 2 * root);
}
