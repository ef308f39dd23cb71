import type { Field } from './targets.ts';
import type { Mapping, Reading, Settings } from './mapping.ts';

/** What an answer changes in a mapping. */
export type Change = {
  readonly columns?: readonly { readonly heading: string; readonly readings: readonly Reading[] }[];
  readonly settings?: Settings;
  readonly always?: Readonly<Partial<Record<Field, string>>>;
  readonly sections?: Field;
  readonly asAbove?: Mapping['asAbove'];
  readonly dittos?: Mapping['dittos'];
  /** What words of the sheet stand for, by field. */
  readonly words?: Mapping['words'];
};

export type Choice = { readonly answer: string; readonly change: Change };

/** Something a sheet does not tell and nobody may guess. The suggested mapping already holds what happens if it is not answered. */
export type Question = {
  /** Stands for the question from one run to the next: `column Date`, `decimal`. */
  readonly id: string;
  readonly asks: string;
  readonly choices: readonly Choice[];
  /** A cell to judge by. */
  readonly example: string;
  /** What is done if nobody answers, in a sentence. */
  readonly otherwise: string;
};

/** The mapping as the answer changes it. */
export function answer(mapping: Mapping, { change }: Choice): Mapping {
  const changed = new Map(change.columns?.map(({ heading, readings }) => [heading, readings]));
  const kept = mapping.columns.map((column) => ({
    ...column,
    readings: changed.get(column.heading) ?? column.readings,
  }));
  const added = (change.columns ?? []).filter(
    ({ heading }) => !mapping.columns.some((column) => column.heading === heading),
  );
  return {
    ...mapping,
    columns: [...kept, ...added],
    settings: { ...mapping.settings, ...change.settings },
    always: { ...mapping.always, ...change.always },
    sections: change.sections ?? mapping.sections,
    asAbove: [...new Set([...mapping.asAbove, ...(change.asAbove ?? [])])],
    dittos: [...new Set([...mapping.dittos, ...(change.dittos ?? [])])],
    words: { ...mapping.words, ...change.words },
  };
}
