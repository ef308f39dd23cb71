import type { Outcome } from '../../core/outcome.ts';
import { parseAxis, formatAxis } from '../../core/measures/parse-axis.ts';
import { parseLength } from '../../core/measures/parse-length.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import { parseFineness } from '../../core/metal/parse-fineness.ts';
import { measureText, readTwoWays, withPoint } from './figures.ts';
import type { Cell, Said } from './cell-result.ts';
import { fact, unread } from './cell-result.ts';

const PARSERS: Readonly<Record<string, (text: string) => Outcome<unknown>>> = {
  weight: parseWeight,
  diameter: parseSize,
  thickness: parseLength,
  fineness: parseFineness,
};

const UNIT_SIGN: Readonly<Record<string, string>> = { thousandths: '‰', '%': '%' };

/** A weight, diameter, thickness or fineness in figures with a point and with its unit. */
export function readMeasure(cell: Cell, field: string): readonly Said[] {
  const { settings } = cell;
  const twoWays = readTwoWays(cell.text, settings.decimal);
  if (twoWays !== null && cell.value?.kind !== 'number') return unread(field, twoWays);
  const plain = withPoint(measureText(cell), settings.decimal).replace(/\s+/g, ' ');
  const named = withUnit(plain, cell.unit);
  const written = field === 'weight' ? inGrams(named, settings.gr) : named;
  if (written === null) {
    return unread(
      field,
      `"gr" in "${cell.text}" may be grams or grains. Say in the mapping which it is, or write g or grains.`,
    );
  }
  const read = PARSERS[field]?.(written);
  if (read === undefined || read.ok) return fact(field, written);
  return unread(field, read.problem);
}

/** The unit of the heading, where the cell has none of its own. */
function withUnit(text: string, unit: string | undefined): string {
  if (unit === undefined || /[a-z"″‰%°]/i.test(text.replace(/\b(?:x|to|or|by)\b|(?<=\d)x(?=\d)/gi, ''))) return text;
  const [, before = text, after = ''] = /^(.*?)( ?(?:±|\+\/-) ?.*)$/.exec(text) ?? [];
  return `${before} ${UNIT_SIGN[unit] ?? unit}${after}`;
}

const GR = /(?<=[\d\s])grs?\b\.?/i;

/** `gr` as the keeper means it; null when that was not settled. */
function inGrams(text: string, meant: 'grams' | 'grains' | undefined): string | null {
  if (!GR.test(text)) return text;
  return meant === undefined ? null : text.replace(GR, meant === 'grains' ? 'grains' : 'g');
}

export function readAxis({ text, unit }: Cell): readonly Said[] {
  const read = parseAxis(unit === '°' && /^\d+$/.test(text) ? `${text}°` : text.replace(/^(\d{1,2})[.,]0+$/, '$1'));
  return read.ok ? fact('axis', formatAxis(read.value)) : unread('axis', read.problem);
}

/** `1.38 g / 18 mm / 6h`: each part by its own unit. */
export function readMeasures(cell: Cell): readonly Said[] {
  const parts = cell.text.split(/\s*(?:[;|\n]|\/(?=\s)|,(?=\s))\s*/).filter((part) => part !== '');
  return parts.flatMap((part) => {
    const said = readPart({ ...cell, text: part, value: undefined });
    return said.map((each) => (each.kind === 'unread' ? { ...each, text: part } : each));
  });
}

function readPart(cell: Cell): readonly Said[] {
  const words = cell.text.toLowerCase();
  if (/\d ?(?:h\.?|°|uhr|hrs?|o['’]clock)$|^[↑↓→← ]+$/.test(words)) return readAxis(cell);
  if (/\b(?:thick|dick|épais|spessore|grosor|dikte)|^th\b/.test(words))
    return readMeasure(
      { ...cell, text: words.replace(/[a-zé]*(?:thick|dick|épais|spess|gros|dikte)[a-zé]*:?|^th\.?/, '').trim() },
      'thickness',
    );
  if (/mm|cm|ø|⌀|inch/.test(words)) return readMeasure(cell, 'diameter');
  if (/‰|%|\/1000|\bct\b|carat|karat/.test(words)) return readMeasure(cell, 'fineness');
  if (/\d ?(?:g|gr|grs|gms?|gramm?e?s?|dwt|grains?|oz.*)\.?$/.test(words)) return readMeasure(cell, 'weight');
  return unread(
    'measures',
    `"${cell.text}" has no unit that tells what it measures. Write it like 1.38 g, 18 mm or 6h.`,
  );
}
