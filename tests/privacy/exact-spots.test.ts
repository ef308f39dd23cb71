import { expect, test } from 'vitest';
import { exactSpotIn, houseIn, streetsIn } from '../../src/privacy/exact-spots.ts';
import { readCabinet } from '../../src/catalogue/read-cabinet.ts';
import { findRecordRemarks, saleRemarks } from '../../src/privacy/exact-in-text.ts';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';

const PENNY = 'pieces/plain-penny/piece.md';

/** Ways to write one place. The forms are those of the sources named; the figures are invented. */
const SPOTS: readonly (readonly [source: string, text: string])[] = [
  ['Ordnance Survey, guide to the National Grid', 'SE 603 523'],
  ['Ordnance Survey', 'SE603523'],
  ['Ordnance Survey', 'SE 60300 52300'],
  ['Ordnance Survey, in small letters', 'se 603 523'],
  ['Ordnance Survey, in small letters run together', 'sp513062'],
  ['Ordnance Survey, otherwise parted', 'SE-603-523'],
  ['Ordnance Survey, with no-break blanks', 'SE\u00a0603\u2009523'],
  ['Ordnance Survey, eastings and northings', 'E 460300 N 452300'],
  ['Ordnance Survey, eastings and northings', 'Easting 460300, Northing 452300'],
  ['Ordnance Survey, figures alone', '460300, 452300 (OSGB)'],
  ['Irish Grid', 'O 15904 34671'],
  ['DMA TM 8358.1, MGRS', '30U WF 12345 67890'],
  ['DMA TM 8358.1, MGRS', '30UWF1234567890'],
  ['DMA TM 8358.1, UTM', '30U 612345 5967890'],
  ['the German Gauss-Krüger grid', 'R 3456789 H 5678901'],
  ['the same by its name', 'Gauß-Krüger 3528123 5771456'],
  ['a register of land, from memory', 'Flurstück 112/3 der Flur 7'],
  ['a register of land', 'Flst. Nr. 112'],
  ['a register of land', 'parcelle cadastrale ZB112'],
  ['a register of land', 'la parcelle n° 112'],
  ['a register of land', 'polígono 7, parc. 112'],
  ['a register of land', 'perceel K 112'],
  ['a register of land', 'particella 112'],
  ['swisstopo, LV95', "2'600'123 / 1'200'456"],
  ['open location code', '9C5WXW5C+2F'],
  ['open location code, short', 'XW5C+2F, York'],
  ['ISO 6709, degrees', '53.95812, -1.08034'],
  ['ISO 6709, with a true minus', '53.95812, \u22121.08034'],
  ['ISO 6709, with letters', '53.95812° N 1.08034° W'],
  ['ISO 6709, letters before', 'N53.95812 W1.08034'],
  ['ISO 6709, decimal commas', '53,95812 N, 1,08034 W'],
  ['ISO 6709, seconds', '53°57\'29"N 1°04\'49"W'],
  ['ISO 6709, seconds, with primes', '53° 57′ 29″ N, 1° 4′ 49″ W'],
  ['ISO 6709, seconds, bare', '53 57 29 N, 1 4 49 W'],
  ['decimal minutes, as receivers show them', "53° 57.487' N 1° 4.820' W"],
  ['named', 'latitude: 53.95812, longitude: -1.08034'],
  ['RFC 5870', 'geo:53.95812,-1.08034'],
  ['the address of a map', '[m](https://example.org/@53.95812,-1.08034,17z)'],
  ['the address of a map', '[m](https://example.org/?mlat=53.95812&mlon=-1.08034)'],
  ['the address of a map, RFC 3986', '[m](https://example.org/?q=53.95812%2C-1.08034)'],
  ['the address of a map', 'https://example.org/place/!3d53.95812!4d-1.08034'],
  ['ISO 6709, in words', '53 deg 57 min 29 sec N, 1 deg 4 min 49 sec W'],
  ['ISO 6709, in words', '53 degrees 57.487 minutes north'],
  ['ISO 6709, in words behind figures', '53.9581 north, 1.0803 west'],
  ['ISO 6709, in German', '53,9581° nördl. Br., 9,0803° östl. L.'],
  ['ISO 6709, in Spanish', '53 grados 57 min 29 seg norte, o 53° 57′ 29″ norte'],
  ['ISO 6709, a wrong ring for degrees', '53º57′29″N'],
  ['ISO 6709, letters for signs', '53d57m29s N 1d04m49s W'],
  ['ISO 6709, colons', '53:57:29 N, 1:04:49 W'],
  ['ISO 6709, run together', '535729N 0010449W'],
  ['ISO 6709, annex H', '+53.95812-001.08034/'],
  ['ISO 6709, commas in both', '53,95812; -1,08034'],
  ['receivers, without primes', 'N 53° 57.487 W 001° 04.820'],
  ['UTM with a nought', '32U 0612345 5967890'],
  ['UTM by its name', 'UTM 32 612345/5967890'],
  ['the Dutch grid by its name', 'RD 121687, 487484'],
  ['the French grid by its name', 'Lambert 93: 652381, 6862047'],
  ['the Swedish grid by its name', 'SWEREF99 6580822 674032'],
  ['the German grid by its name', 'Gauss-Krüger 3456789 5678901'],
  ['eastings and northings with their letters behind', '460300 m E, 452300 m N'],
  ['ISO 6709, degrees with three decimals', '53.958, 10.803'],
  ['ISO 6709, with the strokes of Markdown', '53\\.95812, \\-1\\.08034'],
  ['the Irish grid by its name', 'TM65 O 159 346'],
  ['swisstopo, LV95, named', 'E 2600123 N 1200456'],
  ['a plan, by its axes', 'X=460300 Y=452300'],
  ['Ordnance Survey, in blanks', 'S E 603 523'],
  ['open location code, in small letters', '9c5wxw5c+2f'],
  ['three words behind a name', 'w3w: stone.river.lamp'],
  ['three words in a link', 'https://w3w.example/stone.river.lamp'],
  ['geohash', 'geohash gcx4k1s7'],
  ['IARU locator', 'locator IO93LW12'],
  ['a postcode in small letters', 'yo24 1ab'],
];

test.for(SPOTS)('%s: “%s” is too exact to be published', ([, text]) => {
  expect(exactSpotIn(`It lay at ${text} for long.`)).not.toBeNull();
});

/** What has the look of it and is none. */
const NONE = [
  'Auf der Flur lag Schnee, in Parzellen.',
  'une parcelle de terre de 1870',
  'perceel en huis',
  'Found in SE 60 52, a square of a kilometre.',
  'About 53.96, -1.08.',
  'at 53° 57′ N, 1° 5′ W',
  'fine to 0.9253, 0.9167 and no more',
  'weights of 1.381, 1.402 g',
  'densities 10.364 / 10.491',
  'There were so 123 456 of them; no 603523 in the list, Nr. 123 456.',
  'North 1018, SC 1234, S 4001, ST 12; N 1018, E 12, R 3456',
  'Mintage 2 345 678 / 1 934 567 pieces; st 1834 1835; sp 1234 5678',
  '2345+67 and MCC+RX, +EDWR ANGL',
  'turned by 15 30 N, 12 degrees; axis 6h',
  'turned by 180° 18.25 mm across, 90 degrees north of the cross',
  'die e1 2nd state, s4 3rd, pe1 4pp and n2 5dr',
  'a grid of 12 by 14; RD 12, 14; Irish 6d of 1805',
  'v3.stone.river of the text; mp3 one.two; www.example.org/one.two.html',
  '1 1/2 d, 2m 3s of film, 12:30:45',
  '1,2345 of 2,3',
];

/** Houses as people of several countries write them, and what only looks like one. The forms are common usage; the places invented. */
const HOUSES: readonly (readonly [text: string, isHouse: boolean])[] = [
  ['14 Low Petergate Lane', true],
  ['14 Low Petergate Ln.', true],
  ['12, High St.', true],
  ['Hauptstr. 12', true],
  ['Musterweg 5a', true],
  ['Storgatan 5', true],
  ['12 bis, rue de la Paix', true],
  ['12 rue d’Orient', true],
  ['Via Roma 5', true],
  ['Calle Mayor n.º 12', true],
  ['ul. Długa 5', true],
  ['50 Pence St Helena', false],
  ['2 Pence of King Edward', false],
  ['Calle de los Reyes', false],
  ['Rue 12 is worn', false],
  ['the High Street, 1797', false],
];
test.for(HOUSES)('“%s” is a house: %s', ([text, isHouse]) => {
  expect(houseIn(`Look at ${text} now.`) !== null).toBe(isHouse);
});

// Addresses as they are written in five lands; common practice.
test.for([
  ['14 Larkfield Terrace, Malton, YO17 7LQ', ['Larkfield Terrace']],
  ['Lerchenweg 14, 31785 Hameln', ['Lerchenweg', '31785 Hameln']],
  ['12 rue des Alouettes, 49100 Angers', ['rue des Alouettes', '49100 Angers']],
  ['calle de las Alondras 12, 42002 Soria', ['calle de las Alondras', '42002 Soria']],
  ['Leeuweriklaan 14, 7201 AB Zutphen', ['Leeuweriklaan', '7201 AB Zutphen']],
  ['Via Allodole 12', ['Via Allodole']],
  ['31785 Hameln', []],
  ['Lerchenweg', []],
  ['Bought in 1998 at York', []],
] as const)('of the address “%s”: %j', ([text, streets]) => {
  expect(streetsIn(text)).toEqual(streets);
});
test.for(NONE)('“%s” names no exact spot', (text) => {
  expect(exactSpotIn(text)).toBeNull();
});

test('a spot is looked for in lists, sets and the cabinet’s own text, but for where a mint stood', async () => {
  const folder = changed(await markedCabinet(), {
    'mints/new-town.yaml': 'name: New\ncoordinates: "53.95812, -1.08034"\nnote: a hoard at SE 603 523\n',
    'sets/new-set.yaml': 'title: New\none-per: mint\nnote: a hoard at SE 603 523\n',
    'rulers/new-king.yaml': 'name: New\nnote: buried at SE 603 523\n',
    'cabinet.yaml': (text) => text.replace(/^(about:.*)$/m, '$1 All from SE 603 523.'),
  });
  const found = problemsOf(folder).filter(({ kind }) => kind === 'spot-too-exact');
  expect(found.map(({ file, line, field }) => `${file}:${line ?? ''} ${field ?? ''}`)).toEqual([
    expect.stringMatching(/^cabinet.yaml:\d+ about$/),
    'mints/new-town.yaml:3 note',
    'rulers/new-king.yaml:2 note',
    'sets/new-set.yaml:3 note',
  ]);
});

/** The texts of one piece, its story and its exhibit, and how many of them name a place too exactly. */
const PLACES: readonly (readonly [why: string, change: Readonly<Record<string, (text: string) => string>>, told: number])[] = [
  ['an inventory number', { [PENNY]: (text) => text.replace('number: "0001"', 'number: SE 603523') }, 0],
  ['a number in a book', { [PENNY]: (text) => text.replace('[plain-book 12]', '[plain-book SE603523]') }, 0],
  ['a name of a die', { [PENNY]: (text) => text.replace(/^kind:/m, 'dies: { obverse: SE603523 }\nkind:') }, 0],
  ['a design', { [PENNY]: (text) => text.replace('Long cross', 'Long cross from SE603523') }, 1],
  ['a story', { [PENNY]: (text) => `${text}\nDug at SE 603 523.\n` }, 1],
  ['a story, over the end of a line', { [PENNY]: (text) => `${text}\nDug at SE\n603 523 in clay.\n` }, 1],
  ['a story that says it three times', { [PENNY]: (text) => `${text}\nSE 603 523.\n\nSE 603 524.\n\nSE 603 525.\n` }, 1],
  ['a story that tells of a house', { [PENNY]: (text) => `${text}\nCome to 14 Low Petergate Lane.\n` }, 1],
  ['the statement of an exhibit that tells of a house', { 'exhibits/small-show/exhibit.md': (text) => text.replace(/^A statement\./m, 'Come to 14 Low Petergate Lane.') }, 1],
  ['the text of a group that tells of a house', { 'exhibits/small-show/exhibit.md': (text) => text.replace('There is one.', 'Come to 14 Low Petergate Lane.') }, 1],
  ['the scope of an exhibit', { 'exhibits/small-show/exhibit.md': (text) => text.replace('One penny.', 'Pennies of 14 Low Petergate Lane.') }, 1],
  ['the words of the cabinet that tell of a house', { 'cabinet.yaml': (text) => text.replace(/^about: .*$/m, 'about: Come to 14 Low Petergate Lane.') }, 1],
  ['an identifier elsewhere', { 'rulers/plain-king.yaml': (text) => `${text}identifiers: { wikidata: Q603523 }\n` }, 0],
  ['measures and finenesses', { [PENNY]: (text) => text.replace(/^weight: .*$/m, 'weight: 15.5521 g').replace(/^fineness: .*$/m, 'fineness: 0.9167/0.9253').replace(/^diameter: .*$/m, 'diameter: 18.205-19.401 mm') }, 0],
  ['an issuer of a token with a shop', { [PENNY]: (text) => text.replace(/^kind:/m, 'issuer: J. Smith, 14 Low Petergate Lane\nkind:') }, 0],
]; // prettier-ignore

test.for(PLACES)('a place or a house in %s', async ([, change, told]) => {
  const found = problemsOf(changed(await markedCabinet(), change));
  const spots = found.filter(({ kind }) => kind === 'spot-too-exact');
  expect(spots).toHaveLength(told);
  // What is told may be shown to others.
  expect(spots.map(({ says }) => says).join()).not.toMatch(/603|\b14\b/);
});

/** Numbers of records of finds in the forms that these have, and what resembles them; the ledger keeps a spot of the penny, not of the medal. */
const FIND_RECORDS: readonly (readonly [why: string, change: Readonly<Record<string, string | ((text: string) => string)>>, numbers: readonly string[]])[] = [
  ['a record in the story', { [PENNY]: (text) => `${text}\nRecorded as YORYM-1A2B3C.\n` }, ['YORYM-1A2B3C']],
  ['a record with figures alone, twice', { [PENNY]: (text) => `${text}\nSee NLM-123456 (NLM&#45;123456).\n` }, ['NLM-123456']],
  ['a case of treasure in a design', { [PENNY]: (text) => text.replace('Long cross', 'Long cross (Treasure 2014 T123)') }, ['2014 T123']],
  ['a corpus of finds among the references', { [PENNY]: (text) => text.replace('[plain-book 12]', '[plain-book 12, EMC 2009.0234]') }, ['EMC 2009.0234']],
  ['a record abroad', { [PENNY]: (text) => `${text}\nPAN-00012345\n` }, ['PAN-00012345']],
  ['the record of a piece whose spot nobody keeps', { 'pieces/old-medal/piece.md': (text) => `${text}\nLike YORYM-1A2B3C.\n` }, []],
  ['the number of a piece of the cabinet', { [PENNY]: (text) => `${text.replace('number: "0001"', 'number: UG-100110')}\nUG-100110 and its date, 1279.\n` }, []],
  ['words, legends and years', { [PENNY]: (text) => `${text}\nCIVI-TASLON, ABCDEF, 1914-18, AD-FACADE, in 2014 Tuesday.\n` }, ['AD-FACADE']],
  ['an answered one', { [PENNY]: (text) => `${text}\nRecorded as YORYM-1A2B3C.\n`, 'private/not-secret.csv': 'column,value,date\nplace,YORYM-1A2B3C,2026-11-29\n' }, []],
  ['a piece that is not published', { [PENNY]: (text) => `${text.replace(/^kind:/m, 'publish: no\nkind:')}\nRecorded as YORYM-1A2B3C.\n` }, []],
]; // prettier-ignore
test.for(FIND_RECORDS)('numbers of records of finds: %s', async ([, change, numbers]) => {
  const folder = changed(await markedCabinet(), change);
  const remarks = findRecordRemarks(readCabinet(folder).records, folder);
  expect(remarks.map((remark) => /^pieces\/[^:]+: "(.*?)" looks/.exec(remark)?.[1])).toEqual(numbers);
});

const owned = (steps: string) => (text: string) => text.replace(/^provenance:\n(?: .*\n)+/m, `provenance:\n${steps}`);
/** Whether the keeper's own purchase can be looked up by its lot; the ledger keeps the cost of the penny. */
test.for<[why: string, steps: string, told: boolean]>([
  ['the last step names the lot', '  - { when: 2015, how: auction, to: the keeper, says: lot 112 }\n', true],
  [
    'it names the lot in German',
    '  - { when: 2015, how: auction, to: the keeper, source: "Herbstauktion, Los 112" }\n',
    true,
  ],
  [
    'an older step names it',
    '  - { when: 1934, how: auction, says: lot 318 }\n  - { when: 1998, how: purchase, to: the keeper }\n',
    false,
  ],
  [
    'words that only look like it',
    '  - { when: 2015, how: purchase, to: the keeper, says: a lot of rubbish and Carlot 2 }\n',
    false,
  ],
])('a lot of a public sale: %s', async ([, steps, isTold]) => {
  const folder = changed(await markedCabinet(), { [PENNY]: owned(steps) });
  const { records, problems } = readCabinet(folder);
  expect(problems).toEqual([]);
  expect(saleRemarks(records, folder).length === 1).toBe(isTold);
});

test.for(['cost', 'ledger cost', 'seller', 'ledger find-spot'])('what a sheet said of %s stands in no piece', async (name) => {
  const folder = changed(await markedCabinet(), {
    [PENNY]: (text) => text.replace(/^kind:/m, `as-written: { ${name}: about so much }\nkind:`),
  });
  expect(problemsOf(folder).map(({ kind }) => kind)).toContain('ledger-in-piece');
}); // prettier-ignore
