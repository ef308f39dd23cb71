import { placesOf } from './currencies.ts';
import type { Money } from './money.ts';

/** The code and the amount, with the places its currency has: `GBP 1234.50`, `JPY 500`. */
export function formatMoney({ minor, currency }: Pick<Money, 'minor' | 'currency'>): string {
  const places = placesOf(currency);
  const digits = String(minor).padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  return places === 0 ? `${currency} ${whole}` : `${currency} ${whole}.${digits.slice(-places)}`;
}
