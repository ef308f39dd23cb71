import type { Grade } from './grade.ts';

/**
 * Words for what ails a piece, in the languages of the lists; common practice. They match whole words: a star at the end stands
 * for the rest of one (`Henkel*`, the compounds of German). `Polish` with a capital is a nation.
 */
const FAULTS = [
  'cleaned cleaning overcleaned polished polishing polish whizzed scrubbed brushed dipped lacquered wiped waxed',
  'gereinigt* poliert* geputzt* nettoyé* nettoyage pulita pulito lucidat* limpiad* gepoetst schoongemaakt gereinigd',
  'scratch scratches scratched scratching graffiti graffito hairline hairlines hairlined gouge gouges gouged scrape scrapes scraped scuff scuffs',
  'scuffed scuffing abrasion abrasions abraded kratzer* zerkratzt* kr rayure* rayée rayé graffio graffi graffiti raya rayas rayada rayado raspad* kras krasje*',
  'krassen gilt gilded gilding silvered plated vergoldet* versilbert* doré dorée dorato dorata dorado dorada verguld* artificial artificially retoned',
  're-toned recoloured recolored hole holes holed hol pierced piercing plug plugged gelocht* loch lochspur* lochstelle* trou trous troué* percé* foro',
  'fori forat* perforad* agujero* gaatje* doorboord* oogje* beschadig* mount mounts mounted mounting ex-mount ex-mounted exmount solder soldered jewelry',
  'jewellery jewel loop loops looped henkel* gehenkelt* hsp hksp broschier* monture monté montée bélière* béliere* beliere* appiccagnolo montura soldad*',
  'gefasst* fassungsspur* tooled tooling smoothed smoothing re-engraved reengraved altered alteration alterations repaired repair repairs repatinated',
  'repatinat* retusch* ritoccat* ritocco reparad* réparé* korrodiert* korrosion* corroded corrosion corrosive verdigris pitted pitting pits porous porosity',
  'granular granulated rust rusted rusty rost* zinkfraß porös* corrosi* oxydé* piqué* piqûre* porosità poroso porosa poreux corroso corrosa bent straightened bend crack cracked cracks',
  'cracking chip chips chipped chipping fragment fragments fragmentary broken crimp crimped crease creased creases verbogen* geknickt* riss risse einriss* plié* pli fêlé* fêlure*',
  'piegat* rotto rotta doblad* roto rota grieta* clip clipped clipping filed file shaved damage damaged damages defaced counterstamp counterstamped test-cut testcut test-cuts',
  'chop chops chopmark chopmarks chopped chop-mark burn burns burnt burned fire-damage environmental stain stains stained spot spots spotted spotting fleck flecks',
  'flecken tache taches tâche taché tachée macchia macchie mancha manchas knock knocks knocked nick nicks nicked bruise bruises bruised ding dings dinged dent dents dented',
  'dig digs bump bumps bumped bumping randfehler* randschl* randdelle* randkerb* randkratzer* rf schlagspur* delle* randtik* randschade*',
  'schrötlingsfehler* schrötlingsriss* golpe golpes golpecit* colpo colpi coup coups choc chocs défaut* beschnitten befeilt* gestopft*',
  'engraved initials countermarked lötspur* feuerschaden',
]; // prettier-ignore

/** Two words that are a fault together. */
const FAULT_PHRASES = /\b(?:test ?cuts?|bank(?:er)?'?s'? marks?|fire damaged?|edge test|graded details)\b/;

/** What was so when it left the mint, and what is said not to be there, as far as it is said. */
const MADE_SO = '(?:rotated|rusted|rusty|cracked|clashed|worn|polished|filled|broken|repaired) dies?';
const DIE_FLAW = 'die (?:crack|rust|flaw|break|polish|clash)\\w*';
const DENIED = 'no|not|never|without|free (?:of|from)|ohne|kein|keine|sans|senza|sin|zonder|geen';
const NO_FAULT = new RegExp(
  `^.*\\bas (?:struck|made)\\b|\\b(?:${MADE_SO}|${DIE_FLAW})|^un(?:cleaned|polished|circulated)\\b` +
    `|^(?:${DENIED})\\b.*?(?=[,;]| (?:but|aber|mais|ma|pero|maar) |$)`,
);

/** Words that describe and find no fault. Common practice. */
const REMARKS = new Set(
  [
    'tone toned tones toning patina patiniert patinée patine patinato lustre luster lustrous bloom colour color cabinet appeal attractive',
    'pleasing scarce rare rarity prooflike pl dpl dmpl cam dcam ucam cameo specimen weak weakly soft flat double well bold boldly full whole centred centered',
    'off-centre off-center offcentre struck strike sharp sharply clear clearly legible complete round flan lettering legend portrait detail nice lovely',
    'superb ticket tickets label tag envelope ex sale collection coll pedigree provenance auction hoard lot schöne prächtige belle jolie bella bonita mooie',
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

const WHOLE = new Set(FAULTS.flatMap((line) => line.split(' ')).filter((word) => !word.endsWith('*')));
const BEGINNINGS = FAULTS.flatMap((line) => line.split(' '))
  .filter((word) => word.endsWith('*'))
  .map((word) => word.slice(0, -1));

/** Whether a text names a fault, by whole words. */
export function namesFault(text: string): boolean {
  const plain = text.normalize('NFC');
  if (FAULT_PHRASES.test(plain.toLowerCase())) return true;
  const words = plain.match(/[\p{L}\p{M}]+(?:-[\p{L}\p{M}]+)*/gu) ?? [];
  return words
    .flatMap((word) => [word, ...(word.includes('-') ? word.split('-') : [])])
    .some((word) => isFault(word.toLowerCase(), word === 'Polish'));
}

function isFault(word: string, isNation: boolean): boolean {
  return !isNation && (WHOLE.has(word) || BEGINNINGS.some((start) => word.startsWith(start)));
}

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
  // "Not cleaned but scratched" is scratched.
  const denied = NO_FAULT.exec(low);
  if (denied !== null) {
    const left = words.slice(0, denied.index) + words.slice(denied.index + denied[0].length);
    return { kind: namesFault(left) ? 'problem' : 'remark', words };
  }
  // "Cleaned but attractive" is cleaned; "weak strike at the edge" is no damage.
  if (namesFault(words)) return { kind: 'problem', words };
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
