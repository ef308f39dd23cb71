import { good, refuse, type Outcome } from '../../../core/outcome.ts';
import { LIMITS } from '../limits.ts';
import { xmlWalker, type XmlTaker } from './walk-xml.ts';
import { unpack, type Allowance, type Zip } from './zip.ts';

/** An opened package with what may still be taken out of it. */
export type Package = { readonly zip: Zip; readonly allowance: Allowance; readonly name: string };

/** What has been taken into memory of all sheets of a file so far. */
export type Taken = { letters: number; cells: number };

export function packageOf(zip: Zip, name: string): Package {
  return { zip, name, allowance: { bytes: LIMITS.unpackedBytes } };
}

export function hasPart({ zip }: Package, part: string): boolean {
  return zip.entries.has(part.replace(/^\//, '').toLowerCase());
}

/**
 * Walks one part of XML. `stop` is asked after every chunk and gives the sentence for which reading ends, such as that
 * the sheet is too long.
 */
export function readPart(
  { zip, allowance, name }: Package,
  part: string,
  taker: XmlTaker,
  stop: () => string | null = () => null,
): Outcome<null> {
  const walker = xmlWalker(taker);
  const ended: { because: string | null } = { because: null };
  const came = unpack(zip, part, allowance, (chunk) => {
    const goesOn = walker.write(chunk);
    ended.because = stop();
    return goesOn && ended.because === null;
  });
  if (ended.because !== null) return refuse(ended.because);
  if (!came.ok) return refuse(`${name} cannot be read. ${came.problem}`);
  if (came.value === 'too much') {
    return refuse(
      `${name} unpacks to more than ${LIMITS.unpackedBytes / 1024 / 1024} MB, as no list of pieces does. Copy its cells into a new workbook and save that.`,
    );
  }
  const problem = walker.end();
  return problem === null ? good(null) : refuse(`${name} cannot be read. ${problem}`);
}
