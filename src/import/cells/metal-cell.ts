import { parseFineness } from '../../core/metal/parse-fineness.ts';
import type { Said } from './cell-result.ts';
import { fact, unread } from './cell-result.ts';

/** Metals, and what else coins, tokens and medals are made of, as sheets write them; the first letters are those of printed catalogues. Common practice. */
const METALS: Readonly<Record<string, readonly string[]>> = {
  gold: ['au', 'av', 'gold', 'or', 'oro', 'goud', 'feingold', 'fine gold', 'or fin', 'oro fino', 'goldmünze'],
  'pale gold': ['pale gold', 'blassgold', 'or pâle'],
  silver: ['ag', 'ar', 'silver', 'argent', 'silber', 'argento', 'plata', 'zilver', 'prata', 'feinsilber', 'fine silver', 'sterling silver', 'argent fin', 'plata fina', 'argento fino'],
  'base silver': ['base silver', 'debased silver', 'low silver', 'bas argent', 'geringhaltiges silber'],
  electrum: ['el', 'electrum', 'électrum', 'elektron', 'elektrum', 'elettro', 'electro'],
  billon: ['bi', 'bil', 'bill', 'billon', 'mistura', 'vellón', 'biljoen'],
  copper: ['cu', 'copper', 'cuivre', 'kupfer', 'rame', 'cobre', 'koper'],
  bronze: ['br', 'bronze', 'bronzo', 'bronce', 'brons', 'bz'],
  'aluminium bronze': ['albr', 'al-br', 'cual', 'aluminium bronze', 'aluminium-bronze', 'aluminum bronze', 'aluminum-bronze', 'aluminiumbronze', 'alubronze', 'bronze-aluminium', "bronze d'aluminium", 'bronzital'],
  'nickel brass': ['nickel brass', 'nickel-brass', 'neusilbermessing', 'nickelmessing', 'laiton de nickel'],
  'nickel silver': ['nickel silver', 'german silver', 'neusilber', 'alpaka', 'alpaca', 'alpacca', 'maillechort'],
  'nordic gold': ['nordic gold', 'nordisches gold', 'or nordique', 'oro nordico', 'oro nórdico'],
  'bell metal': ['bell metal', 'bell-metal', 'glockenmetall', 'métal de cloche'],
  gunmetal: ['gunmetal', 'gun metal', 'gun-metal', 'rotguss', 'geschützmetall', 'geschützbronze'],
  'copper alloy': ['ae', 'æ', 'copper alloy', 'copper-alloy', 'kupferlegierung', 'alliage de cuivre'],
  brass: ['brass', 'laiton', 'messing', 'ottone', 'latón', 'latten', 'ms'],
  orichalcum: ['orichalcum', 'orichalque', 'oricalco'],
  tombac: ['tombac', 'tombak', 'tombacco'],
  potin: ['potin', 'potin gaulois'],
  'cupro-nickel': ['cn', 'cuni', 'cu-ni', 'cu/ni', 'cupro-nickel', 'cupronickel', 'copper-nickel', 'copper nickel', 'kupfernickel', 'kupfer-nickel', 'cupronichel', 'cuproníquel', 'kopernikkel'],
  nickel: ['ni', 'nickel', 'nichel', 'níquel', 'nikkel'],
  aluminium: ['al', 'alu', 'aluminium', 'aluminum', 'alluminio', 'aluminio'],
  zinc: ['zn', 'zinc', 'zink', 'zinco', 'kriegsmetall', 'kriegsmet'],
  iron: ['fe', 'iron', 'fer', 'eisen', 'ferro', 'hierro', 'ijzer'],
  'cast iron': ['cast iron', 'eisenguss', 'gusseisen', 'fonte de fer'],
  steel: ['steel', 'acier', 'stahl', 'acciaio', 'acero', 'staal'],
  'stainless steel': ['stainless steel', 'edelstahl', 'acier inoxydable', 'acmonital', 'acciaio inossidabile', 'acero inoxidable'],
  lead: ['pb', 'lead', 'plomb', 'blei', 'piombo', 'plomo', 'lood'],
  tin: ['sn', 'tin', 'étain', 'zinn', 'stagno', 'estaño'],
  pewter: ['pewter', 'peltro', 'peltre'],
  platinum: ['pt', 'platinum', 'platine', 'platin', 'platino', 'platina'],
  palladium: ['pd', 'palladium', 'palladio'],
  'white metal': ['wm', 'white metal', 'weissmetall', 'weißmetall', 'métal blanc', 'metallo bianco', 'metal blanco'],
  bimetallic: ['bimetallic', 'bi-metallic', 'bimetal', 'bi-metal', 'bimetall', 'bi-metall', 'bimétallique', 'bimetallico', 'bimetálica', 'bimetálico'],
  'Böttger stoneware': ['böttgersteinzeug', 'böttger-steinzeug', 'böttgerst', 'böttger stoneware', 'grès de böttger'],
  porcelain: ['porcelain', 'porzellan', 'porcelaine', 'porcellana', 'porcelana', 'biskuitporzellan'],
  clay: ['clay', 'terracotta', 'terrakotta', 'ton', 'terre cuite'],
  glass: ['glass', 'glas', 'verre', 'vetro', 'vidrio'],
  leather: ['leather', 'leder', 'cuir', 'cuoio', 'cuero'],
  wood: ['wood', 'holz', 'bois', 'legno', 'madera'],
  plastic: ['plastic', 'kunststoff', 'plastique', 'plastica', 'plástico'],
  fibre: ['fibre', 'fiber', 'vulcanised fibre', 'vulkanfiber'],
}; // prettier-ignore

/** What a metal was covered with, as it is put behind that metal. Common practice. */
const COVERS: Readonly<Record<string, readonly string[]>> = {
  gilt: ['verg', 'vergoldet', 'feuervergoldet', 'gilt', 'gilded', 'gold plated', 'gold-plated', 'doré', 'dorée', 'dorato', 'dorata', 'dorado', 'dorada', 'verguld'],
  'silver-plated': ['vers', 'versilb', 'versilbert', 'silver plated', 'silver-plated', 'silvered', 'argenté', 'argentée', 'argentato', 'argentata', 'plateado', 'plateada', 'verzilverd'],
  'silver-washed': ['silver washed', 'silver-washed', 'silver wash', 'silbersud'],
  'nickel-plated': ['vernickelt', 'nickel plated', 'nickel-plated', 'nickelé', 'nichelato'],
  'copper-plated': ['verkupfert', 'kupferplattiert', 'copper plated', 'copper-plated', 'cuivré'],
  'brass-plated': ['messingplattiert', 'brass plated', 'brass-plated'],
  tinned: ['verzinnt', 'tinned', 'tin-plated', 'étamé'],
  'zinc-plated': ['verzinkt', 'galvanised', 'galvanized', 'zinc plated', 'zinc-plated'],
  bronzed: ['bronziert', 'bronzed', 'bronzé'],
  plated: ['plated', 'plattiert', 'plaqué'],
  'fourrée': ['fourrée', 'fourree', 'fourré', 'subaerat', 'suberat', 'subaerate', 'gefüttert'],
}; // prettier-ignore

/** What no metal is and paper money is made of. */
const PAPER = new Set(['paper', 'papier', 'carta', 'papel', 'polymer', 'pappe', 'karton', 'card', 'cardboard']);

function byWord(names: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(names).flatMap(([name, words]) => [name, ...words].map((word) => [word, name] as const)),
  );
}

const METAL_BY_WORD = byWord(
  Object.fromEntries(Object.entries(METALS).map(([name, words]) => [name, [name.toLowerCase(), ...words]])),
);
const COVER_BY_WORD = byWord(COVERS);
const COVER = `(${[...COVER_BY_WORD.keys()].toSorted((a, b) => b.length - a.length).join('|')})`;
const COVER_AFTER = new RegExp(`^(.+?)[,;/ ]+\\(?${COVER}\\.?\\)?$`, 'iu');
const COVER_BEFORE = new RegExp(`^${COVER} (.+)$`, 'iu');
const UNSURE = /\s*(?:\(\?\)|\?)$/;

/**
 * A metal in the words of the form where it is known, what it was covered with, and the fineness that stands beside it: `Ag 925`,
 * `Cu, verg.`, `Feingold 999,9`. A word that is not known is told of; the keeper's own, from the mapping, stands as it is.
 */
export function readMetal(text: string, isOwnWord = false): readonly Said[] {
  const plain = text.replace(UNSURE, '').trim();
  const sure: readonly Said[] = UNSURE.test(text) ? fact('sure.metal', 'possible') : [];
  const figures = plain.replace(',', '.');
  if (!/\p{L}/u.test(plain) && parseFineness(figures).ok) return fact('fineness', figures);
  const { under, cover } = uncovered(plain);
  const [words, fineness] = withFineness(under);
  const metal = metalNamed(words) ?? oneOfAll(words);
  if (metal !== null) {
    const facts = fact('metal', cover === undefined ? metal : `${metal}, ${cover}`);
    return [...facts, ...(fineness === null ? [] : fact('fineness', fineness)), ...sure];
  }
  if (isOwnWord) return [...fact('metal', plain), ...sure];
  return unread('metal', whyNot(plain));
}

/** What stands before or behind a figure that is a fineness, and the figure; the whole where there is none. */
function withFineness(plain: string): readonly [metal: string, fineness: string | null] {
  const [, before, metalAfter] = /^([\d.,/ ]+(?:‰|%|ct|fine)?) ?(\p{L}.*)$/iu.exec(plain) ?? [];
  const [, metalBefore, after] = /^(\p{L}[^\d.(]*?)[.,]? ?\(?([.\d][\d.,/ ]*(?:‰|%|ct|fine)?)\)?$/iu.exec(plain) ?? [];
  const fineness = (before ?? after ?? '').trim().replace(',', '.');
  return parseFineness(fineness).ok ? [(metalAfter ?? metalBefore ?? '').trim(), fineness] : [plain, null];
}

export function metalNamed(text: string): string | null {
  return METAL_BY_WORD.get(plainWord(text)) ?? null;
}

function plainWord(text: string): string {
  return text.toLowerCase().replace(/\.$/, '').replace(/\s+/g, ' ').trim();
}

/** `Cu vers.`, `gilt bronze`: the metal, and what it was covered with. Of silver-plated alone nobody knows what is under it. */
function uncovered(text: string): { readonly under: string; readonly cover?: string | undefined } {
  if (COVER_BY_WORD.has(plainWord(text))) return { under: text };
  const [, before, after] = COVER_AFTER.exec(text) ?? [];
  const [, first, behind] = before === undefined ? (COVER_BEFORE.exec(text) ?? []) : [];
  const cover = COVER_BY_WORD.get((after ?? first ?? '').toLowerCase());
  return { under: before ?? behind ?? text, cover };
}

/** `Zink/Kriegsmet.`: two words for one metal. */
function oneOfAll(text: string): string | null {
  const [first = null, ...others] = new Set(text.split(/\s*\/\s*/).map(metalNamed));
  return others.length === 0 ? first : null;
}

function whyNot(text: string): string {
  if (PAPER.has(plainWord(text)))
    return `"${text}" is no metal. Leave the metal empty, and say that the piece is paper money in a column of kinds: paper.`;
  if (text.split('/').every((part) => metalNamed(part.trim()) !== null))
    return `"${text}" names several metals. Write the one it is, the alloy, or bimetallic.`;
  return `"${text}" is no metal known here. Write it as copper, bronze or silver is written, or say what it means under words: in the mapping, like metal: { ${JSON.stringify(text)}: white metal }.`;
}
