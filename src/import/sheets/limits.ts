/** How much is read of one file, so that a file of any making is read in bounded memory. */
export const LIMITS = {
  /** Bytes of the file as it lies on the disk. */
  fileBytes: 64 * 1024 * 1024,
  /** Bytes of a workbook once unpacked, all parts together. */
  unpackedBytes: 512 * 1024 * 1024,
  /** Rows of one sheet that hold something. */
  rows: 200_000,
  /** Cells of one sheet, empty ones between filled ones counted. */
  cells: 8_000_000,
  /** Letters of all cells of one file. */
  letters: 200_000_000,
  /** Elements of a workbook within one another. */
  depth: 200,
  /** How long an old workbook (.xls) is worked at, and how much memory that takes; it is read by a library. */
  oldWorkbookMilliseconds: 30_000,
  oldWorkbookMegabytes: 768,
} as const;

const SPLIT =
  'Save it as several files of fewer rows, each beginning with the row of headings, and bring them in one after another.';

export function tooManyBytes(name: string, bytes: number): string {
  const megabytes = (size: number): string => `${Math.ceil(size / 1024 / 1024)} MB`;
  return `${name} is ${megabytes(bytes)}, and ${megabytes(LIMITS.fileBytes)} is the most that is read at once. ${SPLIT}`;
}

export function tooManyRows(name: string): string {
  return `${name} has more than ${LIMITS.rows.toLocaleString('en-GB')} rows. ${SPLIT}`;
}

export function tooManyCells(name: string): string {
  return `${name} has more than ${LIMITS.cells.toLocaleString('en-GB')} cells in its rows and columns. ${SPLIT}`;
}

export function tooManyLetters(name: string): string {
  return `The cells of ${name} hold more than ${LIMITS.letters.toLocaleString('en-GB')} letters. ${SPLIT}`;
}
