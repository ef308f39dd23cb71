import type { Cell } from './cell-result.ts';

type Mark = 'point' | 'comma' | undefined;

const FIGURE = /\d[\d.,'’\u00a0\u202f]*\d|\d/g;

/**
 * A measure with a point for its decimal mark. Three digits after one sign may be thousands: what the keeper did not
 * settle is left as it is, for the reader to refuse. A measure of a piece has no thousands, so none are taken away.
 */
export function withPoint(text: string, mark: Mark): string {
  return text.replace(FIGURE, (figure) => {
    const [, whole, sign, rest] = /^(\d+)([.,])(\d+)$/.exec(figure) ?? [];
    if (whole === undefined || sign !== ',' || rest === undefined) return figure;
    return rest.length !== 3 || whole === '0' || mark === 'comma' ? `${whole}.${rest}` : figure;
  });
}

/** Why a measure can be read two ways by the mark the keeper settled; null when it cannot. */
export function readTwoWays(text: string, mark: Mark): string | null {
  const odd = [...text.matchAll(FIGURE)].map(([figure]) => figure).find((figure) => /^[1-9]\d*\.\d{3}$/.test(figure));
  if (mark !== 'comma' || odd === undefined) return null;
  return `The point in "${odd}" may part thousands, because this sheet writes decimals with a comma. Write ${odd.replace('.', ',')}, or the figure without the point.`;
}

/** A sum without thousands and with a point, as far as the keeper settled which sign is which. */
export function plainSum(text: string, mark: Mark): string {
  if (mark === undefined) return text;
  const [thousands, decimals] =
    mark === 'comma' ? [/[.'’\u00a0\u202f ](?=\d{3})/g, ','] : [/[,'’\u00a0\u202f ](?=\d{3})/g, '.'];
  return text.replace(/\d[\d.,'’\u00a0\u202f ]*\d/g, (figure) => figure.replace(thousands, '').replace(decimals, '.'));
}

/** The text of a measure: the sheet's own figure where it has one that a person would have typed. */
export function measureText({ text, value }: Cell): string {
  if (value?.kind !== 'number') return text;
  const unit = text.replace(FIGURE, '').replace(/[-–]/g, '').trim();
  return /^\d+(\.\d{1,6})?$/.test(value.figure) && /^[^\d]*$/.test(unit) ? `${value.figure} ${unit}`.trim() : text;
}
