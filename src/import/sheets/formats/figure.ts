/** A number as a spreadsheet counts it, with fifteen digits that hold (ECMA-376 part 1, 18.18.11), written in full: `1.38`, `-0.000002`. */
export function figureOf(number: number): string {
  const short = String(number);
  if (short.length <= 16 && !short.includes('e')) return short;
  const [mantissa = '0', power = '0'] = Math.abs(number).toExponential(14).split('e');
  const digits = mantissa.replace('.', '').replace(/0+$/, '');
  if (digits === '') return '0';
  const point = Number(power) + 1;
  const sign = number < 0 ? '-' : '';
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`;
  if (point >= digits.length) return `${sign}${digits}${'0'.repeat(point - digits.length)}`;
  return `${sign}${digits.slice(0, point)}.${digits.slice(point)}`;
}

/** A figure without a sign, rounded half up to so many places as spreadsheets do: by its digits, not by its binary. */
export function roundFigure(figure: string, places: number): string {
  const [whole = '0', fraction = ''] = figure.split('.');
  if (fraction.length <= places) return places === 0 ? whole : `${whole}.${fraction.padEnd(places, '0')}`;
  const digits = `${whole}${fraction.slice(0, places)}`;
  const isUp = (fraction[places] ?? '0') >= '5';
  const up = isUp ? addOne(digits) : digits;
  const rounded = up.padStart(digits.length, '0');
  return places === 0 ? rounded : `${rounded.slice(0, -places)}.${rounded.slice(-places)}`;
}

function addOne(digits: string): string {
  return digits.length > 15 ? String(BigInt(digits) + 1n) : String(Number(digits) + 1);
}

/** A figure moved by so many places: 0.925 by 2 is 92.5. Without a sign. */
export function shiftFigure(figure: string, places: number): string {
  if (places === 0) return figure;
  const [whole = '0', fraction = ''] = figure.split('.');
  if (places >= 0) {
    const moved = `${whole}${fraction.slice(0, places).padEnd(places, '0')}`.replace(/^0+(?=\d)/, '');
    const rest = fraction.slice(places);
    return rest === '' ? moved : `${moved}.${rest}`;
  }
  const padded = whole.padStart(1 - places, '0');
  const moved = `${padded.slice(0, places)}.${padded.slice(places)}${fraction}`;
  return moved.replace(/\.?0+$/, '');
}

/** As the format General shows it: eleven signs wide at the most, unless more stand before the point. */
export function generalText(figure: string): string {
  const sign = figure.startsWith('-') ? '-' : '';
  const plain = figure.slice(sign.length);
  const [whole = '0', fraction = ''] = plain.split('.');
  const room = Math.max(0, 10 - whole.length);
  if (fraction.length <= room || /^0*$/.test(`${whole}${fraction.slice(0, room)}`)) return figure;
  return `${sign}${roundFigure(plain, room).replace(/\.?0+$/, room === 0 ? '$&' : '')}`;
}
