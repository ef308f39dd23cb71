import type { Certainty } from '../../catalogue/schema/fields.ts';

/** The words on a ticket, and how a blank is said. */
export const ticketWords = {
  name: 'Ticket',
  unknown: 'unknown',
  unsure: (text: string, how: Certainty | undefined) =>
    how === undefined || how === 'certain' ? text : `${text} (${how})`,
  axis: (hours: number) => `${hours}h`,
} as const;
