import type { DateContext } from '../../core/dating/dating.ts';
import type { Reference } from '../../core/references/reference.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { NamedInSheet } from '../plan/draft.ts';
import type { Settings } from '../columns/mapping.ts';
import type { SheetValue } from '../sheets/sheet.ts';

/** What a cell says of a piece. One cell may say several things: a grade, its scale and a fault. */
export type Said =
  /** A single fact; `obverse.legend` stands inside `obverse`. */
  | { readonly kind: 'fact'; readonly field: string; readonly value: Written }
  /** Something more in a list. */
  | { readonly kind: 'more'; readonly field: string; readonly values: readonly Written[] }
  | {
      readonly kind: 'name';
      readonly field: 'ruler' | 'mint' | 'denomination';
      readonly names: readonly NamedInSheet[];
    }
  /** The country or realm of the ruler. */
  | { readonly kind: 'realm'; readonly text: string }
  /** The country or region of the mint. */
  | { readonly kind: 'mint area'; readonly text: string }
  /** A reference as the core reads it, with the book as the sheet names it. */
  | { readonly kind: 'reference'; readonly name: string; readonly cited: Reference }
  /** One side of a fact that two columns make together. */
  | { readonly kind: 'half'; readonly of: Half; readonly text: string }
  | { readonly kind: 'ledger'; readonly column: string; readonly text: string }
  | { readonly kind: 'story'; readonly text: string }
  | { readonly kind: 'id'; readonly text: string }
  /** The keeper's word for nothing. */
  | { readonly kind: 'blank' }
  /** `text` is the part of the cell that is meant, where it is not the whole. */
  | { readonly kind: 'unread'; readonly field: string; readonly because: string; readonly text?: string };

export type Half = 'date from' | 'date to' | 'height' | 'width' | 'reference work' | 'reference number';

/** A cell on its way: its text, what the sheet knows of it, and what the keeper settled. */
export type Cell = {
  readonly text: string;
  readonly value?: SheetValue | undefined;
  readonly settings: Settings;
  /** What is known of the ruler its row names: realm and accessions settle some dates. */
  readonly ruled?: Pick<DateContext, 'realm' | 'accessions' | 'reigns'> | undefined;
  /** Names that the column's other cells are sure of, where it is read by patterns. */
  readonly known?: ReadonlyMap<string, ReadonlySet<string>> | undefined;
  /** The unit its heading names. */
  readonly unit?: string | undefined;
};

export function fact(field: string, value: Written): readonly Said[] {
  return [{ kind: 'fact', field, value }];
}

export function unread(field: string, because: string): readonly Said[] {
  return [{ kind: 'unread', field, because }];
}
