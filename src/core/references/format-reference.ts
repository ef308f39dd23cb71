import type { Reference } from './reference.ts';

/** Writes a reference, under the title given or the key of its work: `cf. North 176`, `North 1018 var.`, `North 223–225`. */
export function formatReference(reference: Omit<Reference, 'text'>, title: string = reference.work): string {
  const { number, relation, to } = reference;
  const cited = [title, to === undefined ? number : `${number}–${to}`].filter((part) => part !== '').join(' ');
  if (relation === 'cf.') return `cf. ${cited}`;
  return relation === 'is' ? cited : `${cited} ${relation}`;
}
