/** `_x000D_` is how a workbook writes a letter that XML cannot hold, and `_x005F_` the low line that begins such a word (ECMA-376 part 1, 22.9.2.19). */
export function undoEscapes(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

/**
 * Collects the text of a string that may come in runs: what is in `t`, but not in `rPh`, which tells how it is
 * pronounced.
 */
export function textCollector() {
  let text = '';
  let isInText = false;
  let isInReading = false;
  return {
    begin(): void {
      text = '';
    },
    open(name: string): void {
      if (name === 't') isInText = true;
      else if (name === 'rPh') isInReading = true;
    },
    close(name: string): void {
      if (name === 't') isInText = false;
      else if (name === 'rPh') isInReading = false;
    },
    take: (more: string): void => {
      if (isInText && !isInReading) text += more;
    },
    text: (): string => undoEscapes(text),
  };
}

/** A text as a cell holds it: lines end in one sign, blanks at either end are gone. */
export function cellText(text: string): string {
  return text.replace(/\r\n?/g, '\n').trim();
}
