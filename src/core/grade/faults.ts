/**
 * Words for what ails a piece, in the languages of the lists; common practice. They match whole words: a star at the end stands
 * for the rest of one (`Henkel*`, the compounds of German). `Polish` with a capital is a nation.
 */
const FAULTS = [
  'cleaned cleaning overcleaned polished polishing polish whizzed scrubbed brushed dipped lacquered wiped waxed',
  'gereinigt* poliert* geputzt* nettoyé* nettoyage pulita pulito lucidat* limpiad* gepoetst schoongemaakt gereinigd',
  'scratch scratches scratched scratching graffiti graffito hairline hairlines hairlined gouge gouges gouged scrape scrapes scraped scuff scuffs',
  'scuffed scuffing abrasion abrasions abraded kratzer* zerkratzt* verkratz* kr rayure* rayée rayé graffio graffi graffiti raya rayas rayada rayado raspad* kras krasje*',
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
  'engraved lötspur* feuerschaden',
]; // prettier-ignore

/** Two words that are a fault together. */
const FAULT_PHRASES = /\b(?:test ?cuts?|bank(?:er)?'?s'? marks?|fire damaged?|edge test|graded details)\b/;

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

/** Whether a word by itself is one for a fault. */
export function isFault(word: string, isNation = false): boolean {
  return !isNation && (WHOLE.has(word) || BEGINNINGS.some((start) => word.startsWith(start)));
}
