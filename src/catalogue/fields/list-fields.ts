import { LETTERINGS, NUMBERINGS } from '../../core/references/ranges.ts';
import { LABEL_STANDS } from '../../core/cases/boxes.ts';
import { SCALE_IDS } from '../../core/grade/grade.ts';
import { GRID_FACTS } from '../../core/sets/grid.ts';
import { LABEL_FACTS } from '../schema/exhibit.ts';
import { setSchema } from '../schema/sets-and-eras.ts';
import type { FactsTable, FieldFacts, List } from './row.ts';

/** The files that pieces share, each kind by its folder; `cabinet` is `cabinet.yaml`. */
export type ListFile = 'rulers' | 'mints' | 'denominations' | 'works' | 'eras' | 'sets' | 'exhibits' | 'cabinet';

const YES_NO = ['yes', 'no'] as const;
type More = Partial<Omit<FieldFacts, 'label' | 'says'>>;

function line(label: string, says: string, more: More = {}): FieldFacts {
  return { label, says, control: 'line', example: '', ...more };
}
/** `usual` holds where nothing is chosen. */
function choice(label: string, says: string, choices: readonly string[], usual?: string): FieldFacts {
  return line(label, says, { control: 'choice', choices, ...(usual === undefined ? {} : { usual }) });
}
function name(label: string, says: string, list: List, more: More = {}): FieldFacts {
  return line(label, says, { control: 'name', list, ...more });
}
/** Several words, with commas between them. */
function several(label: string, says: string, more: More = {}): FieldFacts {
  return line(label, says, { control: 'name', several: true, ...more });
}
function rows(label: string, says: string, parts: FactsTable, more: More = {}): FieldFacts {
  return line(label, says, { control: 'rows', parts, ...more });
}
function parts(label: string, says: string, inner: FactsTable): FieldFacts {
  return line(label, says, { control: 'parts', parts: inner });
}

const NOTE = line('Note', 'Anything else that visitors may read.', { control: 'text' });
const SOURCE = line('Source', 'Where this is printed: author, title, year, page.', { control: 'text' });
const FROM = line('From', 'The first year or day.', { reads: 'event' });
const TO = line('To', 'The last year or day.', { reads: 'event' });
const IDENTIFIERS = line('Identifiers', 'The same thing in other lists: the list, then its name there.', {
  control: 'pairs',
  example: '{ nomisma: edward_i, wikidata: Q57798 }',
});
const ENDS = { from: FROM, to: TO } as const;

const ASKED = {
  denomination: several('Denomination', 'Only of these.', { list: 'denominations' }),
  ruler: several('Ruler', 'Only in these names.', { list: 'rulers' }),
  mint: several('Mint', 'Only of these mints.', { list: 'mints' }),
  kind: several('Kind', 'coin, token, medal …'),
  metal: several('Metal', 'silver, gold …'),
  'struck-for': several('Struck for', 'The ruler for whom it was struck in fact.', { list: 'rulers' }),
  issuer: several('Issuer', 'Archbishop of York …'),
  area: several('Area', 'The area its mint is in, or a wider one.'),
  realm: several('Realm', 'What its ruler ruled, or a wider realm.'),
  dynasty: several('Dynasty', 'The family of its ruler.'),
  references: several('Number in a book', 'The key of a work and the number: north 1017.'),
  type: several('Type', 'A type of your series; narrower types count too.'),
  die: several('Die', 'obverse A1, reverse b3, or the pair A1-b3.'),
  tag: several('Tag', 'Your own tags.'),
  shape: several('Shape', 'round, square …'),
  made: several('Made', 'struck, cast …'),
} as const;

const WHERE: FactsTable = {
  ...ASKED,
  date: line('Made within', 'A span of years: 1279/1307.', { reads: 'date' }),
  not: parts('But not', 'The same facts, for what must not be so.', ASKED),
};

const ACCEPT: FactsTable = {
  altered: choice('Altered pieces', 'Whether a love token or an engraved coin may fill a place.', YES_NO, 'no'),
  details: choice('Pieces with a problem', 'As a filler until a sound one comes, fully, or not at all.', ['filler', 'yes', 'no'], 'filler'), // prettier-ignore
  uncertain: choice(
    'Uncertain pieces',
    'Whether what may fit counts as possible.',
    ['count-as-possible', 'no'],
    'count-as-possible',
  ),
  'joint-reign': choice('Joint reigns', 'Whether a piece of two rulers fills the place of one of them or of both.', ['one', 'both'], 'one'), // prettier-ignore
  copies: choice('Copies', 'Whether a replica may fill a place.', YES_NO, 'no'),
  'one-piece': choice('One piece', 'Whether a piece fills one place, or every place it fits.', ['one-place', 'any-places'], 'one-place'), // prettier-ignore
};

const WITHIN = { name: line('Name', 'The smaller one.'), in: line('Lies in', 'The wider one.') } as const;

/** Every field of the files that pieces share, for the form at the desk; the order is that of the form. */
export const LIST_ROWS: Readonly<Record<ListFile, FactsTable>> = {
  rulers: {
    name: line('Name', 'The name used on pages.'),
    'other-names': line('Other names', 'Other forms of it, as lists write them.', { control: 'lines', example: '[Edward]' }),
    realm: line('Realm', 'What was ruled, when that is known.'),
    role: line('Role', 'What somebody is who is named on pieces and did not rule: archbishop of York, saint, city.'),
    dynasty: line('Dynasty', 'The family, where a set asks for one of each.'),
    reigns: rows('Reigns', 'One reign or several, oldest first; none where no years are known.', {
      ...ENDS,
      'regnal-from': line('Years counted from', 'The day the regnal years are counted from, when it is not the first.'),
      with: several('With', 'Those who reigned jointly.', { list: 'rulers' }),
      realm: line('Realm then', 'What was ruled in this reign, where it was then called otherwise.'),
      coins: choice('Coins', 'no where no coins were struck in the name.', YES_NO),
      note: line('Note', 'Anything else about this reign.'),
    }),
    identifiers: IDENTIFIERS,
    note: NOTE,
    source: SOURCE,
  },
  mints: {
    name: line('Name', 'The name used on pages.'),
    names: rows('Names through time', 'What it was called, and when.', {
      name: line('Name', 'As it was then.'),
      ...ENDS,
      lang: line('Language', 'Its tag: la, en, ang.'),
    }),
    struck: rows('Struck coins', 'When it struck, as far as that is known.', { ...ENDS, note: line('Note', 'About these years.') }),
    area: line('Area', 'The region it is in.'),
    coordinates: line('Coordinates', 'Degrees north, then degrees east: 53.958, -1.080.'),
    identifiers: IDENTIFIERS,
    note: NOTE,
    source: SOURCE,
  },
  denominations: {
    name: line('Name', 'One of them: penny.'),
    plural: line('Several', 'Several of them: pennies.'),
    realms: several('Realms', 'Where the standards were law; empty: for every piece of that name.', { example: '[England, the United Kingdom]' }),
    standards: rows('Standards', 'The lawful or usual weights and finenesses, oldest first.', {
      ...ENDS,
      weight: line('Weight', 'With its unit: 1.44 g.', { reads: 'weight' }),
      'weight-to': line('Weight, other end', 'The other end of a disputed weight.', { reads: 'weight' }),
      fineness: line('Fineness', '925/1000, 22 ct …', { reads: 'fineness' }),
      diameter: line('Diameter', 'With its unit: 18 mm.', { reads: 'length' }),
      metal: line('Metal', 'silver, gold …'),
      source: line('Source', 'Where this is printed.'),
      note: line('Note', 'Anything else about it.'),
    }),
    identifiers: IDENTIFIERS,
    note: NOTE,
    source: SOURCE,
  },
  works: {
    author: line('Author', 'As the title page gives it.'),
    title: line('Title', 'As the title page gives it.'),
    year: line('Year', 'The year of printing, as the title page gives it.'),
    short: line('Cited as', 'How it is cited in a line: North.'),
    place: line('Place', 'Where it was printed.'),
    series: line('Series', 'The series it is a volume of.'),
    pages: line('Pages', 'The pages, for an article.'),
    last: line('Last number', 'The last number printed in it, where it numbers straight through; a reference beyond it is told.'),
    numbers: choice('Numbers', 'straight: in one run; by-volume: afresh in each; with-strokes, with-hyphens: 44/5 and 84-7 are one number.', NUMBERINGS),
    letters: choice('Letters', 'apart: 8a and 8A are two numbers; alike: one; empty: asked where they meet.', LETTERINGS),
    address: line('Address', 'Where it can be read.'),
    note: NOTE,
  },
  eras: {
    title: line('Title', 'What the scheme is called.'),
    source: line('Source', 'Who divides time this way, and where it is printed.', { control: 'text' }),
    region: line('Region', 'Where the scheme holds, in the words of its authors.'),
    'applies-to': several('Applies to', 'The areas and mints it speaks of, by mint or by find; empty: every piece.', { example: '[England, Wales]' }),
    ends: choice('Ends', 'inclusive: 1066 belongs to one period; shared: it ends one and begins the next.', ['inclusive', 'shared']),
    gaps: choice('Gaps', 'yes when the scheme itself has periods that overlap or years between them.', YES_NO, 'no'),
    periods: rows('Periods', 'Oldest first.', {
      id: line('Short name', 'In small letters, with hyphens.'),
      name: line('Name', 'As pages show it.'),
      ...ENDS,
      rulers: several('Rulers', 'Whose pieces are all of this period, whatever other periods have their years.', { list: 'rulers', example: '[edward-the-confessor, harold-ii]' }),
      realms: several('Realms', 'The same, of all rulers of a realm.', { example: '[Northumbria]' }),
      dynasties: several('Dynasties', 'The same, of all rulers of a dynasty.', { example: '[Tudor]' }),
      note: line('Note', 'Anything else about it.'),
    }),
    note: NOTE,
  },
  sets: {
    title: line('Title', 'What the set is.'),
    rule: line('Rule', 'The rule in your own words, for visitors.', { control: 'text' }),
    'one-per': choice('One piece for each', 'What gives the set its places.', setSchema.shape['one-per'].options),
    where: parts('Only pieces', 'What a piece must be to count. Several values have commas between them.', WHERE),
    places: rows('Places', 'Every place, where the set names them itself; empty: every value that the rule yields from your lists.', {
      is: line('Place', 'The short name of a ruler or mint, or one of your own.'),
      label: line('Label', 'What pages call it.'),
      excused: line('Excused', 'Why nothing can stand here.'),
      where: line('Only pieces', 'What fills it, where the short name does not say it: { mint: durham }.', { control: 'parts' }),
    }, { head: 'is' }),
    aim: line('Aim', 'The grade aimed at: VF.'),
    'aim-scale': choice('Scale of the aim', 'The scale that grade is on; uk where this is empty.', SCALE_IDS, 'uk'),
    accept: parts('What may fill a place', 'What counts where the rule itself does not say.', ACCEPT),
    count: choice('A ruler counts as', 'The name on the piece, or the one it was struck for.', setSchema.shape.count.unwrap().options, 'ruler'),
    dates: choice('A date counts as', 'When it was made, or as it stands on the piece.', setSchema.shape.dates.unwrap().options, 'as-made'),
    series: line('Series', 'For one per type: which of your series.'),
    level: line('Level', 'For one per type: at which of its levels.'),
    grid: parts('As a grid', 'A second view of the set: its places by two facts.', {
      rows: choice('Rows', 'What goes down.', GRID_FACTS),
      columns: choice('Columns', 'What goes across.', GRID_FACTS),
    }),
    source: rows('Sources', 'The books the set follows.', {
      work: name('Book', 'One of your books.', 'works'),
      pages: line('Pages', 'Where in it.'),
    }),
    note: NOTE,
  },
  exhibits: {
    title: line('Title', 'One to seven words.'),
    scope: line('Scope', 'What it shows and what it leaves out, in a sentence or two.', { control: 'text' }),
    'title-card': line('Title card', 'What else the title card says, a line each: the class, the entry number, the year. Never your name.', { control: 'lines', example: '[Class 2]' }),
    'keeper-shown': choice('Your name', 'Whether it is shown with your public name.', YES_NO, 'yes'),
    'on-show': choice('On the first page', 'yes for the exhibit that the first page shows.', YES_NO, 'no'),
    holder: line('Holder', 'What the pieces lie in: 2x2, capsule 40 mm, slab 60 x 86 x 7 mm, ticket 38 mm, pocket 50 x 50 mm; empty: they lie bare.'),
    label: parts('Labels', 'How every label is made.', {
      width: line('Width', '90 mm', { reads: 'length' }),
      text: line('Letters', 'The size of the letters: 18 pt.'),
      height: line('Height', 'How high one may be; facts are left out from the end until it is.', { reads: 'length' }),
      identity: several('Above your words', `What stands above labels in your own words, as far as these do not say it: ${LABEL_FACTS.join(', ')}.`, { example: '[what, date, reference]' }),
      facts: several('Facts', `What labels made from the piece tell, the least needful last: ${LABEL_FACTS.join(', ')}.`, { example: '[what, date]' }),
      stand: choice('Place', 'Below the pieces, beside them, or on a key; empty: wherever they fit.', LABEL_STANDS),
    }),
    sets: several('Sets', 'The sets whose progress its texts speak of.', { list: 'sets' }),
    abbreviations: line('Abbreviations', 'What your texts shorten: the short form, then the long one.', { control: 'pairs' }),
    bibliography: several('Bibliography', 'The books it rests on.', { list: 'works', example: '[north]' }),
    'further-reading': several('Further reading', 'Books for those who want to know more.', { list: 'works', example: '[north]' }),
    research: line('Own research', 'What in it is your own work: weighing, die studies, attributions, reading in archives.', { control: 'text' }),
    acknowledgements: line('Acknowledgements', 'Whom you thank.', { control: 'text' }),
  },
  cabinet: {
    title: line('Title', 'The name of the site.'),
    keeper: line('Keeper', 'Your public name: a first name, initials or a club will do.'),
    contact: line('Contact', 'Where visitors may write; everybody can read it: cabinet@example.org, or a page of the web.'),
    about: line('About', 'What this cabinet is, in a few sentences.', { control: 'text' }),
    language: line('Language', 'The language of your texts: en, de, pt-BR.'),
    address: line('Address', 'Where the site will stand: https://example.org/coins/.'),
    licence: parts('Licence', 'On what terms others may use them.', {
      texts: line('Texts', 'CC BY 4.0'),
      photographs: line('Photographs', 'CC BY-NC 4.0'),
    }),
    robots: choice('Search engines', 'Whether they may list the site.', ['all', 'none'], 'all'),
    tiles: choice('Tiles', 'yes: viewers on other sites (IIIF) load the public pictures tile by tile; more files.', YES_NO, 'no'),
    currency: line('Currency', 'The money your ledger is kept in: GBP.'),
    units: choice('Weights', 'In grams, or in grains as well.', ['metric', 'grains'], 'metric'),
    'grade-scale': choice('Grade scale', 'The scale of grades beside which none is named; empty: each may be on any that has the word.', SCALE_IDS),
    gr: choice('gr means', 'What gr after a weight means here; empty: each one is asked about.', ['grains', 'grams']),
    areas: rows('Areas', 'Areas that lie within wider ones, for sets.', WITHIN),
    realms: rows('Realms', 'Realms that lie within wider ones, for sets.', WITHIN),
    'metal-values': choice('Metal values', 'bullion: of ingots, hacksilver and what has the tag bullion; all; none.', ['bullion', 'all', 'none'], 'bullion'),
    'metal-totals': choice('Metal totals', 'yes: the page of measures adds up the fine gold and silver that is here. Anyone can read it.', YES_NO, 'no'),
    'metal-prices': rows('Metal prices', 'Your own, a troy ounce, each with its day and source.', {
      metal: line('Metal', 'silver, gold …'),
      price: line('Price', 'A troy ounce: 24.10 GBP.', { reads: 'money' }),
      date: line('Date', 'The day it was so.', { reads: 'event' }),
      source: line('Source', 'Where you read it.'),
    }),
    demo: choice('Invented', 'yes only where every piece and value is invented.', YES_NO, 'no'),
  },
}; // prettier-ignore
