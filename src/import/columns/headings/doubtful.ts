import type { Headings } from '../mapping.ts';

/** Headings that mean one thing to one collector and another to the next; `to` names the doubt. */
export const DOUBTFUL: readonly Headings[] = [
  { to: 'date', en: ['date', 'when'], fr: ['date', 'quand'], de: ['datum', 'wann'], it: ['data'], es: ['fecha'], nl: ['datum'] },
  { to: 'value', en: ['value', 'val'], fr: ['valeur'], de: ['wert'], it: ['valore'], es: ['valor'], nl: ['waarde'] },
  { to: 'place', en: ['location', 'place', 'where', 'origin', 'region', 'city', 'town'], fr: ['lieu', 'localisation', 'emplacement', 'ville', 'origine'], de: ['ort', 'standort', 'herkunft', 'stadt'], it: ['luogo', 'posizione', 'origine', 'citta'], es: ['lugar', 'ubicacion', 'origen', 'ciudad'], nl: ['plaats', 'locatie', 'herkomst', 'stad'] },
  { to: 'country', en: ['country', 'nation'], fr: ['pays'], de: ['land', 'staat', 'land gebiet', 'gebiet', 'herrschaft', 'land staat'], it: ['paese'], es: ['pais'], nl: ['land'] },
  { to: 'authority', en: ['ruler issuer', 'ruler or issuer', 'issuer ruler', 'issuer or ruler', 'country ruler', 'ruler country', 'issued by', 'authority issuer'], fr: ['pays autorite', 'pays souverain'], de: ['land herrscher', 'herrscher land'], it: ['paese sovrano', 'paese autorita'] },
  { to: 'number', any: ['no', 'nr', 'n', '#', 'num', 'id', 'n°', 'nº', 'no #', 'ref #', 'item #', 'coin #', 'my #', '# no', 'id #'] },
  { to: 'provenance', en: ['provenance', 'pedigree', 'ex', 'history', 'collection', 'former collection'], fr: ['provenance', 'pedigree', 'ancienne collection'], de: ['provenienz', 'vorbesitzer', 'sammlung'], it: ['provenienza', 'collezione'], es: ['procedencia', 'coleccion'], nl: ['provenance', 'collectie', 'vorige eigenaar'] },
  { to: 'type', en: ['type', 'variety', 'class'], fr: ['type', 'variete', 'classe'], de: ['typ', 'variante', 'klasse'], it: ['tipo', 'varieta', 'classe'], es: ['tipo', 'variedad', 'clase'], nl: ['type', 'variant', 'klasse'] },
  { to: 'description', en: ['description', 'details', 'design', 'legend', 'inscription', 'text', 'coin', 'item', 'piece', 'object', 'name'], fr: ['description', 'legende', 'monnaie', 'objet', 'designation', 'nom'], de: ['beschreibung', 'umschrift', 'legende', 'munze', 'objekt', 'text', 'name'], it: ['descrizione', 'legenda', 'moneta', 'oggetto', 'nome'], es: ['descripcion', 'leyenda', 'moneda', 'objeto', 'nombre'], nl: ['beschrijving', 'omschrijving', 'munt', 'object', 'naam'] },
]; // prettier-ignore
