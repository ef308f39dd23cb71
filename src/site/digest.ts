import { hash } from 'node:crypto';

/** A digest of plain data. What JSON would lose is written as text, or is a fault of the program and ends the build. */
export function digestOf(shown: unknown): string {
  return hash('sha256', JSON.stringify(shown, strictly), 'base64url');
}

/** Digests of what is part of many pages, worked out once. */
const digests = new WeakMap<object, string>();

/** The thing itself, whose digest stands for it wherever it is part of something: for what is shown on many pages. */
export function digestedOnce<Thing extends object>(thing: Thing): Thing {
  if (!digests.has(thing)) digests.set(thing, digestOf(thing));
  return thing;
}

function strictly(name: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) return { number: String(value) };
  if (typeof value === 'function' || typeof value === 'symbol' || value instanceof Map || value instanceof Set)
    throw new Error(`What a page shows is plain data; its "${name}" is not.`);
  const digest = typeof value === 'object' && value !== null ? digests.get(value) : undefined;
  return digest === undefined ? value : { digest };
}
