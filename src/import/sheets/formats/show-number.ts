import type { FormatSection, FormatToken } from './format-code.ts';
import { generalText, roundFigure, shiftFigure } from './figure.ts';

/** How a section lays out a figure; worked out once for all the cells that share it. */
type Layout =
  | { readonly kind: 'general' }
  | { readonly kind: 'power' }
  | { readonly kind: 'fraction'; readonly slash: number }
  | {
      readonly kind: 'plain';
      readonly whole: readonly FormatToken[];
      readonly decimals: readonly FormatToken[] | null;
      readonly shift: number;
      readonly places: number;
      readonly isGrouped: boolean;
      /** What stands before and after the places of the whole, where they lie together and are of `0` and `#` alone. */
      readonly simple: { readonly before: string; readonly least: number; readonly after: string } | null;
    };

const layouts = new WeakMap<FormatSection, Layout>();

function layoutOf(section: FormatSection): Layout {
  const known = layouts.get(section);
  if (known !== undefined) return known;
  const layout = layOut(section.tokens);
  layouts.set(section, layout);
  return layout;
}

function layOut(tokens: readonly FormatToken[]): Layout {
  if (tokens.some(({ kind }) => kind === 'general')) return { kind: 'general' };
  const slash = tokens.findIndex(({ kind }) => kind === 'slash');
  if (slash !== -1 && tokens[slash - 1]?.kind === 'digit') return { kind: 'fraction', slash };
  if (tokens.some(({ kind }) => kind === 'power')) return { kind: 'power' };
  const point = tokens.findIndex(({ kind }) => kind === 'point');
  const whole = point === -1 ? tokens : tokens.slice(0, point);
  const decimals = point === -1 ? null : tokens.slice(point + 1);
  const percents = tokens.filter(({ kind }) => kind === 'percent').length;
  const first = whole.findIndex(({ kind }) => kind === 'digit');
  const last = whole.findLastIndex(({ kind }) => kind === 'digit');
  const thousands = whole.slice(last + 1).filter(({ kind }) => kind === 'comma').length;
  const within = whole.slice(first, last + 1);
  const isSimple =
    first !== -1 && within.every((token) => token.kind === 'comma' || (token.kind === 'digit' && token.sign !== '?'));
  return {
    kind: 'plain',
    whole,
    decimals,
    shift: percents * 2 - thousands * 3,
    places: (decimals ?? []).filter(({ kind }) => kind === 'digit').length,
    isGrouped: within.some(({ kind }) => kind === 'comma'),
    simple: isSimple
      ? {
          before: whole.slice(0, first).map(textOf).join(''),
          least: within.filter((token) => token.kind === 'digit' && token.sign === '0').length,
          after: whole
            .slice(last + 1)
            .map(textOf)
            .join(''),
        }
      : null,
  };
}

/** A figure, without its sign, as a section of a number format shows it. The point is a point and thousands have a comma. */
export function showFigure(figure: string, section: FormatSection): string {
  const { tokens } = section;
  const layout = layoutOf(section);
  if (layout.kind === 'general') {
    return tokens.map((token) => (token.kind === 'general' ? generalText(figure) : textOf(token))).join('');
  }
  if (layout.kind === 'fraction') return showFraction(figure, tokens, layout.slash);
  if (layout.kind === 'power') return showPower(figure, tokens);
  const { whole, decimals, shift, places, isGrouped, simple } = layout;
  const [digits = '0', fraction = ''] = roundFigure(shiftFigure(figure, shift), places).split('.');
  const plain = digits.replace(/^0+/, '');
  const left = simple === null ? placeWhole(plain, whole, isGrouped) : placeSimply(plain, simple, isGrouped);
  if (decimals === null) return left;
  const right = placeDecimals(fraction, decimals);
  return /^\d/.test(right) || places === 0 ? `${left}.${right}` : `${left}${right}`;
}

function placeSimply(
  digits: string,
  { before, least, after }: { readonly before: string; readonly least: number; readonly after: string },
  isGrouped: boolean,
): string {
  const padded = digits.padStart(least, '0');
  return `${before}${isGrouped ? padded.replace(/\B(?=(\d{3})+$)/g, ',') : padded}${after}`;
}

function textOf(token: FormatToken): string {
  if (token.kind === 'literal') return token.text;
  if (token.kind === 'percent') return '%';
  return token.kind === 'slash' ? '/' : '';
}

/** Digits put into their places from the right; those that are left over stand before the first place. */
function placeWhole(digits: string, tokens: readonly FormatToken[], isGrouped: boolean): string {
  const signs = tokens.flatMap((token) => (token.kind === 'digit' ? [token.sign] : []));
  let place = signs.length;
  let left = digits;
  let count = 0;
  let shown = '';
  const put = (sign: string): void => {
    if (isGrouped && count > 0 && count % 3 === 0 && /\d/.test(sign)) shown = `,${shown}`;
    shown = sign + shown;
    count += 1;
  };
  for (const token of tokens.toReversed()) {
    if (token.kind !== 'digit') {
      shown = textOf(token) + shown;
      continue;
    }
    place -= 1;
    const digit = left.at(-1);
    if (digit !== undefined) put(digit);
    else if (token.sign === '0') put('0');
    else if (token.sign === '?') put(' ');
    left = left.slice(0, -1);
    while (place === 0 && left !== '') {
      put(left.at(-1) ?? '');
      left = left.slice(0, -1);
    }
  }
  return shown;
}

function placeDecimals(decimals: string, tokens: readonly FormatToken[]): string {
  let shown = '';
  let at = 0;
  for (const token of tokens) {
    if (token.kind !== 'digit') {
      shown += textOf(token);
      continue;
    }
    const isSpare = /^0*$/.test(decimals.slice(at));
    if (token.sign === '0' || !isSpare) shown += decimals[at] ?? '';
    else if (token.sign === '?') shown += ' ';
    at += 1;
  }
  return shown;
}

function showPower(figure: string, tokens: readonly FormatToken[]): string {
  const point = tokens.findIndex(({ kind }) => kind === 'point');
  const at = tokens.findIndex(({ kind }) => kind === 'power');
  const places = point === -1 ? 0 : tokens.slice(point, at).filter(({ kind }) => kind === 'digit').length;
  const [long = '0', power = '0'] = Number(figure).toExponential(14).split('e');
  const mantissa = roundFigure(long.replace(/\.?0+$/, ''), places);
  const width = tokens.slice(at).filter(({ kind }) => kind === 'digit').length;
  const sign = power.startsWith('-') ? '-' : '+';
  return `${mantissa}E${sign}${power.replace(/^[+-]/, '').padStart(width, '0')}`;
}

/** A figure as a whole and a fraction, with the nearest denominator of so many digits or the one that is given. */
function showFraction(figure: string, tokens: readonly FormatToken[], slash: number): string {
  let top = slash;
  while (tokens[top - 1]?.kind === 'digit') top -= 1;
  const hasWhole = tokens.slice(0, top).some(({ kind }) => kind === 'digit');
  const after = tokens.slice(slash + 1);
  const fixed = Number(
    /^\d+/.exec(after.map((token) => (token.kind === 'digit' ? token.sign : textOf(token))).join(''))?.[0] ?? '0',
  );
  const most = 10 ** Math.min(after.filter(({ kind }) => kind === 'digit').length, 3) - 1;
  const number = Number(figure);
  const whole = hasWhole ? Math.floor(number) : 0;
  let best = { over: 0, under: 1, off: number - whole };
  for (let under = fixed || 1; under <= (fixed || most); under += 1) {
    const over = Math.round((number - whole) * under);
    const off = Math.abs(number - whole - over / under);
    if (off < best.off - 1e-12) best = { over, under, off };
  }
  if (hasWhole && best.over === 0) return String(whole);
  if (hasWhole && best.over === best.under) return String(whole + 1);
  const fraction = `${best.over}/${best.under}`;
  return hasWhole && whole > 0 ? `${whole} ${fraction}` : fraction;
}
