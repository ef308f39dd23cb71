/** Letters that no decomposition turns into plain ones, as they are usually written without them. */
const PLAIN: Readonly<Record<string, string>> = {
  æ: 'ae', œ: 'oe', ð: 'd', þ: 'th', ø: 'o', ß: 'ss', ł: 'l', đ: 'd', ħ: 'h', ı: 'i', ĸ: 'k', ŋ: 'ng', ƿ: 'w',
  α: 'a', β: 'b', γ: 'g', δ: 'd', ε: 'e', ζ: 'z', η: 'e', θ: 'th', ι: 'i', κ: 'k', λ: 'l', μ: 'm', ν: 'n', ξ: 'x', ο: 'o',
  π: 'p', ρ: 'r', σ: 's', ς: 's', τ: 't', υ: 'y', φ: 'ph', χ: 'ch', ψ: 'ps', ω: 'o',
  а: 'a', б: 'b', в: 'v', г: 'g', д: 'd', е: 'e', ж: 'zh', з: 'z', и: 'i', к: 'k', л: 'l', м: 'm', н: 'n', о: 'o', п: 'p',
  р: 'r', с: 's', т: 't', у: 'u', ф: 'f', х: 'kh', ц: 'ts', ч: 'ch', ш: 'sh', щ: 'shch', ъ: '', ы: 'y', ь: '', э: 'e', ю: 'yu',
  я: 'ya', і: 'i', ѣ: 'e', ѳ: 'f', є: 'e',
}; // prettier-ignore

/** A name in small plain letters: without accents, ligatures undone, Greek and Cyrillic letters by their usual ones. */
export function plainLetters(name: string): string {
  const bare = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return bare.replace(/[^\p{ASCII}]/gu, (letter) => PLAIN[letter] ?? letter);
}

/** Names that Windows keeps for devices, and names that every object of the language has. */
const RESERVED = new Set(
  (
    'con prn aux nul com0 com1 com2 com3 com4 com5 com6 com7 com8 com9 lpt0 lpt1 lpt2 lpt3 lpt4 lpt5 lpt6 lpt7 lpt8 lpt9 conin conout ' +
    'constructor prototype'
  ).split(' '),
);

/** A folder's name stays short enough for every disk and address. */
export const LONGEST_NAME = 80;

/** Whether a name is one that some system cannot give to a file. */
export function isReserved(id: string): boolean {
  return RESERVED.has(id);
}

/**
 * The name a file, folder or address gets from a name or number: `Edward I` is `edward-i`, `1987.46.35` is `1987-46-35`. The
 * same text always gives the same name, which is never empty nor longer than 80 letters, and one that every system takes; where
 * no letter of it can be written plainly, its letters are told by their numbers. Of two long names that begin alike each keeps
 * its own, by a sum of its letters at the end.
 */
export function fileId(name: string): string {
  const id = plainLetters(name)
    .replace(/['’.](?=[a-z])/g, (sign, at: number, whole: string) => (/[a-z]/.test(whole[at - 1] ?? '') ? '' : sign))
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const letters = Array.from(name.normalize('NFC').trim(), (letter) => letter.codePointAt(0)?.toString(16) ?? '');
  const whole = id === '' ? `u${letters.join('-')}`.replace(/-+$/, '') : id;
  if (isReserved(whole)) return `${whole}-1`;
  if (whole.length <= LONGEST_NAME) return whole;
  return `${whole.slice(0, LONGEST_NAME - 9).replace(/-+$/, '')}-${sumOf(name.normalize('NFC'))}`;
}

/** Eight figures that tell long names apart: FNV-1a, 32 bits (Fowler, Noll and Vo, 1991). */
function sumOf(text: string): string {
  let sum = 0x811c9dc5;
  for (const letter of text) sum = Math.imul(sum ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return sum.toString(16).padStart(8, '0');
}

/** The first of `id`, `id-2`, `id-3` … that is not taken. */
export function freeId(id: string, isTaken: (id: string) => boolean): string {
  if (!isTaken(id)) return id;
  let count = 2;
  while (isTaken(`${id}-${count}`)) count += 1;
  return `${id}-${count}`;
}
