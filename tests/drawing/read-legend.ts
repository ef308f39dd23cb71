import { parse } from 'yaml';

/**
 * What a piece's file says stands on each face: the face's legend, cut at its commas and strokes (the rim first, then the field).
 * A face without a legend, or a file without front matter, gives nothing.
 */
export function legendsOf(file: string): Readonly<Record<string, readonly string[]>> {
  const [, front = ''] = file.split(/^---$/m);
  const fields: unknown = parse(front, { uniqueKeys: false });
  const out: Record<string, string[]> = {};
  for (const face of ['obverse', 'reverse', 'edge']) {
    const legend = inside(inside(fields, face), 'legend');
    if (typeof legend === 'string') out[face] = legend.split(/\s*[,،|]\s*/);
  }
  return out;
}

/** The die axis in clock hours, which says how the flan lies behind its reverse; 12 when the file has none. */
export function axisOf(file: string): number {
  const hours = /^axis: (\d+)h/m.exec(file)?.[1];
  return hours === undefined ? 12 : Number(hours);
}

function inside(thing: unknown, name: string): unknown {
  return typeof thing === 'object' && thing !== null
    ? Object.entries(thing).find(([key]) => key === name)?.[1]
    : undefined;
}
