import { expect, test } from 'vitest';
import { changed, markedCabinet, problemsOf } from '../catalogue/small-cabinet.ts';

const LEDGER = 'private/ledger.csv';
const PENNY = 'pieces/plain-penny/piece.md';

/** The problems of the marked cabinet with one cell in its ledger, and one text at the end of the penny's story. */
async function told(column: string, cell: string, story: string) {
  const folder = changed(await markedCabinet(), {
    [LEDGER]: `piece,${column}\nplain-penny,"${cell.replaceAll('"', '""')}"\n`,
    [PENNY]: (text) => `${text.trimEnd()}\n\n${story}\n`,
  });
  return problemsOf(folder);
}

/**
 * A private value, and how it may stand in a text all the same. Escapes: WHATWG HTML §13.5, RFC 3986 §2.1, YAML 1.2 §5.7,
 * CommonMark 0.31 §2.4; what is not seen: Unicode 16, categories Cf and Zs.
 */
const DISGUISES: readonly (readonly [column: string, cell: string, text: string])[] = [
  ['storage', 'behind the boiler', 'Behind The BOILER'],
  ['storage', 'behind the boiler', 'be\u00adhind the boi\u200bler'],
  ['storage', 'behind the boiler', 'behind\u00a0the\u2009boiler'],
  ['storage', 'behind the boiler', 'behind  the\nboiler'],
  ['storage', 'behind the boiler', 'behind-the-boiler'],
  ['storage', 'behind the boiler', 'behind_the\u2011boiler'],
  ['storage', 'behind the boiler', '**behind** the *boiler*'],
  ['storage', 'behind the boiler', 'behind the [boiler](../old-medal/)'],
  ['storage', 'behind the boiler', 'behind&nbsp;the&#32;boi&shy;ler'],
  ['storage', 'behind the boiler', '<!-- behind the boiler -->'],
  ['storage', 'behind the boiler', '[x](https://example.org/?q=behind%20the+boiler)'],
  ['storage', 'behind the boiler', '[x](https://example.org/ "behind the boiler")'],
  ['storage', 'Käsekeller links', 'im Ka\u0308sekeller links'],
  ['storage', 'Käsekeller links', 'im K&auml;sekeller&NewLine;links'],
  ['storage', 'Čapkova skříň', 'kept in &Ccaron;apkova sk&rcaron;&iacute;&ncaron;'],
  ['storage', 'Schließfach 12', 'im SCHLIESSFACH 12'],
  ['storage', "Mother's wardrobe", 'in mother’s wardrobe'],
  ['storage', "Mother's wardrobe", 'in mother´s wardrobe'],
  ['storage', "Mother's wardrobe", 'in mother`s wardrobe'],
  ['storage', 'Mother´s wardrobe', "in mother's wardrobe"],
  ['seller', 'T. Jubbergate, by post', 'had from T. Jubbergate'],
  ['certificate', '7300112-004', 'its number is 7300112–004'],
  ['certificate', '7300112-004', 'its number is 7300112 004'],
  ['certificate', '7300112-004', 'its number is 7300112004'],
  ['certificate', '73001124', 'its number is 7300 1124'],
  ['certificate', '73001124', 'its number is 73,001,124'],
  ['certificate', 'holder FOC-7417-Z, third party', 'its number is foc7417z'],
  ['certificate', 'KX 4471-9083', 'its number is KX44719083'],
  ['certificate', 'KX 4471-9083', 'its number is kx4471‑9083'],
  ['certificate', 'KX 4471-9083', 'its number is 4471/9083'],
  ['certificate', 'KX 4471-9083', 'its number is 4471.9083'],
  ['certificate', 'KX 4471-9083', 'its number is 44.719.083'],
  ['certificate', 'KX 4471-9083', 'its number is 44 71 90 83'],
  ['seller', 'Hildegarde Osgoodby, by post', 'thanks to #HildegardeOsgoodby'],
  ['seller', 'Hildegarde Osgoodby, by post', 'from Osgood<b>by</b>'],
  ['seller', 'Hildegarde Osgoodby, by post', 'from Osgood<!-- x -->by'],
  ['storage', 'third stair tread', '[a view](third-stair-tread.txt)'],
  ['storage', 'third stair tread', '[a view](thirdstairtread)'],
  ['cost', '£1,275', 'it was 1,275.00 (GBP)'],
  ['cost', '£1,275', 'it was UKP 1275'],
  ['cost', '£1,275', 'it was £<b>1,275</b>'],
  // As collectors of five lands write them, from memory.
  ['cost', '£42.50', 'He let it go for 42 quid 50.'],
  ['cost', '£42.50', 'I gave £42-50 for it.'],
  ['cost', '£42.50', 'Forty-two pounds fifty, and worth each penny.'],
  ['cost', '£1150', 'It made eleven fifty on the day.'],
  ['cost', '£36 15s', 'paid £36/15/- in 1962'],
  ['cost', '£36 15s', 'paid £36-15-0 in 1962'],
  ['cost', '85,50 €', 'pour 85€50'],
  ['seller', 'Möhrenbrink', 'aus der Sammlung Moehrenbrink'],
  ['seller', 'Fam. Uebelacker', 'aus Übelackers Nachlass'],
  ['seller', 'J. v/d Kruijningen', 'van Kruyningen'],
  ['seller', 'Mme Vauquelin-Desprez', 'provenant de Mme Desprez'],
  ['seller', "St. John-Pemberley's widow", 'ex the St John Pemberley estate'],
  ['storage', 'Oak box 14', 'now in the oak box, no. 15; not in oak box no. 14'],
  ['storage', 'SDB #2207', 'it lies in SDB 2207'],
  ['find-spot', 'Low Moor Fm, by it', 'from Low Moor Farm'],
  ['certificate', '31245876-012', 'holder 31245876'],
  ['notes', 'Insured, pol. 88-1204-X', 'policy 88/1204/X'],
  ['notes', 'ring 01904 555 0123', 'ring me on (01904) 5550123'],
  ['find-spot', 'Acomb, headland of Far Carr', 'found at Acomb'],
  ['find-spot', 'Acomb, headland of Far Carr', 'on the headland of Far Carr'],
  ['notes', 'Weigh again. The key is under the pot.', 'The key is under the pot, of course.'],
  // Prices as they are spoken and written in five languages; common practice.
  ['cost', '385 EUR', 'Für 385,- geschossen.'],
  ['cost', '385 EUR', 'Betaald: 385,--'],
  ['cost', '385 EUR', 'Voor 385,-.'],
  ['cost', '385 EUR', 'Für 385,– bekommen.'],
  ['cost', '385 EUR', 'Achetée 385 €uros en salle.'],
  ['cost', '385 EUR', 'Für 385€VB im Netz.'],
  ['cost', '385 EUR', 'Bezahlt: 385 Euronen'],
  ['cost', '385 EUR', 'Me costó 385 pavos.'],
  ['cost', '385 EUR', 'Zuschlag 310, mit Aufgeld 385.'],
  ['cost', '385 EUR', 'Adjugée 385 en salle.'],
  ['cost', '385 GBP', 'I gave three eighty-five for it.'],
  ['cost', '385 GBP', 'I handed over 385 nicker.'],
  ['cost', '385 GBP', 'The invoice came to 385 all in.'],
  ['insured', '600 GBP', 'Covered for 600 on the policy.'],
  // Persons, their addresses, and places.
  ['seller', 'Desmond Aird, Thirsk', 'Mr Aird had two.'],
  ['seller', 'H.-J. Möhrenbrink', 'aus der Möhrenbrinkschen Sammlung'],
  ['seller', 'Aurelio, 07700 900123', 'ring 07700 900123'],
  ['seller', 'Aurelio, 07700 900123', 'ring 07700/900123'],
  ['seller', 'Aurelio, a@stall.example', 'write to a (at) stall (dot) example'],
  ['seller', 'Aurelio, 12 Mill Lane', 'go to Mill Lane'],
  ['home', 'Lerchenweg 14, 31785 Hameln', 'bei uns im Lerchenweg'],
  ['home', 'Lerchenweg 14, 31785 Hameln', 'am Ende des Lerchenwg.'],
  ['home', 'Lerchenweg 14, 31785 Hameln', 'geschrieben in 31785 Hameln'],
  ['home', '12 rue des Alouettes, 49100 Angers', 'rue des Alouettes, au fond'],
  ['home', '14 Larkfield Terrace, Malton', 'on Larkfield Terr.'],
  ['storage', 'bank, box 207', 'in box 207, they say'],
  ['storage', 'coffre n° 207 de la banque', 'au coffre numéro 207'],
  ['find-spot', 'Hob Hill Farm, Skelton', 'found on Hob Hill'],
  ['find-spot', 'Le Pré aux Oies, Brissac', 'trouvée au Pré-aux-Oies'],
  ['find-spot', 'Galgenberg, Flur 7', 'am Fuß des Galgenberges'],
  ['certificate', 'BX-7741902', 'numbered 774 1902'],
];

test.for(DISGUISES)('the %s “%s” is found in “%s”, at its line', async ([column, cell, text]) => {
  const found = await told(column, cell, text);
  expect(found).toMatchObject([{ kind: 'private-in-text', file: PENNY, line: 29 }]);
  expect(found[0]?.says).toContain(`the column ${column} of ${LEDGER} keeps in its line 2`);
});

/** Honest texts that share a figure or a word with the ledger. */
const HONEST: readonly (readonly [column: string, cell: string, text: string])[] = [
  ['cost', '77 GBP', 'It weighs 77 grains and was lot 77.'],
  ['cost', '20 GBP', 'Twenty pounds of silver; a fine of 20 pounds; cut at 20 pounds weight.'],
  ['cost', '1250 GBP', 'Struck about 1250, in a hoard of twelve hundred and fifty pennies.'],
  ['cost', '1998 GBP', 'Bought in 1998, and paid for in 1998.'],
  ['cost', '240 GBP', 'The pound was worth 240 pence.'],
  ['cost', '5 GBP', 'A token for £5.'],
  ['cost', '£42.50', 'A note for £42 500 years old, and 42 pounds of 50.'],
  ['cost', '£1961', 'In nineteen sixty one it made news.'],
  ['notes', 'Seen 12-05-1998, again 1999/2000', 'Shown in 1999/2000.'],
  ['storage', 'Box', 'It came in a box.'],
  ['storage', 'bank', 'On the bank of the Ouse, by the Bank of England.'],
  ['storage', 'Cabinet', 'The cabinet holds three.'],
  ['seller', 'a fair', 'Bought at a fair, in fair state.'],
  ['seller', 'father', 'With his father Henry.'],
  ['find-spot', 'field', 'A plain field, and pellets.'],
  ['certificate', '1018', 'North 1018.'],
  ['certificate', '19472011', 'In the cabinet 1947-2011.'],
  ['notes', 'Cleaned.', 'It was cleaned.'],
  ['notes', 'Slight crease. Cleaned long ago.', 'It has a slight crease.'],
  ['cost', '385 EUR', 'Lit.: Müller 385.- Schneider 12.'],
  ['cost', '385 EUR', 'M385,-.5 or f(385,-x), 385,-(y).'],
  ['cost', '385 EUR', 'In the years 385, 386 and 1385,-5.'],
  ['cost', '320 GBP', 'Three and twenty for the pound.'],
  ['seller', 'J. Ross', 'Ross has it as number 4.'],
  ['seller', 'Plain Town', 'Mr Town wrote of it.'],
  ['find-spot', 'Home Farm, Skipwell', 'It came home.'],
  ['storage', 'page 14 of the album', 'See page 14.'],
  ['certificate', '19141918', 'In 1914 1918 was far off.'],
];

test.for(HONEST)('the %s “%s” is not taken to stand in “%s”', async ([column, cell, text]) => {
  expect(await told(column, cell, text)).toEqual([]);
});

test('what is told repeats nothing of what is private, because it may be shown to others', async () => {
  const found = [
    ...(await told('storage', 'behind the boiler', 'behind the boiler')),
    ...(await told('cost', '1250 GBP', 'for £1,250')),
    ...(await told('certificate', '73001124', 'numbered 73001124')),
  ];
  expect(found.map(({ says }) => says)).toEqual([
    expect.stringContaining('b…r (17 signs)'),
    expect.stringContaining('a sum of money'),
    expect.stringContaining('·…· (8 signs)'),
  ]);
  expect(found.map(({ says }) => says).join()).not.toMatch(/boiler|1,?250|7300/);
});
