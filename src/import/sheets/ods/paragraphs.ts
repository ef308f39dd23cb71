export type Paragraphs = ReturnType<typeof paragraphCollector>;

/**
 * Collects what a reader sees of a cell: its paragraphs, with the blanks, tabs and breaks that OpenDocument writes as
 * elements (1.3 part 3, 6.1). What is drawn on the cell and how a word is pronounced are not its text; a comment is kept
 * apart.
 */
export function paragraphCollector() {
  let shown: string | null = null;
  let comment: string | null = null;
  let links: string[] = [];
  let depth = 0;
  let skipped = 0;
  let isInComment = false;

  const add = (text: string): void => {
    if (depth === 0 || skipped > 0) return;
    if (isInComment) comment = (comment ?? '') + text;
    else shown = (shown ?? '') + text;
  };
  const isSkipped = (name: string): boolean =>
    name.startsWith('draw:') ||
    name === 'text:ruby-text' ||
    name === 'dc:creator' ||
    name === 'dc:date' ||
    name === 'text:note-citation';

  return {
    begin(): void {
      shown = null;
      comment = null;
      links = [];
      depth = 0;
      skipped = 0;
      isInComment = false;
    },
    open(name: string, attributes: Readonly<Record<string, string | undefined>>): void {
      if (name === 'office:annotation') isInComment = true;
      else if (isSkipped(name)) skipped += 1;
      else if (name === 'text:p' || name === 'text:h') {
        depth += 1;
        if (skipped > 0) return;
        if (isInComment) comment = comment === null ? '' : `${comment}\n`;
        else shown = shown === null ? '' : `${shown}\n`;
      } else if (name === 'text:s') add(' '.repeat(Math.min(Number(attributes['text:c'] ?? '1') || 1, 1000)));
      else if (name === 'text:tab') add('\t');
      else if (name === 'text:line-break') add('\n');
      else if (name === 'text:a' && !isInComment) links.push(attributes['xlink:href'] ?? '');
    },
    close(name: string): void {
      if (name === 'office:annotation') isInComment = false;
      else if (isSkipped(name)) skipped -= 1;
      else if (name === 'text:p' || name === 'text:h') depth -= 1;
    },
    // Runs of blanks and line ends of the XML are one blank to a reader (1.3 part 3, 6.1.2).
    take: (text: string): void => add(text.replace(/[ \t\r\n]+/g, ' ')),
    shown: (): string | null => shown,
    comment: (): string => (comment ?? '').trim(),
    links: (): readonly string[] => links,
  };
}
