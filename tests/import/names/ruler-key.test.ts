import { describe, expect, test } from 'vitest';
import { rulerKey } from '../../../src/import/names/ruler-key.ts';

/*
 * The forms of the names are those of the languages, common practice: Ier and 1er for the first in French, the point after a numeral in
 * German, ordinals in full in Spanish and Italian. Edward, Henry and Charles of England as the lists of the trade shorten them, from memory.
 */
const ONE_RULER: readonly (readonly string[])[] = [
  ['Edward I', 'EDWARD I', 'Edw. I', 'Edward the First', 'King Edward I.', 'Edward 1st', 'Édouard Ier', 'Edouard 1er', 'Eduard I.', 'Eduard der Erste', 'Eduardo I', 'Eduardo Primero', 'Edoardo I', 'Edoardo primo', 'Eduard de Eerste', 'Edwardus I'],
  ['Henry VIII', 'Hen. VIII', 'Henry the Eighth', 'Henri VIII', 'Heinrich VIII.', 'Enrico VIII', 'Enrique VIII', 'Enrique octavo', 'Hendrik VIII', 'Heinrich der Achte'],
  ['Charles the Great', 'Karl der Große', 'Karl der Grosse', 'Carlo Magno', 'Karel de Grote', 'Charlemagne'],
  ['Charles II', 'Chas. II', 'Karl II.', 'Carlos II', 'Carlo II', 'Carlos Segundo', 'Karel II'],
  ['William III', 'Wm. III', 'Willem III', 'Guillaume III', 'Wilhelm III.', 'Guillermo III'],
  ['Peter the Great', 'Peter der Große', 'Pierre le Grand', 'Pietro il Grande', 'Pedro el Grande', 'Peter de Grote'],
  ['Louis XIV', 'Ludwig XIV.', 'Luigi XIV', 'Luis XIV', 'Lodewijk XIV', 'Louis 14'],
  ['Francis I', 'François Ier', 'Franz I.', 'Francesco I', 'Francisco I', 'Frans I', 'Emperor Francis I', 'Kaiser Franz I.'],
  ['Philip IV', 'Philippe IV', 'Philipp IV.', 'Felipe IV', 'Filippo IV', 'Filips IV', 'Felipe Cuarto'],
  ['Æthelred II', 'Aethelred II', 'AETHELRED II'],
]; // prettier-ignore

describe('one ruler, whichever way the name is spelled', () => {
  test.for(ONE_RULER.map((names) => ({ names, first: names[0] ?? '' })))('$first', ({ names }) => {
    expect(names.map((name) => ({ name, key: rulerKey(name) }))).toEqual(
      names.map((name) => ({ name, key: rulerKey(names[0] ?? '') })),
    );
  });
});

describe('two rulers are two', () => {
  const pairs: readonly (readonly [string, string])[] = [
    ['Edward I', 'Edward II'],
    ['Edward I', 'Edward'],
    ['Edward I', 'Edgar'],
    ['Mary I', 'Mary and Philip'],
    ['Henry IV', 'Henry VI'],
    ['Louis IX', 'Louis XI'],
    ['Peter I', 'Peter the Great'],
    ['Charles the Bald', 'Charles the Bold'],
    ['Constantine I', 'Constantius I'],
    ['Philip II of Spain', 'Philip II'],
    ['Victoria', 'Victor'],
    ['Ed. I', 'Edward I'],
  ];
  test.for(pairs)('%s and %s', ([one, other]) => {
    expect(rulerKey(one)).not.toBe(rulerKey(other));
  });
});
