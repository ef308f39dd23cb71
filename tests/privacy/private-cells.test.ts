import { expect, test } from 'vitest';
import {
  amountsInCell,
  certificatesIn,
  formsOf,
  identifiersIn,
  namesInCell,
  partsOf,
  runTogether,
  saysMuch,
  sentencesOf,
  shorterOf,
  spellingsOf,
  tells,
  titledNames,
  wholesOf,
} from '../../src/privacy/private-cells.ts';

test.for([
  ['storage', ' oak chest ', ['oak chest']],
  ['storage', ' oak ', []],
  ...['cost', 'value', 'insured', 'amount', 'costs'].map((column) => [column, '£1,250.00', []] as const),
  ['cost', 'swapped for two', ['swapped for two']],
  ['storage', '£1,250.00', ['£1,250.00']],
] as const)('the whole of %s “%s”: %j', ([column, cell, wholes]) => {
  expect(wholesOf(column, cell)).toEqual(wholes);
});

test.for([
  ['storage', 'oak chest of mine , left; row 2', ['oak chest of mine']],
  ['find-spot', 'Acomb, headland of Far Carr; by it', ['Acomb', 'headland of Far Carr']],
  ['find-spot', 'acomb, Acle', []],
  ['storage', 'bank, box 207; row 12', ['box 207']],
  ['seller', 'Hildegarde Osgoodby, Jubbergates, Mr X', ['Hildegarde Osgoodby']],
  ['with', 'T. Jubbergate; x', ['T. Jubbergate']],
  ['notes', 'Hildegarde Osgoodby, then', []],
] as const)('the parts of %s “%s”: %j', ([column, cell, parts]) => {
  expect(partsOf(column, cell)).toEqual(parts);
});

test.for([
  ['UG1008-10', '100810'],
  ['UG1008-105', '1008105'],
] as const)('of the certificate “%s” the figures alone are looked for, joined: %s', ([cell, figures]) => {
  expect(certificatesIn(cell)).toContain(figures);
});

test.for([
  ['seller', 'Vauquelin-Desprez, by post, Vauquelin', ['Vauquelin-Desprez', 'Vauquelin', 'Desprez']],
  ['seller', 'Jean-Desprez, Lee-Smythe', ['Jean-Desprez', 'Desprez', 'Lee-Smythe', 'Smythe']],
  ['seller', 'Osgoodby’s widow', ['Osgoodby']],
  ['seller', 'Dealers in January, Dealer, Ned', []],
  ['storage', 'Strongbox left', ['Strongbox']],
  ['find-spot', 'Foxup', ['Foxup']],
  ['notes', 'Strongbox left. Wonderful. At Foxup', ['Foxup']],
] as const)('the names in the %s “%s”: %j', ([column, cell, names]) => {
  expect(namesInCell(column, cell)).toEqual(names);
});

// Habits of collectors in five languages, from memory.
test.for([
  ['find-spot', 'Hob Hill Farm', ['Hob Hill']],
  ['find-spot', 'The Long Carrs', ['Long Carrs']],
  ['find-spot', 'Le Pré aux Oies', ['Pré aux Oies']],
  ['find-spot', 'L’Orme au Loup Acker', ['Orme au Loup Acker', 'Orme au Loup']],
  ['find-spot', 'Home Farm', []],
  ['find-spot', 'The Ings', []],
  ['storage', 'coffre n° 207 de la banque', ['coffre n° 207']],
  ['storage', 'box 14b of the attic', ['box 14b']],
  ['storage', 'box 14', []],
  ['storage', 'page 14 of the album', []],
  ['storage', 'in 14 boxes', []],
  ['seller', 'Hob Hill Farm', []],
] as const)('of the %s “%s” is looked for, with less beside it: %j', ([column, part, shorter]) => {
  expect(shorterOf(column, part)).toEqual(shorter);
});

test.for([
  ['seller', 'Desmond Aird, Thirsk', ['mr aird', 'mr. aird', 'frau aird', 'm. aird', 'dhr. aird']],
  ['with', 'Li', ['mr li', 'mme li']],
  ['seller', 'Desmond Osgoodby', []],
  ['seller', 'a Fair', []],
  ['seller', 'by post', []],
  ['notes', 'Desmond Aird', []],
] as const)('of the %s “%s” a short name is looked for behind a title: %j', ([column, cell, forms]) => {
  const titled = titledNames(column, cell);
  for (const form of forms) expect(titled).toContain(form);
  expect(titled.length > 0).toBe(forms.length > 0);
});

test.for([
  ['seller', 'möhrenbrink', ['möhrenbrinks', 'moehrenbrinkschen', 'möhrenbrinksche', 'möhrenbrinkscher', 'möhrenbrinksches'], ['möhrenbrinke']],
  ['with', 'marsh', ['marshs'], ['marshsche', 'marshes']],
  ['seller', 'osgoods', [], ['osgoodss']],
  ['find-spot', 'galgenberg', ['galgenbergs', 'galgenberge', 'galgenberges'], ['galgenbergsche']],
  ['find-spot', 'marsh', [], ['marshes', 'marshs', 'marshe']],
  ['storage', 'galgenberg', [], ['galgenbergs']],
] as const)('the %s “%s” is looked for as %j, not as %j', ([column, name, forms, others]) => {
  const made = formsOf(column, name);
  expect(made).toContain(name);
  for (const form of forms) expect(made).toContain(form);
  for (const other of others) expect(made).not.toContain(other);
}); // prettier-ignore

// The number in two groups of three figures and more, by threes, by fours, and in pairs.
test.for([
  ['12345', []],
  ['ABCD12', []],
  ['ABC123', ['ABC123']],
  ['no 123456', ['123456', 'no123456', '123 456', '123,456']],
  ['holder 7417001', ['7417001', '741 7001', '7 417 001', '7,417,001', '7.417.001', '7/417/001', '7417 001', '7417,001', '7417.001', '7417/001']],
  ['UG-100810', ['UG-100810', 'UG100810', 'UG/100810', 'UG.100810', '100810']],
  ['UG 1008-105', ['1008-105', '1008105', '1008/105', '1008.105', 'UG1008-105', 'UG1008105', '1 008 105', '1,008,105', '1.008.105', '1/008/105', '100 8105', '1008 105', '1008,105']],
  ['UG-1008105', ['UG-1008105', 'UG1008105', 'UG/1008105', 'UG.1008105', '1008105', '100 8105', '1 008 105', '1,008,105', '1.008.105', '1/008/105', '1008 105', '1008,105', '1008.105', '1008/105']],
  ['19141918', ['19141918', '191 41918', '19141 918', '19 14 19 18', '19 141 918', '19,141,918', '19.141.918', '19/141/918']],
] as const)('the number of a certificate “%s” is looked for as %j', ([cell, forms]) => {
  expect([...new Set(certificatesIn(cell))].sort()).toEqual([...forms].sort());
}); // prettier-ignore

// How they are typed without the letters of a language, and how numbers and addresses are shortened: common practice.
test.for([
  ['möhrenbrink', ['moehrenbrink']],
  ['uebelacker', ['ubelacker']],
  ['käsekeller', ['kaesekeller']],
  ['übelacker', ['uebelacker']],
  ['sørensen', ['soerensen']],
  ['bergstrasse', ['bergstr']],
  ['kerkstraat', ['kerkstr']],
  ['gåård', ['gaaaard']],
  ['kruijningen', ['kruyningen']],
  ['kruyningen', ['kruijningen']],
  ['box 14', ['box no. 14', 'box nr. 14', 'box n° 14', 'box #14', 'box no 14']],
  ['coffre n°12', ['coffre 12', 'coffre #12']],
  ['tray no. 4', ['tray 4']],
  ['2x2 box #4', ['2x2 box 4']],
  ['low moor fm', ['low moor farm']],
  ['41 mickleham road', ['41 mickleham rd']],
  ['12 mill st. east', ['12 mill street east']],
  ['14 larkfield terrace', ['14 larkfield terr']],
  ['lerchenweg', ['lerchenwg']],
  ['hohe bergstraße', ['hohe bergstr']],
  ['leeuweriklaan', ['leeuwerikln']],
  ['coffre 207', ['coffre numero 207', 'coffre nummer 207', 'coffre number 207']],
] as const)('“%s” is looked for as %j too', ([value, others]) => {
  const spellings = spellingsOf(value);
  expect(spellings).toContain(value);
  for (const other of others) expect(spellings).toContain(other);
});
test('a value without such letters has one spelling', () => {
  expect(spellingsOf('oak chest')).toEqual(['oak chest']);
  for (const word of ['queen', 'baars', 'moers', 'bauer']) expect(spellingsOf(word)).toEqual([word]);
});

test.for([
  ['Insured w. Hedgerow, pol. 88-1204-X', '88/1204/X', true],
  ['ring 01904 555 0123 first', '(01904) 5550123', true],
  ['tel. (01904)555-0123', '01904 5550123', true],
  ['tel. (01904)555-0123', '(01904)555-0123', true],
  ['tel. (01904)555-0123', '019045550123', true],
  ['ring 020 7946 0123', '020 79460123', true],
  ['ring 0131 496 0123', '0131/4960123', true],
  ['mail m.quill@example.com.', 'm.quill@example.com', true],
  ['mail m.quill@example.com.', 'm.quill (at) example (dot) com', true],
  ['mail m.quill@example.com.', 'm.quill [at] example.com', true],
  ['mail m.quill@example.com.', 'm.quill at example punkt com', true],
  ['Rechnung 2019-0443 v. 3.5.', '2019/0443', true],
  ['struck: 1250000', '1250000', false],
  ['bought 12-05-1998', '12-05-1998', false],
  ['lot 123/456', '123/456', false],
  ['lot of 1998/1999', '1998/1999', false],
  ['paid £1,250,000', '1250000', false],
  ['weighs 123.456', '123456', false],
] as const)('of the note “%s” “%s” is looked for by itself: %s', ([note, value, found]) => {
  expect(identifiersIn(note).includes(value)).toBe(found);
});

test.for([
  ['third stair tread', ['thirdstairtread']],
  ['Hildegarde Osgood-by', ['HildegardeOsgoodby']],
  ['oak chests', []],
  ['oak chest 12, row', []],
  ['wardrobe-door', ['wardrobedoor']],
  ['wardrobedoors', []],
] as const)('“%s” as one word: %j', ([value, one]) => {
  expect(runTogether(value)).toEqual(one);
});

test.for([
  ['notes', 'paid £12.50, then 5 EUR.', ['£12.50', '5 EUR']],
  ['Preis', ' 12,50 ', ['12.50 GBP']],
  ['Price', '£12', ['£12']],
  ['Price', '12 or 13', []],
  ['shelf', '12', []],
] as const)('the amounts in %s “%s”: %j', ([column, cell, amounts]) => {
  expect(amountsInCell(column, cell, 'GBP')).toEqual(amounts);
});

test.for([
  [' Weigh it again ', ['Weigh it again']],
  ['One two. Three four five ! six', ['One two. Three four five ! six', 'Three four five']],
] as const)('the sentences of “%s”: %j', ([cell, sentences]) => {
  expect(sentencesOf(cell)).toEqual(sentences);
});

test.for([
  ['oak chest', true, false],
  ['oak chest here', true, true],
  ['oak 12', true, true],
  ['12-3/4', false, false],
  ['the Bank!', false, false],
  ['Börse', false, false],
] as const)('“%s” tells something: %s, much: %s', ([value, something, much]) => {
  expect([tells(value), saysMuch(value)]).toEqual([something, much]);
});
