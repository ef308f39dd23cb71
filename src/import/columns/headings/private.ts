import type { Headings } from '../mapping.ts';

/** Headings of what never leaves, by the columns of the ledger. */
export const PRIVATE: readonly Headings[] = [
  {
    to: 'cost',
    en: ['cost', 'paid', 'price', 'price paid', 'purchase price', 'bought for', 'cost price', 'amount paid', 'gave', 'what i gave', 'i paid', 'what i paid', 'total cost', 'hammer'],
    fr: ['prix', 'prix d achat', 'prix paye', 'cout', 'paye'],
    de: ['preis', 'kaufpreis', 'einkaufspreis', 'ankaufspreis', 'bezahlt', 'kosten', 'ek', 'anschaffungspreis', 'erwerbspreis'],
    it: ['prezzo', 'prezzo d acquisto', 'prezzo di acquisto', 'pagato', 'costo'],
    es: ['precio', 'precio de compra', 'pagado', 'coste', 'costo'],
    nl: ['prijs', 'aankoopprijs', 'betaald', 'kosten', 'aanschafprijs', 'inkoopprijs'],
  },
  {
    to: 'value',
    en: ['worth', 'current value', 'market value', 'estimate', 'est value', 'estimated value', 'valuation', 'catalogue value', 'book value'],
    fr: ['valeur actuelle', 'cote', 'estimation', 'valeur estimee'],
    de: ['schatzwert', 'marktwert', 'schatzung', 'katalogwert', 'aktueller wert', 'zeitwert', 'wert heute', 'heutiger wert'],
    it: ['valore attuale', 'valore stimato', 'stima', 'quotazione', 'valore di mercato'],
    es: ['valor actual', 'valor estimado', 'estimacion', 'valor de mercado', 'tasacion'],
    nl: ['geschatte waarde', 'marktwaarde', 'taxatie', 'huidige waarde', 'cataloguswaarde'],
  },
  { to: 'insured', en: ['insured', 'insurance', 'insured value', 'insured for', 'insurance value'], fr: ['assurance', 'valeur assuree', 'assure'], de: ['versicherung', 'versicherungswert', 'versichert'], it: ['assicurazione', 'valore assicurato', 'assicurato'], es: ['seguro', 'valor asegurado', 'asegurado'], nl: ['verzekering', 'verzekerde waarde', 'verzekerd'] },
  {
    to: 'storage',
    en: ['storage', 'vault', 'box', 'tray', 'album', 'cabinet', 'drawer', 'safe', 'shelf', 'stored', 'stored at', 'storage location', 'binder', 'slot', 'page', 'holder', 'case', 'where kept', 'where it is', 'where it lives', 'kept', 'kept in', 'kept at', 'bank', 'folder'],
    fr: ['rangement', 'coffre', 'boite', 'plateau', 'classeur', 'medaillier', 'tiroir', 'emplacement de rangement'],
    de: ['aufbewahrung', 'lagerort', 'tresor', 'safe', 'kasten', 'tablett', 'schuber', 'fach', 'lade', 'aufbewahrungsort', 'schliessfach', 'lagerplatz', 'album', 'schublade', 'liegt', 'liegt in', 'wo', 'wo es liegt', 'platz'],
    it: ['custodia', 'cassaforte', 'scatola', 'vassoio', 'cassetto', 'collocazione', 'dove', 'dove sta', 'posto', 'album'],
    es: ['almacen', 'caja', 'caja fuerte', 'bandeja', 'cajon', 'monetario', 'album', 'ubicacion de guarda'],
    nl: ['opslag', 'kluis', 'doos', 'lade', 'bewaarplaats', 'album', 'cassette'],
  },
  {
    to: 'seller',
    en: ['seller', 'dealer', 'bought from', 'vendor', 'purchased from', 'from whom', 'acquired from', 'supplier', 'auction', 'auction house', 'bought at', 'sale', 'where bought', 'bought of', 'bought off', 'had from', 'had of', 'got from', 'got of', 'bought where', 'where purchased', 'where acquired'],
    fr: ['vendeur', 'marchand', 'achete chez', 'achete a', 'a qui', 'chez qui', 'fournisseur', 'vente'],
    de: ['verkaufer', 'handler', 'gekauft bei', 'bezugsquelle', 'lieferant', 'auktion', 'auktionshaus', 'erworben von', 'von wem', 'woher', 'gekauft von', 'quelle'],
    it: ['venditore', 'commerciante', 'acquistato da', 'fornitore', 'asta'],
    es: ['vendedor', 'comerciante', 'comprado a', 'proveedor', 'subasta'],
    nl: ['verkoper', 'handelaar', 'gekocht bij', 'leverancier', 'veiling'],
  },
  { to: 'find-spot', en: ['findspot', 'find spot', 'find place', 'found at', 'grid reference', 'ngr', 'coordinates', 'provenience', 'found', 'gps'], fr: ['lieu de decouverte', 'lieu de trouvaille', 'trouvaille', 'provenance archeologique', 'coordonnees'], de: ['fundort', 'fundstelle', 'fundplatz', 'koordinaten'], it: ['luogo di ritrovamento', 'ritrovamento', 'provenienza archeologica', 'coordinate'], es: ['lugar de hallazgo', 'hallazgo', 'coordenadas'], nl: ['vindplaats', 'vondst', 'coordinaten'] },
  { to: 'certificate', en: ['certificate', 'cert', 'cert no', 'certificate no', 'certificate number', 'certification', 'slab no', 'certification number', 'export licence'], fr: ['certificat', 'n de certificat'], de: ['zertifikat', 'zertifikatsnummer', 'zertifikat nr', 'echtheitszertifikat'], it: ['certificato', 'numero certificato', 'perizia'], es: ['certificado', 'numero de certificado'], nl: ['certificaat', 'certificaatnummer'] },
  {
    to: 'acquired',
    en: ['acquired', 'date acquired', 'purchase date', 'date bought', 'bought', 'purchased', 'date purchased', 'date of purchase', 'acquisition date', 'acquisition', 'bought on', 'date of acquisition', 'year bought', 'when bought', 'bought when'],
    fr: ['date d achat', 'date d acquisition', 'acquisition', 'achete le', 'quand achete'],
    de: ['kaufdatum', 'erworben', 'erwerbsdatum', 'gekauft am', 'gekauft', 'ankaufsdatum', 'erwerbung', 'datum des kaufs', 'einkaufsdatum', 'wann gekauft', 'gekauft wann'],
    it: ['data acquisto', 'data acq', 'acq', 'data di acquisto', 'acquistato', 'acquisto', 'data d acquisto'],
    es: ['fecha de compra', 'adquirido', 'fecha de adquisicion', 'adquisicion', 'comprado', 'fecha compra'],
    nl: ['aankoopdatum', 'datum aankoop', 'verworven', 'gekocht', 'gekocht op', 'aanschafdatum'],
  },
  { to: 'notes', en: ['notes', 'note', 'remarks', 'comments', 'comment', 'private notes', 'memo', 'remark'], fr: ['remarques', 'remarque', 'commentaires', 'commentaire', 'notes', 'observations'], de: ['notizen', 'notiz', 'bemerkungen', 'bemerkung', 'anmerkungen', 'anmerkung', 'kommentar'], it: ['note', 'commenti', 'osservazioni', 'nota'], es: ['notas', 'comentarios', 'observaciones', 'nota'], nl: ['opmerkingen', 'notities', 'opmerking', 'aantekeningen'] },
]; // prettier-ignore

/** A word that makes any heading it is in private, whatever stands beside it; with the column of the ledger it is nearest to. */
export const PRIVATE_WORDS: Readonly<Record<string, readonly string[]>> = {
  cost: ['paid', 'price', 'cost', 'prix', 'achat', 'preis', 'bezahlt', 'prezzo', 'pagato', 'acquisto', 'precio', 'compra', 'prijs', 'betaald', 'invoice', 'rechnung', 'facture', 'postage', 'premium', 'fees'],
  value: ['worth', 'valuation', 'estimate', 'schatzwert', 'stima', 'estimacion', 'taxatie', 'profit'],
  insured: ['insured', 'insurance', 'assurance', 'versicherung', 'assicurazione', 'seguro', 'verzekering', 'policy'],
  storage: ['storage', 'stored', 'vault', 'safe', 'coffre', 'tresor', 'cassaforte', 'kluis', 'lagerort', 'aufbewahrung', 'box', 'tray'],
  seller: ['seller', 'dealer', 'vendor', 'vendeur', 'verkaufer', 'handler', 'venditore', 'vendedor', 'verkoper', 'buyer', 'owner', 'address', 'email', 'phone'],
  'find-spot': ['findspot', 'fundort', 'trouvaille', 'ritrovamento', 'hallazgo', 'vindplaats', 'grid', 'latitude', 'longitude', 'coordinates'],
  certificate: ['certificate', 'certificat', 'zertifikat', 'certificato', 'certificado', 'certificaat', 'cert'],
  acquired: ['acquired', 'purchased', 'bought'],
  notes: ['notes', 'private', 'privat', 'prive', 'perso', 'personnel', 'secret', 'confidential'],
}; // prettier-ignore
