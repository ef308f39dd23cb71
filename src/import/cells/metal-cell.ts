import { parseFineness } from '../../core/metal/parse-fineness.ts';
import type { Said } from './cell-result.ts';
import { fact } from './cell-result.ts';

/** Metals as sheets write them; the first letters are those of printed catalogues. Common practice. */
const METALS: Readonly<Record<string, readonly string[]>> = {
  gold: ['au', 'av', 'gold', 'or', 'oro', 'goud'],
  silver: ['ag', 'ar', 'silver', 'argent', 'silber', 'argento', 'plata', 'zilver'],
  electrum: ['el', 'electrum', 'électrum', 'elektron', 'elektrum', 'elettro', 'electro'],
  billon: ['bi', 'bil', 'bill', 'billon', 'mistura', 'vellón', 'biljoen'],
  copper: ['cu', 'copper', 'cuivre', 'kupfer', 'rame', 'cobre', 'koper'],
  bronze: ['br', 'bronze', 'bronzo', 'bronce', 'brons'],
  'copper alloy': ['ae', 'æ', 'copper alloy', 'copper-alloy', 'kupferlegierung', 'alliage de cuivre'],
  brass: ['brass', 'laiton', 'messing', 'ottone', 'latón'],
  orichalcum: ['orichalcum', 'orichalque', 'oricalco'],
  'cupro-nickel': ['cn', 'cuni', 'cu-ni', 'cupro-nickel', 'cupronickel', 'kupfernickel', 'kupfer-nickel', 'cupronichel', 'cuproníquel', 'kopernikkel'],
  nickel: ['ni', 'nickel', 'nichel', 'níquel', 'nikkel'],
  aluminium: ['al', 'aluminium', 'aluminum', 'alluminio', 'aluminio'],
  zinc: ['zn', 'zinc', 'zink', 'zinco'],
  iron: ['fe', 'iron', 'fer', 'eisen', 'ferro', 'hierro', 'ijzer'],
  steel: ['steel', 'acier', 'stahl', 'acciaio', 'acero', 'staal'],
  lead: ['pb', 'lead', 'plomb', 'blei', 'piombo', 'plomo', 'lood'],
  tin: ['sn', 'tin', 'étain', 'zinn', 'stagno', 'estaño'],
  pewter: ['pewter', 'peltro', 'peltre'],
  platinum: ['pt', 'platinum', 'platine', 'platin', 'platino', 'platina'],
  'white metal': ['wm', 'white metal', 'weissmetall', 'weißmetall', 'métal blanc', 'metallo bianco', 'metal blanco'],
}; // prettier-ignore

const BY_WORD: ReadonlyMap<string, string> = new Map(
  Object.entries(METALS).flatMap(([metal, words]) => words.map((word) => [word, metal] as const)),
);

/** A metal in the words of the form where it is known, and the fineness that stands beside it: `Ag 925`, `925 Silber`. */
export function readMetal(text: string): readonly Said[] {
  const doubtful = /\s*(?:\(\?\)|\?)$/.test(text);
  const plain = text.replace(/\s*(?:\(\?\)|\?)$/, '').trim();
  const sure: readonly Said[] = doubtful ? fact('sure.metal', 'possible') : [];
  const figures = plain.replace(',', '.');
  if (!/\p{L}/u.test(plain) && parseFineness(figures).ok) return fact('fineness', figures);
  const known = metalNamed(plain);
  if (known !== null) return [...fact('metal', known), ...sure];
  const [, before, metalAfter] = /^([\d.,/ ]+(?:‰|%|ct|fine)?) ?(\p{L}.*)$/iu.exec(plain) ?? [];
  const [, metalBefore, after] = /^(\p{L}[^\d.(]*?) ?\(?([.\d][\d.,/ ]*(?:‰|%|ct|fine)?)\)?$/iu.exec(plain) ?? [];
  const metal = metalNamed(metalAfter ?? metalBefore ?? '');
  const fineness = (before ?? after ?? '').trim().replace(',', '.');
  if (metal === null || !parseFineness(fineness).ok) return [...fact('metal', plain), ...sure];
  return [...fact('metal', metal), ...fact('fineness', fineness), ...sure];
}

export function metalNamed(text: string): string | null {
  return BY_WORD.get(text.toLowerCase().replace(/\.$/, '').trim()) ?? null;
}
