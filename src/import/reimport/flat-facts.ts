import type { Written } from '../../catalogue/yaml.ts';

/** Facts by their paths, `obverse.legend` and the like; lists stay whole. */
export type FlatFacts = ReadonlyMap<string, Written>;

/** Fields that hold fields, each of which is compared by itself. */
const WITH_FIELDS = new Set(['obverse', 'reverse', 'edge', 'found', 'dies', 'sure', 'as-written']);
/** Fields in which one value and a list of one say the same. */
const ONE_OR_MORE = new Set(['ruler', 'struck-for', 'formerly']);

/** Facts as they are in a file, by path. */
export function flatFacts(facts: Readonly<Record<string, Written>>): FlatFacts {
  const flat = new Map<string, Written>();
  for (const [field, value] of Object.entries(facts)) {
    if (WITH_FIELDS.has(field) && isFields(value))
      for (const [inner, held] of Object.entries(value)) flat.set(`${field}.${inner}`, held);
    else flat.set(field, ONE_OR_MORE.has(field) ? single(value) : value);
  }
  return flat;
}

/** The steps of a path as a file has them: the name of a field under `as-written` may itself hold a point. */
export function stepsOf(path: string): readonly string[] {
  const at = path.indexOf('.');
  return at === -1 ? [path] : [path.slice(0, at), path.slice(at + 1)];
}

/** Facts by path as a file has them; the other way round from `flatFacts`. */
export function nestedFacts(flat: FlatFacts): Readonly<Record<string, Written>> {
  const facts: Record<string, Written> = {};
  for (const [path, value] of flat) {
    const [field = path, inner] = stepsOf(path);
    const held = facts[field];
    facts[field] =
      inner === undefined ? value : { ...(held !== undefined && isFields(held) ? held : {}), [inner]: value };
  }
  return facts;
}

function isFields(value: Written): value is Readonly<Record<string, Written>> {
  return typeof value === 'object' && !Array.isArray(value);
}

function single(value: Written): Written {
  if (!Array.isArray(value)) return value;
  const [only] = value as readonly Written[];
  return value.length === 1 && only !== undefined ? only : value;
}
