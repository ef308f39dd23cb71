import type { Certainty } from '../../catalogue/schema/fields.ts';

/** The words on a ticket, and how a blank is said. */
export const ticketWords = {
  name: 'Ticket',
  unknown: 'unknown',
  unsure: (text: string, how: Certainty | undefined) =>
    how === undefined || how === 'certain' ? text : `${text} (${how})`,
  /** A date, which may be read in the middle of a line: `probably 1280–88`. */
  dated: (text: string, how: Certainty | undefined) =>
    how === 'possible' ? `possibly ${text}` : how === 'probable' ? `probably ${text}` : text,
  /** As a ticket has room for it: `York?` is possible, `prob. York` probable. */
  short: (text: string, how: Certainty | undefined) =>
    how === 'possible' ? `${text}?` : how === 'probable' ? `prob. ${text}` : text,
  struckFor: (names: string) => `for ${names}`,
  altered: 'altered',
  madeFrom: (host: string) => `made from: ${host}`,
  axis: (hours: number) => `${hours}h`,
} as const;
