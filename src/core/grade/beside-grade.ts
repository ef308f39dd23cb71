import { withoutDenied } from './denied.ts';
import { namesFault } from './faults.ts';
import type { Grade } from './grade.ts';

/** Words that describe and find no fault. Common practice. */
const REMARKS = new Set(
  [
    'tone toned tones toning patina patiniert patinée patine patinato lustre luster lustrous bloom colour color cabinet appeal attractive',
    'pleasing scarce rare rarity prooflike pl dpl dmpl cam dcam ucam cameo specimen weak weakly soft flat double well bold boldly full whole centred centered',
    'off-centre off-center offcentre struck strike sharp sharply clear clearly legible complete round flan lettering legend portrait detail nice lovely',
    'superb ticket tickets label tag envelope ex sale countermark countermarks countermarked contremarque contremarquée contremarqué gegenstempel contromarca contramarca collection coll pedigree provenance auction hoard lot schöne prächtige belle jolie bella bonita mooie',
    // What a piece is kept in or hangs from.
    'box boxed case cased slab slabbed capsule holder folder pouch ribbon ribbons certificate etui originaletui schachtel kapsel zertifikat coffret écrin boîte ruban nastro astuccio cofanetto estuche cinta doosje lint',
  ].flatMap((line) => line.split(' ')),
); // prettier-ignore

const COLOURS: ReadonlyMap<string, 'red' | 'red and brown' | 'brown'> = new Map([
  ['rd', 'red'],
  ['red', 'red'],
  ['rb', 'red and brown'],
  ['red and brown', 'red and brown'],
  ['red-brown', 'red and brown'],
  ['bn', 'brown'],
  ['brown', 'brown'],
]);

const OUT_OF_FIVE = /^(strike|surfaces?):? ?([1-5])(?:\/5| of 5)?$/;

/** What a phrase beside a grade says; `'unknown'` when nothing here knows it. */
export type Said =
  | { readonly kind: 'problem' | 'remark'; readonly words: string }
  | { readonly kind: 'colour'; readonly colour: 'red' | 'red and brown' | 'brown' }
  | { readonly kind: 'strike' | 'surface'; readonly outOfFive: number }
  | { readonly kind: 'unknown'; readonly words: string };

export function readRemark(words: string): Said {
  const low = words.toLowerCase();
  const colour = COLOURS.get(low);
  if (colour !== undefined) return { kind: 'colour', colour };
  const [, face = '', points] = OUT_OF_FIVE.exec(low) ?? [];
  if (points !== undefined) return { kind: face === 'strike' ? 'strike' : 'surface', outOfFive: Number(points) };
  const { left, isClear, isDenied } = withoutDenied(words);
  if (!isClear) return { kind: 'unknown', words };
  // "Cleaned but attractive" is cleaned; "not cleaned but scratched" is scratched; "weak strike at the edge" is no damage.
  if (namesFault(left)) return { kind: 'problem', words };
  if (isDenied) return { kind: 'remark', words };
  const isRemark = (low.match(/[\p{L}-]+/gu) ?? []).some((word) => REMARKS.has(word));
  return isRemark && (!/\d/.test(low) || /^ex /.test(low)) ? { kind: 'remark', words } : { kind: 'unknown', words };
}

type Beside = Pick<Grade, 'colour' | 'strike' | 'surface' | 'remarks'>;

/** What was said beside a grade and is no fault, in the fields of the grade. */
export function besideGrade(said: readonly Said[]): Beside {
  const remarks = said.flatMap((each) => (each.kind === 'remark' ? [each.words] : []));
  return said.reduce<Beside>(
    (beside, each) => {
      if (each.kind === 'colour') return { ...beside, colour: each.colour };
      if (each.kind === 'strike') return { ...beside, strike: each.outOfFive };
      return each.kind === 'surface' ? { ...beside, surface: each.outOfFive } : beside;
    },
    remarks.length === 0 ? {} : { remarks },
  );
}
