import { formatColumn } from './column-letter.ts';
import type { Grid, Hanging } from './grid.ts';
import type { SheetColumn, SheetRemark } from './sheet.ts';

type HangingColumn = {
  readonly column: SheetColumn;
  /** By row. */
  readonly texts: ReadonlyMap<number, string>;
  readonly remark: SheetRemark;
};

/**
 * What hangs on cells, in columns of its own after the last: where a piece was bought often stands in a comment alone,
 * and a column can be mapped or left to the ledger like any other.
 */
export function hangingColumns(grid: Pick<Grid, 'comments' | 'links'>, last: number): readonly HangingColumn[] {
  const kinds = [
    { heading: 'Comments on cells', what: 'comment', hanging: grid.comments },
    { heading: 'Links of cells', what: 'link', hanging: grid.links },
  ];
  return kinds
    .filter(({ hanging }) => hanging.length > 0)
    .map(({ heading, what, hanging }, at) => {
      const letter = formatColumn(last + 1 + at);
      const rows = [...new Set(hanging.map(({ row }) => row))].sort((a, b) => a - b);
      const count = hanging.length === 1 ? `One cell carries a ${what}` : `${hanging.length} cells carry ${what}s`;
      return {
        column: { letter, heading, isHidden: false },
        texts: textsByRow(hanging),
        remark: { rows, says: `${count}. They are in a column of their own, ${letter}, called ${heading}.` },
      };
    });
}

function textsByRow(hanging: readonly Hanging[]): ReadonlyMap<number, string> {
  const texts = new Map<number, string>();
  for (const { row, column, text } of hanging) {
    const said = `${formatColumn(column)}: ${text}`;
    const before = texts.get(row);
    texts.set(row, before === undefined ? said : `${before}\n${said}`);
  }
  return texts;
}
