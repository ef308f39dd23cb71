import type { Meaning } from '../columns/mapping.ts';

/** Words for nothing, in the languages of the sheets, and which of the three blanks each of them is. */
const WORDS: Readonly<Record<Meaning, readonly string[]>> = {
  unknown: [
    '?', '??', '???', '(?)', 'unknown', 'unkn.', 'not known', 'uncertain', 'inconnu', 'inconnue', 'incertain', 'unbekannt', 'unbek.',
    'ungewiss', 'unsicher', 'sconosciuto', 'sconosciuta', 'ignoto', 'incerto', 'desconocido', 'desconocida', 'incierto', 'incierta',
    'onbekend', 'onzeker',
  ],
  none: [
    'none', 'n/a', 'not applicable', 'aucun', 'aucune', 'néant', 'sans objet', 'keine', 'keiner', 'kein', 'entfällt', 'entf.',
    'nessuno', 'nessuna', 'ninguno', 'ninguna', 'no procede', 'geen', 'n.v.t.',
  ],
  'not recorded': [
    '-', '--', '---', '–', '—', '.', '..', '…', '/', '_', 'na', 'n.a.', '#n/a', 'k.a.', 'k/a', 'keine angabe', 'keine ang.', 'n.r.', 'n.b.', 'n.c.', 'tbd', 'tbc',
    'not recorded', 'not measured', 'not weighed', 'nicht erfasst', 'non renseigné', 'non pesé', 'no consta', 'niet genoteerd',
  ],
}; // prettier-ignore

const MEANT: ReadonlyMap<string, Meaning> = new Map(
  (['unknown', 'none', 'not recorded'] as const).flatMap((meaning) =>
    WORDS[meaning].map((word) => [word, meaning] as const),
  ),
);

/** Words and marks for what is in the row above. `s.o.` is the German *siehe oben*; in a French list, *sans objet*, the mapping says so. */
const AS_ABOVE: ReadonlySet<string> = new Set([
  'ditto', 'do', 'dto', 'idem', 'id', 'same', 'same as above', 'as above', 'as before', 'see above', 'desgl', 'dgl', 'desgleichen',
  'dasselbe', 'wie oben', 'wie vor', 'wie vorher', 'wie zuvor', 's.o', 'comme ci-dessus', 'ci-dessus', 'le même', 'come sopra', 'c.s',
  'lo mismo', 'igual', 'als boven', 'idem dito', '"', '″', '〃', '„', '“', '”', "''", ',,', '-"-', '- " -', "-''-", '-„-', '" "',
]); // prettier-ignore

/** A word as the lists here have it: `n. a.` is `n.a.`. */
function plainWord(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/(?<=\p{L}\.) (?=\p{L})/gu, '');
}

/** Whether a cell says no more than that it is as the one above. */
export function isAsAbove(text: string): boolean {
  const word = plainWord(text);
  return AS_ABOVE.has(word) || (/\.$/.test(word) && AS_ABOVE.has(word.slice(0, -1)));
}

/** Which blank a cell is; null when it says something. The keeper's own words go first. */
export function blankIn(text: string, own: Readonly<Record<string, Meaning>>): Meaning | null {
  const word = text.trim().toLowerCase();
  if (word === '') return 'not recorded';
  const kept = Object.entries(own).find(([each]) => each.trim().toLowerCase() === word)?.[1];
  return kept ?? MEANT.get(word) ?? MEANT.get(plainWord(text)) ?? null;
}
