import process from 'node:process';

/**
 * How often a property is tried: a tenth of the full number, which finds a fault of a change nearly as surely on a busy machine,
 * and the full number with `TRIES=full`. Never fewer than `least`, or than all.
 */
export function tries(full: number, least = 100): number {
  return process.env['TRIES'] === 'full' ? full : Math.min(full, Math.max(least, Math.round(full / 10)));
}
