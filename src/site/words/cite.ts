import type { Cited } from '../../publish/cite.ts';

const MONTHS = [
  'January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December',
] as const; // prettier-ignore

/** A day as a reader writes it: `29 November 2026`. */
function dayInWords(day: string): string {
  const [year = '', month = '', date = ''] = day.split('-');
  return `${Number(date)} ${MONTHS[Number(month) - 1] ?? ''} ${year}`;
}

/** Phrases under “Cite this page”. */
export const citeWords = {
  plain: ({ keeper, title, number, collection, changed, address }: Cited): string => {
    const parts = [
      ...(keeper === null || keeper === '' ? [] : [keeper]),
      `“${title}”`,
      ...(number === null ? [] : [`no. ${number}`]),
      `in ${collection}`,
      ...(changed === null ? [] : [`last changed ${dayInWords(changed)}`]),
    ];
    return address === null ? `${parts.join(', ')}.` : `${parts.join(', ')}, ${address}`;
  },
  formats: 'For reference managers',
  bibTeX: 'BibTeX',
  cslJson: 'CSL-JSON',
} as const;
