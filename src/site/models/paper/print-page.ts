import type { Exhibit } from '../../../catalogue/catalogue.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { paperWords } from '../../words/paper.ts';
import type { CellGrid } from './cells.ts';
import { cellsOf } from './cells.ts';
import type { Mark } from './marks.ts';
import type { Paper, PaperSheet, PlacedCell } from './paper.ts';
import { A4, LETTER, across, furniture } from './paper.ts';
import type { Choice, PaperPart } from './paper-parts.ts';
import { paperParts } from './paper-parts.ts';
import { policyFor, PRINT_NAMES, printStyle, standing } from './print-style.ts';

/** The ways the forms of one exhibit are printed. */
export const FORMS = [
  { at: '', paper: A4, anonymous: false },
  { at: 'anonymous', paper: A4, anonymous: true },
  { at: 'letter', paper: LETTER, anonymous: false },
  { at: 'letter/anonymous', paper: LETTER, anonymous: true },
] as const;
export type Form = (typeof FORMS)[number];

export function formAt(at: string): Form {
  const found = FORMS.find((form) => form.at === at);
  if (found === undefined) throw new Error(`Nothing is printed as ${at}.`);
  return found;
}

/** A page without a script and without the frame of the site: what its head says. */
export type BarePage = {
  readonly language: string;
  readonly title: string;
  readonly description: string;
  /** The one inline style and the policy that lets it in. */
  readonly style: string;
  readonly policy: string;
};

export type SheetView = {
  readonly name: string;
  readonly marks: readonly Mark[];
  readonly isAcross: boolean;
  readonly spare: string | null;
  readonly cells: readonly (PlacedCell & { readonly place: string; readonly standing: string })[];
};
export type ChoiceView = {
  readonly id: string;
  readonly className: string;
  readonly gridClass: string;
  readonly name: string;
  readonly sheets: readonly SheetView[];
  /** The cells the first cut-out may lie in; empty where it cannot be chosen. */
  readonly begin: { readonly id: string; readonly cells: readonly string[] } | null;
  readonly reports: readonly string[];
};
export type PartView = {
  readonly id: string;
  readonly printId: string;
  readonly className: string;
  readonly says: string;
  /** Ticked until it is unticked. */
  readonly isUsual: boolean;
  /** The name of the field that chooses, where there is a choice. */
  readonly chooseId: string | null;
  readonly choices: readonly ChoiceView[];
};

/** A page that is nothing but paper, with a few words and a form above it that are not printed. */
export type PrintPage = {
  readonly bare: BarePage;
  readonly heading: string;
  readonly lead: string;
  readonly how: readonly string[];
  readonly back: { readonly href: string; readonly name: string };
  readonly others: readonly { readonly href: string; readonly name: string }[];
  readonly paper: Paper;
  readonly stocks: readonly { readonly name: string; readonly parts: readonly PartView[] }[];
  readonly withheld: readonly string[];
};

export function printPage(cabinet: Cabinet, exhibit: Exhibit, form: Form): PrintPage {
  const { paper, anonymous } = form;
  const { title, parts, withheld } = paperParts(cabinet, exhibit, paper, anonymous);
  const style = printStyle(paper, parts);
  const heading = paperWords.heading(title);
  const views = parts.map((part) => ({ stock: part.stock, view: partView(part, title, paper) }));
  return {
    bare: {
      language: 'en',
      title: heading,
      description: paperWords.description,
      style,
      policy: policyFor(style),
    },
    heading,
    lead: paperWords.lead,
    how: paperWords.how(paper.name),
    back: { href: urls.exhibit(exhibit.id), name: paperWords.back },
    others: FORMS.filter((other) => other !== form).map((other) => ({
      href: urls.exhibitPrint(exhibit.id, other.at),
      name: paperWords.form(other.paper.name, other.anonymous),
    })),
    paper,
    stocks: (['plain', 'card'] as const).map((stock) => ({
      name: paperWords.stock[stock],
      parts: views.filter((one) => one.stock === stock).map(({ view }) => view),
    })),
    withheld,
  };
}

function partView({ id, name, choices, onlyIfAsked }: PaperPart, title: string, paper: Paper): PartView {
  const [first] = choices;
  const count = first?.sheets.filter(({ isSpare }) => isSpare !== true).length ?? 0;
  return {
    id,
    printId: PRINT_NAMES.print(id),
    className: PRINT_NAMES.part(id),
    says: choices.length === 1 ? paperWords.part(name, count) : name,
    isUsual: onlyIfAsked !== true,
    chooseId: choices.length === 1 ? null : PRINT_NAMES.choose(id),
    choices: choices.map((choice) => choiceView(choice, title, paper)),
  };
}

function choiceView({ id, name, sheets, grid, reports }: Choice, title: string, paper: Paper): ChoiceView {
  const count = sheets.filter(({ isSpare }) => isSpare !== true).length;
  return {
    id,
    className: PRINT_NAMES.choice(id),
    gridClass: PRINT_NAMES.grid(id),
    name: paperWords.part(name, count),
    begin: grid === null ? null : { id: PRINT_NAMES.begin(id), cells: cellNames(grid) },
    reports,
    sheets: sheets.map((sheet, index): SheetView => ({
      name: sheet.name,
      isAcross: sheet.isAcross ?? false,
      spare: sheet.isSpare === true ? PRINT_NAMES.spare(id) : null,
      marks: [
        ...furniture(
          sheet.isAcross === true ? across(paper) : paper,
          paperWords.onSheet(title, sheet.name),
          sheet.isSpare === true ? paperWords.furtherSheet : paperWords.sheet(numbered(sheets, index), count),
        ),
        ...sheet.marks,
      ],
      cells: (sheet.cells ?? []).map((cell) => ({
        ...cell,
        place: PRINT_NAMES.at(cell.at),
        standing: grid === null || cell.at < 0 ? '' : standing(cell.at, grid),
      })),
    })),
  };
}

/** The count of a sheet among those that are printed whatever is chosen. */
function numbered(sheets: readonly PaperSheet[], index: number): number {
  return sheets.slice(0, index + 1).filter(({ isSpare }) => isSpare !== true).length;
}

function cellNames(grid: CellGrid): readonly string[] {
  return Array.from({ length: cellsOf(grid) }, (_, at) =>
    paperWords.cell(at + 1, Math.floor(at / grid.columns) + 1, (at % grid.columns) + 1),
  );
}
