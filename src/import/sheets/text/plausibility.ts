/** Letters of the languages that each script is mostly met in here, legends included; the others of it are rare. */
const COMMON = new Set(
  'éèàâêîôûçëïüöäßñáíóúåæøÉÈÀÇÖÜÄÑÁÍÓÚÅÆØÞþÐðœŒÂÊÎÔãõ' +
    'łńśźżćąęŁŚŻŹĆšžčřěůýŠŽČŘďťňľĺőűŐŰţşăŢŞĂđĐğıİĞ' +
    'оеаинтсрвлкмдпуяьыгзбчйхжшюцщэфёъОЕАИНТСРВЛКМДПУЯГЗБЧЙХЖШЮЦЩЭФ' +
    'αοιετσνηυρπκμλωςγδθχφβξζψάέήίόύώΑΟΙΕΤΣΝΗΥΡΠΚΜΛΩΓΔΘΧΦΒΞΖΨΆΈΉΊΌΎΏ',
);
/** Signs that people type or their programs put in. */
const SIGNS = new Set('£€©®°½¼¾×±§•™«»–—‘’“”„…‚·²³ªº\u00a0µ№‰¿¡');
const VOWELS = /[аеёиоуыэюяіїєαεηιουωάέήίόύώϊϋΐΰ]/iu;

/** How far lines read as words people write: 0 not at all, 1 wholly. Each sign above 127 counts once. */
export function plausibility(lines: readonly string[]): number {
  let sum = 0;
  let count = 0;
  for (const line of lines) {
    for (const { 0: sign, index } of line.matchAll(/[^\0-\x7f]/gu)) {
      count += 1;
      sum += weightOf(sign, line, index);
    }
  }
  return count === 0 ? 0 : sum / count;
}

function weightOf(sign: string, line: string, at: number): number {
  const before = line[at - 1] ?? ' ';
  const after = line[at + sign.length] ?? ' ';
  if (!/[\p{L}\p{M}]/u.test(sign)) return weightOfSign(sign, before, after);
  if (/\d/.test(before) || /\d/.test(after)) return 0.1;
  const isLower = /\p{Ll}/u.test(sign);
  // A capital inside a word written small, or the other way round.
  if (/\p{Lu}/u.test(sign) && /\p{Ll}/u.test(before)) return 0;
  if (isLower && (/\p{Lu}/u.test(after) || (/\p{Lu}/u.test(before) && /\p{Lu}/u.test(line[at - 2] ?? ' ')))) return 0.1;
  const word = wordAt(line, at);
  const script = scriptOf(sign);
  if (word.match(/\p{L}/gu)?.some((letter) => scriptOf(letter) !== script)) return 0;
  if (script === 'latin') {
    // Three foreign letters in a row are another alphabet, misread.
    if (/[^\0-\x7f]{3}/u.test(word)) return 0.1;
  } else if (script !== 'arabic' && word.length > 3 && !VOWELS.test(word)) return 0.3;
  return script === 'arabic' || COMMON.has(sign) ? 1 : 0.6;
}

function weightOfSign(sign: string, before: string, after: string): number {
  const isInWord = /\p{L}/u.test(before) && /\p{L}/u.test(after);
  if (isInWord) return sign === '’' || sign === '·' || sign === '–' ? 1 : sign === '‘' ? 0.4 : 0;
  // Signs come one by one; a run of them is a word of another alphabet, misread.
  if (/[^\0-\x7f\p{L}\s]/u.test(after) && !/[»”’“‘«…]/.test(after + sign)) return 0.1;
  return SIGNS.has(sign) ? 1 : 0.3;
}

function wordAt(line: string, at: number): string {
  let from = at;
  let to = at;
  while (from > 0 && at - from < 40 && /[\p{L}\p{M}]/u.test(line[from - 1] ?? '')) from -= 1;
  while (to < line.length && to - at < 40 && /[\p{L}\p{M}]/u.test(line[to] ?? '')) to += 1;
  return line.slice(from, to);
}

function scriptOf(letter: string): 'latin' | 'cyrillic' | 'greek' | 'arabic' | 'other' {
  if (/\p{Script=Latin}/u.test(letter)) return 'latin';
  if (/\p{Script=Cyrillic}/u.test(letter)) return 'cyrillic';
  if (/\p{Script=Greek}/u.test(letter)) return 'greek';
  return /\p{Script=Arabic}/u.test(letter) ? 'arabic' : 'other';
}
