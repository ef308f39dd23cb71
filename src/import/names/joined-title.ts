import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { Draft, NamedInSheet } from '../plan/draft.ts';
import { composeTitle } from '../plan/compose-title.ts';

/** A title composed anew with the names the lists use: *Edward I*, however the sheet spells him. Null when no part has anything. */
export function joinedTitle(
  pattern: string,
  { facts: read, names }: Draft,
  joined: Readonly<Record<string, Written>>,
  called: (kind: ListKind, id: string) => string | null,
): string | null {
  const named = (kind: ListKind, field: string, said: readonly NamedInSheet[]): readonly NamedInSheet[] => {
    const ids = [joined[field] ?? []]
      .flat()
      .filter((id) => typeof id === 'string')
      .filter((id) => id !== 'none' && id !== 'unknown');
    return ids.length === 0 ? said : ids.map((id) => ({ name: called(kind, id) ?? id }));
  };
  const [mint] = named('mints', 'mint', names.mint === undefined ? [] : [names.mint]);
  const [denomination] = named(
    'denominations',
    'denomination',
    names.denomination === undefined ? [] : [names.denomination],
  );
  return composeTitle(pattern, byPath(read), {
    ...(names.ruler === undefined ? {} : { ruler: named('rulers', 'ruler', names.ruler) }),
    ...(mint === undefined ? {} : { mint }),
    ...(denomination === undefined ? {} : { denomination }),
  });
}

/** Facts by their paths: `obverse.design`. */
function byPath(facts: Draft['facts']): ReadonlyMap<string, Written> {
  return new Map(
    Object.entries(facts).flatMap(([field, value]): readonly (readonly [string, Written])[] =>
      typeof value === 'string' || Array.isArray(value)
        ? [[field, value]]
        : Object.entries(value).map(([inner, held]) => [`${field}.${inner}`, held]),
    ),
  );
}
