import { createHash } from 'node:crypto';
import type { Exhibit } from '../../../catalogue/catalogue.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { paperWords } from '../../words/paper.ts';
import { A4, LETTER } from './paper.ts';
import type { Paper, PaperSheet } from './paper.ts';
import { nameless, printForms } from './print-forms.ts';

/** The ways the forms of one exhibit are printed. */
export const FORMS = [
  { at: '', paper: A4, anonymous: false },
  { at: 'anonymous', paper: A4, anonymous: true },
  { at: 'letter', paper: LETTER, anonymous: false },
  { at: 'letter/anonymous', paper: LETTER, anonymous: true },
] as const;
export type Form = (typeof FORMS)[number];

/** A page that is nothing but paper, with a few words above it that are not printed. */
export type PrintPage = {
  readonly language: string;
  readonly title: string;
  readonly heading: string;
  readonly how: string;
  readonly count: string;
  readonly back: { readonly href: string; readonly name: string };
  readonly others: readonly { readonly href: string; readonly name: string }[];
  readonly paper: Paper;
  readonly sheets: readonly PaperSheet[];
  /** The one inline style and the policy that lets it in. */
  readonly style: string;
  readonly policy: string;
};

export function printPage(cabinet: Cabinet, exhibit: Exhibit, form: Form): PrintPage {
  const { paper, anonymous } = form;
  const sheets = printForms(cabinet, exhibit, paper, anonymous);
  const style = `@layer tokens,base,components,page;@page{size:${paper.width}mm ${paper.height}mm;margin:0}:root{--paper-width:${paper.width}mm;--paper-height:${paper.height}mm}`;
  const { language, keeper } = cabinet.lists.cabinet;
  const title = anonymous ? nameless(exhibit.fields.title, keeper) : exhibit.fields.title;
  return {
    language,
    title: paperWords.heading(title),
    heading: paperWords.heading(title),
    how: paperWords.how,
    count: paperWords.sheets(sheets.length, paper.name),
    back: { href: urls.exhibit(exhibit.id), name: paperWords.back },
    others: FORMS.filter((other) => other !== form).map((other) => ({
      href: urls.exhibitPrint(exhibit.id, other.at),
      name: paperWords.form(other.paper.name, other.anonymous),
    })),
    paper,
    sheets,
    style,
    policy: policyFor(style),
  };
}

function policyFor(style: string): string {
  const digest = createHash('sha256').update(style).digest('base64');
  const styles = import.meta.env.DEV ? "'unsafe-inline'" : `'sha256-${digest}'`;
  return `default-src 'none'; img-src 'self'; font-src 'self'; style-src 'self' ${styles}; base-uri 'none'; form-action 'none'`;
}
