import { yearsOf } from '../../core/dating/interval.ts';
import { standardOf } from '../../core/metal/standards.ts';
import type { Standard } from '../../core/metal/standards.ts';
import type { DenominationFields } from '../schema/lists.ts';

/** The standards of a denomination with their years and realms, oldest first. */
export function standardsOf({ standards, realms }: DenominationFields): readonly Standard[] {
  return standards.map((stated) =>
    standardOf(stated, { low: yearsOf(stated.from).low, high: yearsOf(stated.to).high }, realms),
  );
}
