import type { LastingAddresses } from './addresses.ts';
import type { Records } from './records.ts';

/** What a command gives to the pages, which are made in the same process. */
export type HandedOver = {
  /** The cabinet, read and checked. */
  readonly records: Records;
  /** The folder in which the photograph step keeps what it made. */
  readonly photographs: string;
  /** Whether the cabinet or the keeper said where the site will stand. */
  readonly hasAddress: boolean;
  /** What answers at addresses that are no page now, and when each record was last changed. */
  readonly addresses: LastingAddresses;
};

// Pages are bundled, so a module of theirs is another copy of the command's; a name of the process is the same for both.
const NAME = Symbol.for('underglass.handed-over');
const shared = globalThis as typeof globalThis & { [NAME]?: HandedOver };

/** Gives the pages what they are made of; what is given later takes its place. */
export function handOver(handed: HandedOver): void {
  shared[NAME] = handed;
}

/** Takes back what was given: all that was worked out of it is free to go. */
export function takeBack(): void {
  Reflect.deleteProperty(shared, NAME);
}

/** What the command gave. Throws a sentence when no command did. */
export function handedOver(): HandedOver {
  const handed = shared[NAME];
  if (handed === undefined)
    throw new Error('No cabinet was given to the pages. Begin with npm run dev or npm run build.');
  return handed;
}

/** Whether addresses in full mean anything; they do where nobody said otherwise. */
export function hasPublicAddress(): boolean {
  return shared[NAME]?.hasAddress ?? true;
}
