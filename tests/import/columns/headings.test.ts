import { describe, expect, test } from 'vitest';
import { matchHeading } from '../../../src/import/columns/match-heading.ts';

/** Words collectors write over their columns, by language. Common practice; each word as a dictionary of the language has it. */
const MEANT: readonly (readonly [meaning: string, headings: readonly string[]])[] = [
  ['field weight', ['Weight', 'Wt.', 'Poids', 'Gewicht', 'Peso', 'weight_g', 'Gewicht (g)', 'Gewicht in Gramm', 'Poids en g']],
  ['field diameter', ['Diameter', 'Diam.', 'Ø', 'Ø mm', 'Diamètre', 'Durchmesser', 'Diametro', 'Diámetro', 'Doorsnede']],
  ['field axis', ['Die axis', 'Axe', 'Stempelstellung', 'Asse', 'Eje', 'Stempelstand']],
  ['field metal', ['Metal', 'Métal', 'Metall', 'Metallo', 'Metaal']],
  ['field ruler', ['Ruler', 'Souverain', 'Herrscher', 'Sovrano', 'Gobernante', 'Heerser', 'Münzherr', 'Muntheer']],
  ['field mint', ['Mint', 'Atelier', 'Münzstätte', 'Muenzstaette', 'Zecca', 'Ceca', 'Muntplaats']],
  ['field denomination', ['Denomination', 'Dénomination', 'Nominal', 'Nominale', 'Denominación', 'Nominaal']],
  ['field date', ['Year', 'Année', 'Jahr', 'Anno', 'Año', 'Jaar', 'Prägejahr', 'Millésime']],
  ['field grade', ['Grade', 'Condition', 'État', 'Erhaltung', 'Conservazione', 'Conservación', 'Kwaliteit']],
  ['field references', ['Reference', 'Ref.', 'Référence', 'Literatur', 'Riferimenti', 'Rif.', 'Rif. bibl.', 'Referencia', 'Referentie']],
  ['field obverse design', ['Obverse', 'Obv.', 'Avers', 'Vs.', 'Vorderseite', 'Dritto', 'Anverso', 'Voorzijde']],
  ['field reverse design', ['Reverse', 'Rev.', 'Revers', 'Rs.', 'Rückseite', 'Rovescio', 'Reverso', 'Keerzijde']],
  ['field obverse legend', ['Obverse legend', 'Légende du droit', 'Vs. Legende', 'Leyenda del anverso', 'Legenda del dritto']],
  ['ledger cost', ['Cost', 'Paid', 'Price paid', "Prix d'achat", 'Kaufpreis', 'Prezzo', 'Precio', 'Aankoopprijs', 'Kaufpreis (€)', 'Price paid at fair 2011']],
  ['ledger seller', ['Seller', 'Bought from', 'Vendeur', 'Verkäufer', 'Händler', 'Venditore', 'Vendedor', 'Verkoper']],
  ['ledger storage', ['Storage', 'Vault', 'Box', 'Coffre', 'Tresor', 'Cassaforte', 'Dove sta', 'Caja fuerte', 'Kluis', 'Vault no. (bank)']],
  ['ledger find-spot', ['Findspot', 'Fundort', 'Lieu de découverte', 'Luogo di ritrovamento', 'Hallazgo', 'Vindplaats']],
  ['ledger insured', ['Insured', 'Assurance', 'Versicherungswert', 'Assicurazione', 'Seguro', 'Verzekerde waarde']],
  ['ledger certificate', ['Certificate', 'Certificat', 'Zertifikat', 'Certificato', 'Certificado', 'Certificaat']],
  ['ledger acquired', ['Date acquired', "Date d'achat", 'Kaufdatum', 'Data di acquisto', 'Data acq.', 'Fecha de compra', 'Aankoopdatum']],
  ['ledger notes', ['Notes', 'Remarques', 'Bemerkungen', 'Note', 'Notas', 'Opmerkingen']],
  ['doubtful authority', ['Issuer / Ruler', 'Ruler or issuer', 'Land/Herrscher']],
  ['doubtful date', ['Date', 'Datum', 'Data', 'Fecha']],
  ['doubtful value', ['Value', 'Valeur', 'Wert', 'Valore', 'Valor', 'Waarde']],
  ['doubtful place', ['Location', 'Lieu', 'Ort', 'Luogo', 'Lugar', 'Plaats']],
  ['doubtful number', ['No.', 'Nr.', 'N°', '#', 'Nº']],
  ['not known', ['Wibble', 'image_files', 'Zustimmung']],
]; // prettier-ignore

describe.each(MEANT)('%s', (meaning, headings) => {
  test.each(headings)('is what "%s" means', (heading) => {
    const matched = matchHeading(heading);
    const told =
      matched.kind === 'field'
        ? `field ${matched.field}`
        : matched.kind === 'ledger'
          ? `ledger ${matched.column}`
          : matched.kind === 'doubtful'
            ? `doubtful ${matched.doubt}`
            : matched.kind;
    expect(told).toBe(meaning);
  });
});

test.each([
  ['Weight (g)', 'g'],
  ['Gewicht in Gramm', 'g'],
  ['Ø mm', 'mm'],
  ['weight_g', 'g'],
  ['Kaufpreis (€)', 'EUR'],
  ['Price paid £', 'GBP'],
  ['Poids (gr)', 'gr'],
  ['Weight', null],
])('the unit in "%s" is %s', (heading, unit) => {
  expect(matchHeading(heading).unit).toBe(unit);
});
