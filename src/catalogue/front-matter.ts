/** The two halves of a Markdown file: the facts between the lines `---`, and the text below. */
export type FrontMatter = {
  readonly facts: string;
  /** The line of the file on which the facts begin, counted from 1. */
  readonly factsFrom: number;
  readonly story: string;
};

/** Null when the file does not begin with a line `---` that a later line `---` closes. */
export function splitFrontMatter(text: string): FrontMatter | null {
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const match = /^---[ \t]*\n(?:([\s\S]*?)\n)??---[ \t]*(?:\n|$)([\s\S]*)$/.exec(clean);
  if (match === null) return null;
  return { facts: match[1] ?? '', factsFrom: 2, story: (match[2] ?? '').trim() };
}

/** The line on which facts that begin with `---` should end and do not: `--`, `----` or a dash; null when there is no beginning. */
export function brokenEnd(text: string): number | null {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n?|\n/);
  if (!/^---[ \t]*$/.test(lines[0] ?? '')) return null;
  const near = lines.findIndex((line, at) => at > 0 && /^\s*[-–—]+\s*$/.test(line));
  return near === -1 ? 1 : near + 1;
}
