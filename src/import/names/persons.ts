import { plainLetters } from '../../core/file-id.ts';
import type { Draft, NamedInSheet, UnreadCell } from '../plan/draft.ts';
import { isFirstName } from './first-names.ts';
import type { KnownName, SaidNames } from './name.ts';
import { rulerKey, spelledAlike } from './ruler-key.ts';

/** Two who ruled together, as English, German, French, Spanish, Italian, Dutch, Danish and Swedish join them. */
const AND = /\s*[&+]\s*|\s+(?:[Aa]nd|AND|[Uu]nd|UND|et|ET|y|e|en|og|och)\s+/u;
/** One of two: `Henry II or III`, `Edward I/II`, `Edward I-III`. */
const OR = /\s(?:or|OR|oder|ODER|ou|OU|o|eller)\s|\s[IVX]+\s?[-–/]\s?[IVX]+$|\p{L}\/\p{L}/u;
/** One who struck for another: `Antoninus Pius for Marcus Aurelius`. */
const STRUCK_FOR = /^(.*\S) (?:for|für|pour|per|voor) (\p{Lu}.*)$/u;
/** Joint rulers who are named without their numbers: a ruler of the bare name would be somebody else. Facts of English history. */
const PAIRS: ReadonlyMap<string, readonly string[]> = new Map([
  ['william mary', ['William III', 'Mary II']],
  ['wm mary', ['William III', 'Mary II']],
  ['philip mary', ['Philip', 'Mary I']],
  ['mary philip', ['Mary I', 'Philip']],
]);
const BRACKET = /^(.*\S)\s*[([]([^()[\]\d]*\p{L}[^()[\]\d]*)[)\]]$/u;
/** Words that begin what is said of a person shown: `(for Faustina II)`. */
const FOR = /^(?:for|für|fuer|pour|per|por|voor|sitter|portrait|bust|mit|with|avec)\b:?\s*/iu;
/** Women of imperial houses and heirs, whom coins struck by others show. Common practice. */
const PORTRAYED: ReadonlySet<string> = new Set(
  `julia faustina sabina lucilla crispina plautilla salonina helena fausta agrippina livia antonia domitia plotina marciana matidia otacilia
  etruscilla tranquillina severina galeria orbiana paula aquilia annia cornelia mariniana magnia sallustia manlia octavia poppaea messalina
  germanicus drusus aelius`.split(/\s+/),
);

const NUMERAL = /^(?=[ivx])x{0,2}(?:ix|iv|v?i{0,3})\.?$/i;

/** Roman emperors and Caesars, by the names that lists of coins use. Common practice. */
const EMPERORS: ReadonlySet<string> = new Set(
  `augustus tiberius caligula claudius nero galba otho vitellius vespasian titus domitian nerva trajan hadrian commodus pertinax caracalla geta
  macrinus diadumenian elagabalus maximinus gordian pupienus balbinus philip decius herennius hostilian gallus volusian aemilian valerian
  gallienus saloninus postumus victorinus tetricus aurelian tacitus florian probus carus numerian carinus diocletian maximian carausius allectus
  constantius galerius severus maxentius licinius crispus constans magnentius decentius julian jovian valens gratian eugenius arcadius honorius
  theodosius majorian anthemius zeno anastasius justin justinian tiberius heraclius vespasianus titus domitianus traianus hadrianus diocletianus
  maximianus valerianus aurelianus septimius marcus lucius antoninus`.split(/\s+/),
);

type Split = { readonly names: readonly NamedInSheet[]; readonly asked: string | null };

/**
 * Drafts whose ruler is each person by himself. A cell may join two who ruled together, leave open which of two, or put another person in
 * brackets. Where nothing tells that both are persons, as in *Trinidad and Tobago*, it is asked.
 */
export function byPerson(drafts: readonly Draft[], known: readonly KnownName[], said: SaidNames): readonly Draft[] {
  const alone = drafts
    .flatMap(({ names }) => names.ruler ?? [])
    .map(({ name }) => name)
    .filter(isPlain);
  const whole = new Set([...known.flatMap(({ names }) => names), ...Object.values(said).flat()].map(spelledAlike));
  const persons = new Set([...known.flatMap(({ names }) => names), ...alone].map(rulerKey));
  const split = remembered((name) => splitName(name, whole, (one) => persons.has(rulerKey(one)) || isPersonal(one)));
  return drafts.map((draft) => {
    const { ruler } = draft.names;
    if (ruler === undefined || ruler.every(({ name }) => isPlain(name))) return draft;
    const all = ruler.map((one) => ({ one, split: split(one.name) }));
    const asked = all.flatMap(({ one, split: { asked: because } }): readonly UnreadCell[] =>
      because === null ? [] : [{ row: draft.row, heading: 'ruler', text: one.name, because, field: 'ruler' }],
    );
    const names = all.flatMap(({ one, split: { names: some } }) => some.map((each) => ({ ...one, ...each })));
    return { ...draft, names: withRulers(draft.names, names), unread: [...draft.unread, ...asked] };
  });
}

function withRulers({ ruler: _, ...names }: Draft['names'], rulers: readonly NamedInSheet[]): Draft['names'] {
  return rulers.length === 0 ? names : { ...names, ruler: rulers };
}

/** Whether a name is one person's and nothing else. */
function isPlain(name: string): boolean {
  return ![AND, OR, BRACKET, STRUCK_FOR].some((form) => form.test(name));
}

function splitName(name: string, whole: ReadonlySet<string>, isPerson: (name: string) => boolean): Split {
  const asOne: Split = { names: [{ name }], asked: null };
  if (whole.has(spelledAlike(name))) return asOne;
  const [, base = '', inside = ''] = BRACKET.exec(name) ?? [];
  if (base !== '') {
    const other = inside.replace(FOR, '').trim();
    const isOther = other !== inside.trim() || isPerson(other);
    if (!isOther || rulerKey(other) === rulerKey(base)) return asOne;
    const asked = `"${inside}" is in brackets beside the ruler ${base}: the person shown, one who ruled together, or another name? Write the person shown in the design, one who ruled together behind a semicolon (${base}; ${other}), and another name under other-names: in the file of the ruler.`;
    return { names: [{ name: base }], asked };
  }
  if (OR.test(name))
    return {
      names: [],
      asked: `"${name}" leaves open which of several. Write the more likely one with a question mark behind it, or leave the ruler out.`,
    };
  const [, striker = '', other = ''] = STRUCK_FOR.exec(name) ?? [];
  if (striker !== '')
    return {
      names: [],
      asked: `"${name}" names one who struck and one for whom. Write ${striker} as the ruler, and ${other} in the design or in a column of those struck for.`,
    };
  const parts = name
    .split(AND)
    .flatMap((part) => part.split(/\s*,\s*/))
    .filter((part) => part !== '');
  if (parts.length < 2) return asOne;
  const pair = PAIRS.get(parts.map((part) => plainLetters(part).replace(/\.$/, '')).join(' '));
  if (pair !== undefined) return { names: pair.map((part) => ({ name: part })), asked: null };
  if (parts.every(isPerson)) return { names: parts.map((part) => ({ name: part })), asked: null };
  if (parts.some((part) => NUMERAL.test(part))) {
    const [first = ''] = parts;
    const asked = `"${name}" may be one ruler with two numbers or two rulers. Write one name (${first}), or both whole with a semicolon between.`;
    return { names: [], asked };
  }
  const asked = `"${name}" may be several who ruled together or one name. Write ${parts.join('; ')} for several; a state is an issuer and no ruler. If it is one name, give it a line of its own under rulers: in the names file.`;
  return { names: [], asked };
}

/** Whether a name is a person's by itself: a name that rulers bear comes first, or the last word numbers it. */
function isPersonal(name: string): boolean {
  const words = plainLetters(name).split(/\s+/);
  const [first = ''] = words;
  const isNumbered = words.length > 1 && NUMERAL.test(words.at(-1) ?? '');
  return isFirstName(first) || PORTRAYED.has(first) || EMPERORS.has(first) || isNumbered;
}

function remembered(split: (name: string) => Split): (name: string) => Split {
  const done = new Map<string, Split>();
  return (name) => {
    const known = done.get(name) ?? split(name);
    done.set(name, known);
    return known;
  };
}
