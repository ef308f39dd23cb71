import { createHash } from 'node:crypto';
import type { CellGrid } from './cells.ts';
import { cellsOf, placeOf, spareFrom } from './cells.ts';
import type { Paper } from './paper.ts';
import { MARGIN } from './paper.ts';
import type { PaperPart } from './paper-parts.ts';

/** The names by which the page, its form and this style know one another. */
export const PRINT_NAMES = {
  part: (id: string): string => `part-${id}`,
  print: (id: string): string => `print-${id}`,
  choice: (id: string): string => `choice-${id}`,
  choose: (id: string): string => `choose-${id}`,
  begin: (id: string): string => `begin-${id}`,
  grid: (id: string): string => `grid-${id}`,
  spare: (id: string): string => `spare-${id}`,
  /** Of a cell, from -1 backwards for those of the sheet before. */
  at: (at: number): string => (at < 0 ? `to-${-at}` : `at-${at}`),
} as const;

/**
 * The one inline style of a printed page: its paper, and what its form chooses, without a script: which parts, which tickets,
 * and the cell that the first cut-out lies in. A cell's place is counted from its count and the first cell; one that falls off
 * its sheet is drawn at no size at all, which is not at all.
 */
export function printStyle(paper: Paper, parts: readonly PaperPart[]): string {
  const grids = parts.flatMap(({ choices }) => choices).filter(({ grid }) => grid !== null);
  const most = Math.max(0, ...grids.map(({ grid }) => (grid === null ? 0 : cellsOf(grid))));
  return [
    `@layer tokens,base,components,page;@page{size:${paper.width}mm ${paper.height}mm;margin:0}`,
    `:root{--paper-width:${paper.width}mm;--paper-height:${paper.height}mm;--paper-shape:${paper.width}/${paper.height};--paper-across:${paper.height}/${paper.width}}`,
    '@layer page{',
    '.is-spare,.cells use{display:none}',
    ...parts.map(
      ({ id }) => `:root:has(#${PRINT_NAMES.print(id)}:not(:checked)) .${PRINT_NAMES.part(id)}{display:none}`,
    ),
    ...parts.filter(({ choices }) => choices.length > 1).flatMap(choiceRules),
    '@supports (width:round(down,1px,1px)) and selector(:has(a)){',
    '.cells use{display:inline}',
    `.cell{--slot:calc(var(--at) + var(--begin));--row:round(down,var(--slot) / var(--columns),1);--column:mod(var(--slot),var(--columns));transform:translate(calc(${MARGIN.side}px + var(--column) * var(--right)),calc(${MARGIN.top}px + var(--row) * var(--down))) scale(clamp(0,min(var(--row) + 1,var(--rows) - var(--row)),1))}`,
    ...Array.from({ length: most }, (_, at) => `.at-${at}{--at:${at}}${at === 0 ? '' : `.to-${at}{--at:${-at}}`}`),
    ...grids.flatMap(({ id, grid, count }) => (grid === null ? [] : gridRules(id, grid, count))),
    '}}',
  ].join('');
}

function choiceRules({ id, choices }: PaperPart): readonly string[] {
  const chosen = (choice: string): string =>
    `:root:has(#${PRINT_NAMES.choose(id)} option[value="${choice}"]:checked) .${PRINT_NAMES.choice(choice)}`;
  const all = choices.map(({ id: choice }) => `.${PRINT_NAMES.choice(choice)}`);
  const [first, ...others] = choices;
  return [
    `${all.slice(1).join(',')}{display:none}`,
    ...(first === undefined
      ? []
      : [
          `:root:has(#${PRINT_NAMES.choose(id)} option:not(:first-child):checked) .${PRINT_NAMES.choice(first.id)}{display:none}`,
        ]),
    ...others.map(({ id: choice }) => `${chosen(choice)}{display:block}`),
  ];
}

function gridRules(id: string, grid: CellGrid, count: number): readonly string[] {
  const { columns, rows, right, down } = grid;
  const begins = (which: string): string => `:root:has(#${PRINT_NAMES.begin(id)} option:nth-child(${which}):checked)`;
  const spare = spareFrom(count, grid);
  return [
    `.${PRINT_NAMES.grid(id)}{--columns:${columns};--rows:${rows};--right:${right}px;--down:${down}px;--begin:0}`,
    ...Array.from({ length: cellsOf(grid) - 1 }, (_, at) =>
      `${begins(String(at + 2))} .${PRINT_NAMES.grid(id)}{--begin:${at + 1}}`),
    ...(spare === null
      ? []
      : [`${begins(`n + ${spare}`)} .${PRINT_NAMES.spare(id)}{display:block}`]),
  ]; // prettier-ignore
}

/** Where a cell stands while nothing is chosen, as an SVG transform; for a browser that cannot calculate. */
export function standing(at: number, grid: CellGrid): string {
  const { x, y } = placeOf(at, grid);
  return `translate(${x} ${y})`;
}

/** Nothing from elsewhere, nothing inline but this style, and no script at all. */
export function policyFor(style: string): string {
  const digest = createHash('sha256').update(style).digest('base64');
  const styles = import.meta.env.DEV ? "'unsafe-inline'" : `'sha256-${digest}'`;
  return `default-src 'none'; img-src 'self'; font-src 'self'; style-src 'self' ${styles}; base-uri 'none'; form-action 'none'`;
}
