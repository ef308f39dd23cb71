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

/**
 * The name a file or folder gets from a name or number: `Edward I` is `edward-i`, `1987.46.35` is `1987-46-35`. The same
 * text always gives the same name; where no letter of it can be written plainly, its letters are told by their numbers.
 */
export function fileId(name: string): string {
  const id = plainLetters(name)
    .replace(/['’.](?=[a-z])/g, (sign, at: number, whole: string) => (/[a-z]/.test(whole[at - 1] ?? '') ? '' : sign))
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, LONGEST)
    .replace(/-+$/, '');
  if (id !== '') return id;
  const letters = Array.from(name.normalize('NFC').trim(), (letter) => letter.codePointAt(0)?.toString(16) ?? '');
  return `u${letters.join('-').slice(0, LONGEST)}`.replace(/-+$/, '');
}

/** A folder's name stays short enough for every disk. */
const LONGEST = 80;

/** The first of `id`, `id-2`, `id-3` … that is not taken. */
export function freeId(id: string, isTaken: (id: string) => boolean): string {
  if (!isTaken(id)) return id;
  let count = 2;
  while (isTaken(`${id}-${count}`)) count += 1;
  return `${id}-${count}`;
}
