import type { CabinetFolder } from '../catalogue/files.ts';
import { lettersOf } from './letters.ts';
import { COMMON } from './private-cells.ts';
import type { PublicRecords } from './public-words.ts';
import { publicWords } from './public-words.ts';

/** A word of a ledger that stands in more public files than this is common in this cabinet, and tells nothing. */
const RARE = 3;
/** Words that begin with a capital in some language and name nobody. */
const NAMELESS = new Set(
  (
    'january february march april june july august september october november december ' +
    'monday tuesday wednesday thursday friday saturday sunday christmas easter england english britain british scotland ireland ' +
    'wales europe european german germany france french italy italian spain spanish roman greek latin north south east west'
  ).split(' '),
);
/** Columns whose every word with a capital may be a name; elsewhere the first word of a sentence is left. */
const NAMING = ['seller', 'find-spot', 'storage'];

/** The words of a cell that may be the name of a person or a place: five letters or more, with a capital. */
export function namesInCell(column: string, cell: string): readonly string[] {
  const words = [...cell.matchAll(/(?<![\p{L}\p{N}-])\p{Lu}[\p{L}’'-]{4,}(?!\p{N})/gu)].filter(
    ({ index }) => NAMING.includes(column) || !/(?:^|[.!?:;“"(])\s*$/.test(cell.slice(0, index)),
  );
  return words.map(([word]) => word).filter((word) => !isNameless(word.toLowerCase()));
}

function isNameless(word: string): boolean {
  return NAMELESS.has(word) || COMMON.has(word) || COMMON.has(word.replace(/s$/, ''));
}

/**
 * Which of these words are rare in a cabinet: they stand in no title, legend, name of a list, fact of the trade or line of cabinet.yaml, and in
 * at most three of its public files. A name that leaks does so in one text or two; a word of the cabinet's subject is all over it.
 */
export function rareOf(
  words: ReadonlySet<string>,
  folder: CabinetFolder,
  records: PublicRecords,
): (word: string) => boolean {
  if (words.size === 0) return () => false;
  const cabinet = folder.files.find(({ file }) => file === 'cabinet.yaml')?.text ?? '';
  const said = new Set(wordsIn(`${publicWords(records)}\n${cabinet}`));
  const hidden = records.pieces.filter(({ fields }) => fields.publish === 'no').map(({ id }) => `pieces/${id}/`);
  const counts = new Map<string, number>();
  for (const { file, text } of folder.files) {
    if (text === null || file.startsWith('private/') || hidden.some((start) => file.startsWith(start))) continue;
    for (const word of new Set(wordsIn(text))) if (words.has(word)) counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return (word) => !said.has(word) && (counts.get(word) ?? 0) <= RARE;
}

function wordsIn(text: string): readonly string[] {
  return lettersOf(text).match(/[\p{L}']+/gu) ?? [];
}
