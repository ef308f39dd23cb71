import { good, refuse, type Outcome } from '../../core/outcome.ts';
import { LIMITS, tooManyBytes } from './limits.ts';
import type { SheetFile } from './sheet.ts';
import { readText } from './text/read-text.ts';

/** What a keeper may settle where a file leaves a doubt. */
export type SheetChoices = {
  /** As the Encoding Standard labels it: `windows-1250`. Of text files. */
  readonly encoding?: string;
  /** The character itself, or `comma`, `semicolon`, `tab`, `pipe`. Of text files. */
  readonly separator?: string;
  /** The name of the one sheet to read. Of workbooks. */
  readonly sheet?: string;
  /** The row the headings stand in, the first being 1; 0 where there are none. */
  readonly headingRow?: number;
};

/** Reads a sheet file of any kind: what is in it, how it was read, and nothing executed. */
export async function readSheets(
  bytes: Uint8Array,
  name: string,
  choices: SheetChoices = {},
): Promise<Outcome<SheetFile>> {
  if (bytes.length > LIMITS.fileBytes) return refuse(tooManyBytes(name, bytes.length));
  const text = new TextDecoder('utf-8').decode(bytes);
  const read = readText(text, name, choices);
  if (!read.ok) return read;
  const reading = { kind: 'text' as const, encoding: 'utf-8', separator: read.value.separator, doubts: [] };
  return good({ reading, sheets: [read.value.sheet] });
}
