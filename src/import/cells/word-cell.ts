import { UNSURE_FIELDS } from '../../catalogue/fields/piece-fields.ts';
import { CERTAINTIES } from '../../catalogue/schema/fields.ts';
import type { Said } from './cell-result.ts';
import { fact, unread } from './cell-result.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';

type Choice = Readonly<Record<string, readonly string[]>>;

const KIND_WORDS: Choice = {
  coin: [
    'coins',
    'monnaie',
    'monnaies',
    'pièce',
    'pièces',
    'münze',
    'münzen',
    'muenze',
    'muenzen',
    'moneta',
    'monete',
    'moneda',
    'monedas',
    'munt',
    'munten',
    'm',
  ],
  token: [
    'tokens',
    'notgeld',
    'wertmarke',
    'wertmarken',
    'marke',
    'marken',
    'gettone',
    'gettoni',
    'ficha',
    'fichas',
    'penning',
  ],
  medal: [
    'medals',
    'médaille',
    'médailles',
    'medaille',
    'medaillen',
    'medaglia',
    'medaglie',
    'medalla',
    'medallas',
    'plaquette',
    'medallion',
  ],
  jeton: ['jetons', 'rechenpfennig', 'rechenpfennige', 'jetón', 'rekenpenning', 'counter'],
  ingot: ['lingot', 'barren', 'lingotto', 'lingote', 'baar', 'bar'],
  hacksilver: ['hack silver', 'hacksilber'],
  'coin-weight': ['coin weight', 'poids monétaire', 'münzgewicht', 'peso monetale', 'ponderal', 'muntgewicht'],
  pattern: ['essai', 'probe', 'prova', 'ensayo', 'proefslag'],
  replica: ['copy', 'copie', 'kopie', 'copia', 'réplique', 'replik', 'réplica'],
  counterfeit: ['forgery', 'fake', 'faux', 'fälschung', 'falso', 'vals', 'vervalsing'],
  paper: [
    'banknote',
    'banknotes',
    'paper money',
    'billet',
    'billets',
    'geldschein',
    'geldscheine',
    'banknoten',
    'banconota',
    'banconote',
    'billete',
    'billetes',
    'bankbiljet',
    'bankbiljetten',
    'note',
    'notes',
  ],
  other: ['autre', 'sonstiges', 'altro', 'otro', 'overig'],
  unknown: [],
};
const STATUS_WORDS: Choice = {
  kept: [
    'in collection',
    'owned',
    'have',
    'yes',
    'en collection',
    'vorhanden',
    'in collezione',
    'en colección',
    'in bezit',
  ],
  lent: ['on loan', 'prêté', 'verliehen', 'prestato', 'prestado', 'uitgeleend'],
  sold: ['vendu', 'vendue', 'verkauft', 'venduto', 'venduta', 'vendido', 'vendida', 'verkocht'],
  given: ['gifted', 'donné', 'verschenkt', 'regalato', 'regalado', 'geschonken'],
  exchanged: ['swapped', 'traded', 'échangé', 'getauscht', 'scambiato', 'cambiado', 'geruild'],
  lost: ['missing', 'stolen', 'perdu', 'verloren', 'perso', 'perdido'],
};
const PUBLISH_WORDS: Choice = {
  yes: ['y', 'public', 'oui', 'ja', 'sì', 'si', 'sí', 'x', '1'],
  unlisted: [],
  no: ['n', 'private', 'non', 'nein', 'no', 'nee', '0'],
};
const FACES_WORDS: Choice = {
  two: ['2', 'both', 'zwei', 'deux', 'due', 'dos', 'twee'],
  uniface: ['1', 'one', 'einseitig', 'uniface', 'unilaterale', 'anepígrafa', 'eenzijdig'],
  'incuse-reverse': ['incuse reverse', 'incuse'],
};
const GRADER_WORDS: Choice = {
  keeper: ['me', 'self', 'own', 'owner'],
  dealer: ['seller'],
  'third party': ['third-party'],
};

export const CHOICES: Readonly<Record<string, Choice>> = {
  kind: KIND_WORDS,
  status: STATUS_WORDS,
  publish: PUBLISH_WORDS,
  faces: FACES_WORDS,
  'graded-by': GRADER_WORDS,
}; // prettier-ignore

/** The words of the sheets for each kind. */
export const BY_KIND: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(KIND_WORDS).map(([kind, words]) => [kind, [kind, ...words]]),
);

/** One of the words the form takes, in any of the languages. */
export function readChoice(text: string, field: string): readonly Said[] {
  const word = text.trim().toLowerCase();
  const known = CHOICES[field] ?? {};
  const found = Object.entries(known).find(([one, others]) => one === word || others.includes(word))?.[0];
  if (found !== undefined) return fact(field, found);
  const sort = field === 'kind' ? kindOfSort(word) : undefined;
  if (sort !== undefined) return fact(field, sort);
  const words = Object.keys(known);
  return unread(
    field,
    `"${text}" is not one of the words this takes. Write ${words.join(', ')}, or say what it means under words: in the mapping, like ${field}: { ${formatInLine(text)}: ${words[1] ?? ''} }.`,
  );
}

/** Sorts of a kind, by the words that stand before it, or in French and Italian behind it; common practice. */
const SORTS: Choice = {
  token: [
    'bank, trade, merchant, merchants, transport, transit, tramway, railway, bus, ferry, communion, provincial, bread, dairy, milk, pub, tavern, inn',
    'market, hop, farm, toll, church, work, colliery, mining, gaming, casino, telephone, conder, 17th century, seventeenth century, 18th century, 19th century',
    'telefonico, telefonici, commerciale, commerciali, monétaire, de nécessité, de comunione, pubblicitario, de juego, comercial',
  ],
  medal: [
    'commemorative, award, prize, school, campaign, service, religious, art, historical, agricultural, annual, devotional, coronation, jubilee, sports',
    'commemorativa, commemorative, devozionale, religiosa, annuale, premio, commémorative, religieuse, conmemorativa, uniface',
  ],
  coin: [
    'ancient, hammered, milled, medieval, modern, commemorative, circulation, gold, silver, copper, bronze, siege, trade, bullion, proof',
    'antica, medievale, moderna, commemorativa, commémorative, antique, médiévale, antigua, conmemorativa',
  ],
};

/** The kind of a `bank token` or a `medaglia commemorativa`; undefined where any word of it is not known here. */
function kindOfSort(text: string): string | undefined {
  const plain = text.replace(/[\s-]+/g, ' ');
  return Object.entries(SORTS).find(([kind, lists]) => {
    const sorts = lists.flatMap((list) => list.split(', '));
    const names = BY_KIND.get(kind) ?? [];
    return names.some((name) =>
      [
        plain.endsWith(` ${name}`) && plain.slice(0, -name.length - 1),
        plain.startsWith(`${name} `) && plain.slice(name.length + 1),
      ].some((rest) => rest !== false && sorts.includes(rest)),
    );
  })?.[0];
}

/** `(einseitig)` in the column of the reverse: there is nothing on it. */
export function saysUniface(text: string, field: string): boolean {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/^\((.+)\)$/, '$1')
    .replace(/\.$/, '');
  return /^reverse (?:legend|design)$/.test(field) && ONE_SIDED.has(word);
}

/** Common words of lists in seven languages. */
const ONE_SIDED: ReadonlySet<string> = new Set(
  'einseitig, uniface, uni-face, one-sided, one sided, unifacial, unilaterale, unifaz, eenzijdig, sans revers'.split(
    ', ',
  ),
);

/** The kinds that a text names in any of its words: `Halfpenny token`, `Tokens & medals`. */
export function kindsIn(text: string): readonly string[] {
  const words = ` ${text
    .toLowerCase()
    .replace(/[^\p{L}]+/gu, ' ')
    .trim()} `;
  return [...BY_KIND]
    .filter(([kind]) => kind !== 'other' && kind !== 'unknown')
    .flatMap(([kind, names]) => (names.some((name) => name.length > 3 && words.includes(` ${name} `)) ? [kind] : []));
}

/** Several words in a cell, split by semicolons or, where there are none, by commas. */
export function readList(text: string, field: string): readonly Said[] {
  const parts = text.split(text.includes(';') ? ';' : /[,\n]/).map((part) => part.trim());
  return [{ kind: 'more', field, values: parts.filter((part) => part !== '') }];
}

/** `Oban (moneyer); Hunfrid`, or the way our own tables write it: `name: Oban, role: moneyer, on: reverse`. */
export function readMakers(text: string, role: string): readonly Said[] {
  const makers = text
    .split(/\s*;\s*/)
    .filter((part) => part !== '')
    .map((part) => {
      const [, named = '', does = '', on] = /^name: (.+), role: (.+?)(?:, on: (obverse|reverse))?$/.exec(part) ?? [];
      if (named !== '') return { name: named, role: does, ...(on === undefined ? {} : { on }) };
      const said = /^(.+?) \(([\p{L} -]+)\)$/u.exec(part);
      const isRole = ROLES.has((said?.[2] ?? '').toLowerCase());
      return { name: isRole ? (said?.[1] ?? part) : part, role: isRole ? (said?.[2] ?? role) : role };
    });
  return [{ kind: 'more', field: 'makers', values: makers }];
}

/** What somebody may have done for a piece. What else is in brackets belongs to the name: `Oban (of York)`. */
const ROLES: ReadonlySet<string> = new Set([
  'maker', 'moneyer', 'engraver', 'die-sinker', 'die sinker', 'die-cutter', 'die cutter', 'medallist', 'medalist', 'artist',
  'designer', 'sculptor', 'modeller', 'mint master', 'mintmaster', 'mint-master', 'founder', 'caster', 'chaser', 'publisher',
  'printer', 'manufacturer', 'monétaire', 'monetaire', 'graveur', 'médailleur', 'stempelschneider', 'münzmeister', 'medailleur',
  'entwurf', 'bildhauer', 'incisore', 'medaglista', 'zecchiere', 'grabador', 'medallista', 'muntmeester', 'ontwerper',
]); // prettier-ignore

/** `mint: probable, date: possible`. */
export function readSure(text: string): readonly Said[] {
  return text.split(/\s*[,;]\s*/).flatMap((part) => {
    const [field = '', certainty = ''] = part.split(/\s*:\s*/);
    const known = UNSURE_FIELDS.some((one) => one === field) && CERTAINTIES.some((one) => one === certainty);
    if (known) return fact(`sure.${field}`, certainty);
    return unread('sure', `"${part}" does not say how sure a statement is. Write it like mint: probable.`);
  });
}
