import type { Records } from '../catalogue/records.ts';

/** A file of a list that only pieces which are not published name: on the site it stands with nothing beside it. */
export function namedByHiddenOnly({ pieces, rulers, mints, denominations }: Records): readonly string[] {
  const named = (isHidden: boolean): ReadonlySet<string> =>
    new Set(
      pieces
        .filter(({ fields }) => (fields.publish === 'no') === isHidden)
        .flatMap(({ fields }) => [
          ...[fields.ruler, fields['struck-for']].flat().map((id) => `rulers/${String(id)}`),
          `mints/${String(fields.mint)}`,
          `denominations/${String(fields.denomination)}`,
        ]),
    );
  const [hidden, shown] = [named(true), named(false)];
  return [...rulers, ...mints, ...denominations]
    .map(({ file }) => file.replace(/\.yaml$/, ''))
    .filter((name) => hidden.has(name) && !shown.has(name));
}
