/** The box that every mark is drawn in, and how thick its lines are. */
export const BOX = '0 0 64 48';
const THIN = 1.4;
const LINE = 2.4;

/** What only leads to the mark: thin lines. */
export function thin(d: string): string {
  return `<path d="${d}" fill="none" stroke="black" stroke-width="${String(THIN)}" stroke-linecap="round" stroke-linejoin="round"/>`;
}

/** A line of the mark itself. */
export function line(d: string, width = LINE): string {
  return `<path d="${d}" fill="none" stroke="black" stroke-width="${String(width)}" stroke-linecap="round" stroke-linejoin="round"/>`;
}

/** What is lost, or not there. */
export function lost(d: string): string {
  return `<path d="${d}" fill="none" stroke="black" stroke-width="${String(THIN)}" stroke-dasharray="2 2"/>`;
}

export function full(d: string): string {
  return `<path d="${d}" fill="black"/>`;
}

export function dot(x: number, y: number, r: number): string {
  return `<circle cx="${String(x)}" cy="${String(y)}" r="${String(r)}" fill="black"/>`;
}

export function ring(x: number, y: number, r: number): string {
  return `<circle cx="${String(x)}" cy="${String(y)}" r="${String(r)}" fill="none" stroke="black" stroke-width="${String(THIN)}"/>`;
}

export function turned(degrees: number, x: number, y: number, inside: string): string {
  return `<g transform="rotate(${String(degrees)} ${String(x)} ${String(y)})">${inside}</g>`;
}

export function mirrored(inside: string): string {
  return `<g transform="matrix(-1 0 0 1 64 0)">${inside}</g>`;
}

/** Four leaves about a middle that is left open. */
export function quatrefoil(x: number, y: number, r: number): string {
  return [[-r, 0], [r, 0], [0, -r], [0, r]].map(([dx = 0, dy = 0]) => `<circle cx="${String(x + dx)}" cy="${String(y + dy)}" r="${String(r * 0.72)}" fill="white" stroke="black" stroke-width="2"/>`).join('') + `<circle cx="${String(x)}" cy="${String(y)}" r="${String(r * 0.75)}" fill="white"/>`; // prettier-ignore
}

/** A mark as a file: nothing but its lines. */
export function asFile(inside: readonly string[]): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${BOX}">\n${inside.join('\n')}\n</svg>\n`;
}
