/** The figures behind a chart; the first cell of a row names it. */
export type ChartTable = { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] };
