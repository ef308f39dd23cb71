import { readReferences } from '../../../src/import/cells/reference-cell.ts';
import type { Draft } from '../../../src/import/plan/draft.ts';
import type { BroughtIn } from '../../../src/import/reimport/last-import.ts';
import { NOTHING_SAID } from '../../../src/import/names/names-file.ts';
import type { ImportPlan, SheetToBring } from '../../../src/import/plan/plan-import.ts';
import { planImport } from '../../../src/import/plan/plan-import.ts';
import type { CabinetFolder } from '../../../src/catalogue/files.ts';
import { changed, TODAY } from '../../catalogue/small-cabinet.ts';

/** A cabinet with nothing in it but its own file. */
export const EMPTY: CabinetFolder = {
  at: '/cabinet',
  files: [{ file: 'cabinet.yaml', text: 'title: A cabinet\nkeeper: A keeper\n' }],
};

/** A row as the reader of sheets hands it over: a coin with a number, and what is said besides. */
export function draft(
  row: number,
  facts: Draft['facts'] = {},
  rest: Partial<Omit<Draft, 'row' | 'facts'>> = {},
): Draft {
  const number = `A.${row}`;
  return {
    row,
    facts: { number, title: `Coin ${number}`, kind: 'coin', ...facts },
    names: {},
    story: '',
    ledger: {},
    unread: [],
    ...rest,
  };
}

export type Brought = {
  readonly plan: ImportPlan;
  readonly folder: CabinetFolder;
  readonly before: readonly BroughtIn[];
};

/** A sheet brought in: what was planned, the cabinet as it is then, and what the next time is compared with. */
export function bring(
  drafts: readonly Draft[],
  folder: CabinetFolder = EMPTY,
  wishes: Partial<Omit<SheetToBring, 'drafts'>> = {},
): Brought {
  const plan = planImport(
    { drafts, setAside: [], said: NOTHING_SAID, before: [], prefer: null, always: {}, cells: new Map(), headings: new Map(), day: TODAY, ...wishes },
    folder,
  ); // prettier-ignore
  const files = [...plan.lists, ...plan.pieces].map(({ file, text }) => [file, text] as const);
  const ledger = plan.ledger === null ? [] : [['private/ledger.csv', plan.ledger] as const];
  return {
    plan,
    folder: changed(folder, Object.fromEntries([...files, ...ledger])),
    before: plan.pieces.map(({ base }) => ({ ...base, cells: wishes.cells?.get(base.row) ?? [] })),
  };
}

/** The text of a file of a cabinet. */
export function textOf({ files }: CabinetFolder, name: string): string {
  return files.find(({ file }) => file === name)?.text ?? '';
}

/** References as a cell of a sheet has them. */
export function cited(text: string): NonNullable<Draft['names']['references']> {
  return readReferences(text).flatMap((said) =>
    said.kind === 'reference' ? [{ name: said.name, cited: said.cited }] : [],
  );
}
