import type { Outcome } from '../outcome.ts';
import { refuse } from '../outcome.ts';
import { parseReferences } from './parse-reference.ts';
import type { Reference } from './reference.ts';

/** A book that open data numbers its types by: the ids that begin so, and how the rest is cited. */
type Corpus = {
  readonly id: RegExp;
  readonly book: string;
  readonly cite: (parts: readonly string[]) => string | null;
};

/**
 * Volumes of *Roman Imperial Coinage* by the number in an id, with the edition where it is the second. From memory; checked
 * against the titles of 1,500 coins of one museum.
 */
const VOLUMES: Readonly<Record<string, string>> = {
  '1(2)': 'I²', '2': 'II', '2_1(2)': 'II.1²', '2_3(2)': 'II.3²', '3': 'III', '4': 'IV', '5': 'V', '6': 'VI', '7': 'VII', '8': 'VIII', '9': 'IX', '10': 'X',
}; // prettier-ignore

/** Volumes in which the numbers begin anew under each mint; in the tenth they run through. */
const BY_MINT: ReadonlySet<string> = new Set(['6', '7', '8', '9']);
const THROUGH: ReadonlySet<string> = new Set(['10']);

const MINTS = named(
  'alex Alexandria, anch Antioch, aq Aquileia, ar Arles, carth Carthage, cnp Constantinople, cyz Cyzicus, her Heraclea',
  'lon London, lug Lyons, nic Nicomedia, ost Ostia, rom Rome, serd Serdica, sir Sirmium, sis Siscia, thes Thessalonica',
  'tic Ticinum, tri Trier',
);

/** In whose name, where the numbers begin anew under each ruler. */
const RULERS = named(
  'aug Augustus, tib Tiberius, gai Gaius, cl Claudius, ner Nero, gal Galba, ot Otho, vit Vitellius, ves Vespasian, tit Titus',
  'dom Domitian, tr Trajan, hdn Hadrian, ant Antoninus Pius, m_aur Marcus Aurelius, com Commodus, pert Pertinax',
  'dj Didius Julianus, pn Pescennius Niger, ca Clodius Albinus, ss Septimius Severus, crl Caracalla, ge Geta, mcs Macrinus',
  'el Elagabalus, sa Severus Alexander, max_i Maximinus, mxs Maximus, gor_i Gordian I, gor_ii Gordian II, balb Balbinus',
  'pup Pupienus, gor_iii_caes Gordian III Caesar, gor_iii Gordian III, ph_i Philip I, pac Pacatian, tr_d Trajan Decius',
  'tr_g Trebonianus Gallus, vo Volusian, aem Aemilian, uran_ant Uranius Antoninus, val_i Valerian I, val_ii Valerian II',
  'gall(1) Gallienus Joint Reign, gall(2) Gallienus Sole Reign, sala(1) Salonina Joint Reign, sala(2) Salonina Sole Reign',
  'marin Mariniana, sals Saloninus, mac_ii Macrianus II, qu Quintillus, cg Claudius Gothicus, aur Aurelian, seva Severina',
  'tac Tacitus, fl Florian, pro Probus, post Postumus, lae Laelianus, mar Marius, vict Victorinus, tet_i Tetricus I',
  'all Allectus, cara Carausius',
);
/** Ids that name two rulers in two volumes. */
const IN_VOLUME: Readonly<Record<string, string>> = { '2 ner': 'Nerva', '2_1(2) ner': 'Nerva' };

const CORPORA: readonly Corpus[] = [
  { id: /^ric\.([^.]+)\.([^.]+)\.(\d+[A-Za-z]{0,2})(?:_([a-z]+))?$/, book: 'RIC', cite: inImperialCoinage },
  { id: /^rrc-(\d+)\.(\d+[a-z]?)$/, book: 'RRC', cite: ([issue = '', coin = '']) => `${issue}/${coin}` },
  { id: /^sc\.1\.(\d+(?:\.\d+)?[a-z]?)$/, book: 'SC', cite: ([number = '']) => number },
  { id: /^cpe\.1_1\.(\d+[a-z]?)$/, book: 'CPE', cite: ([number = '']) => number },
  { id: /^price\.(\d+[a-z]?)$/, book: 'Price', cite: ([number = '']) => number },
];
/** The address of a type in open data, or its id alone: `ric.5.gall(1).209`. */
const ID = /^(?:https?:\/\/numismatics\.org\/[a-z]+\/id\/)?((?:ric|sc|cpe|price)\.\S+|rrc-\S+)$/;

/** The book and the entry that an id of open data means; null for a text that is none. */
export function readOpenDataId(text: string): Outcome<Reference> | null {
  const id = ID.exec(text.trim())?.[1];
  if (id === undefined) return null;
  for (const { id: form, book, cite } of CORPORA) {
    const parts = form.exec(id)?.slice(1);
    const cited = parts === undefined ? null : cite(parts);
    if (cited === null) continue;
    const read = parseReferences(`${book} ${cited}`, {
      works: [{ id: book.toLowerCase(), names: [book] }],
      lettered: true,
    });
    const [only, ...more] = read.ok ? read.value : [];
    if (only !== undefined && more.length === 0) return { ok: true, value: only };
  }
  return refuse(
    `"${id}" is the id of a type in open data, and the book it stands for is not sure. Write the book and the number as printed there.`,
  );
}

/** `V Gallienus Joint Reign 209`, `II Trajan 575 (as)`; null where the volume or its heading is not known. */
function inImperialCoinage([volume = '', heading = '', number = '', denomination]: readonly string[]): string | null {
  const [roman, under] = [VOLUMES[volume], headingOf(volume, heading)];
  if (roman === undefined || under === null) return null;
  const beside = denomination === undefined ? '' : ` (${denomination})`;
  return `${[roman, under, number].filter((part) => part !== '').join(' ')}${beside}`;
}

function headingOf(volume: string, heading: string): string | null {
  if (THROUGH.has(volume)) return '';
  const names = BY_MINT.has(volume) ? MINTS : RULERS;
  return IN_VOLUME[`${volume} ${heading}`] ?? names.get(heading) ?? null;
}

/** `alex Alexandria, anch Antioch` as a table. */
function named(...lines: readonly string[]): ReadonlyMap<string, string> {
  return new Map(
    lines.flatMap((line) =>
      line.split(', ').map((entry) => {
        const at = entry.indexOf(' ');
        return [entry.slice(0, at), entry.slice(at + 1)] as const;
      }),
    ),
  );
}
