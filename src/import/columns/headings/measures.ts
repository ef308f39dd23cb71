import type { Headings } from '../mapping.ts';

/** Headings of what can be measured and seen: metal, weight, size, axis, grade, the faces. */
export const MEASURES: readonly Headings[] = [
  { to: 'metal', en: ['metal', 'material', 'composition'], fr: ['metal', 'matiere', 'alliage'], de: ['metall', 'material', 'legierung'], it: ['metallo', 'materiale', 'lega'], es: ['metal', 'material', 'composicion'], nl: ['metaal', 'materiaal'] },
  { to: 'fineness', en: ['fineness', 'purity', 'thousandths'], fr: ['titre metal', 'pureté', 'titre millieme'], de: ['feingehalt', 'feinheit', 'tausendteile'], it: ['titolo metallo', 'purezza', 'finezza'], es: ['ley', 'pureza'], nl: ['gehalte', 'zuiverheid'] },
  { to: 'weight', any: ['wt', 'wgt', 'g', 'gr', 'gm'], en: ['weight', 'mass'], fr: ['poids', 'masse', 'pds'], de: ['gewicht', 'gew', 'raugewicht', 'rauhgewicht', 'masse'], it: ['peso', 'massa'], es: ['peso', 'masa'], nl: ['gewicht', 'massa'] },
  { to: 'diameter', any: ['ø', '⌀', 'diam', 'dia', 'd mm', 'mm', 'dm'], en: ['diameter', 'size', 'module'], fr: ['diametre', 'module', 'taille'], de: ['durchmesser', 'dmr', 'grosse', 'dm'], it: ['diametro', 'misura'], es: ['diametro', 'modulo', 'tamano'], nl: ['diameter', 'doorsnede', 'middellijn'] },
  { to: 'height', en: ['height'], fr: ['hauteur'], de: ['hohe'], it: ['altezza'], es: ['altura'], nl: ['hoogte'] },
  { to: 'width', en: ['width'], fr: ['largeur'], de: ['breite'], it: ['larghezza'], es: ['anchura'], nl: ['breedte'] },
  { to: 'thickness', en: ['thickness'], fr: ['epaisseur'], de: ['dicke', 'starke'], it: ['spessore'], es: ['grosor', 'espesor'], nl: ['dikte'] },
  { to: 'axis', en: ['axis', 'die axis', 'die alignment'], fr: ['axe', 'axe des coins', 'orientation'], de: ['stempelstellung', 'stempelachse', 'achse', 'stellung'], it: ['asse', 'asse dei coni', 'orientamento'], es: ['eje', 'eje de cunos', 'posicion de cunos'], nl: ['stempelstand', 'as', 'muntslag'] },
  { to: 'measures', en: ['measures', 'measurements', 'dimensions', 'metrology'], fr: ['mesures', 'dimensions'], de: ['masse und gewicht', 'abmessungen', 'masse gewicht'], it: ['misure', 'dimensioni'], es: ['medidas', 'dimensiones'], nl: ['maten', 'afmetingen'] },
  { to: 'made', en: ['made', 'manufacture', 'technique'], fr: ['technique', 'fabrication'], de: ['herstellung', 'technik'], it: ['tecnica'], es: ['tecnica'], nl: ['techniek'] },
  { to: 'faces', en: ['faces', 'sides'] },
  { to: 'shape', en: ['shape'], fr: ['forme'], de: ['form'], it: ['forma'], es: ['forma'], nl: ['vorm'] },
  { to: 'treatments', en: ['treatments', 'treatment'], fr: ['traitements'], de: ['bearbeitungen'] },
  { to: 'peculiarities', en: ['peculiarities', 'mint error', 'error'], fr: ['particularites'], de: ['besonderheiten', 'fehlpragung'] },
  {
    to: 'grade',
    en: ['grade', 'condition', 'cond', 'quality', 'preservation', 'grade as given', 'conservation'],
    fr: ['etat', 'etat de conservation', 'qualite', 'conservation'],
    de: ['erhaltung', 'erhaltungsgrad', 'zustand', 'qualitat', 'erh'],
    it: ['conservazione', 'grado', 'qualita', 'stato di conservazione'],
    es: ['conservacion', 'estado', 'grado', 'calidad', 'estado de conservacion'],
    nl: ['kwaliteit', 'conditie', 'staat', 'bewaargraad'],
  },
  { to: 'grade-scale', en: ['grade scale', 'scale'] },
  { to: 'graded-by', en: ['graded by', 'grader'] },
  { to: 'problem', en: ['problem', 'problems', 'faults', 'defects', 'damage'], fr: ['defauts', 'defaut'], de: ['fehler', 'mangel', 'beschadigungen'], it: ['difetti'], es: ['defectos'], nl: ['gebreken', 'beschadiging'] },
  ...side('obverse', ['obv', 'av', 'vs', 'd', 'avers'], ['obverse'], ['avers', 'droit'], ['vorderseite', 'avers', 'bildseite'], ['dritto', 'diritto'], ['anverso'], ['voorzijde', 'vz']),
  ...side('reverse', ['rev', 'rv', 'rs', 'r', 'revers'], ['reverse'], ['revers'], ['ruckseite', 'revers', 'kehrseite'], ['rovescio'], ['reverso'], ['keerzijde', 'achterzijde', 'kz']),
  ...side('edge', [], ['edge'], ['tranche'], ['rand'], ['taglio', 'contorno'], ['canto'], ['rand']),
  { to: 'obverse die', en: ['obverse die', 'obv die'], fr: ['coin de droit'], de: ['vorderseitenstempel'] },
  { to: 'reverse die', en: ['reverse die', 'rev die'], fr: ['coin de revers'], de: ['ruckseitenstempel'] },
]; // prettier-ignore

type Words = readonly string[];

/** Both what stands on a face and what is shown there; a face with neither word is its design. */
function side(
  name: string,
  any: Words,
  en: Words,
  fr: Words,
  de: Words,
  it: Words,
  es: Words,
  nl: Words,
): readonly Headings[] {
  const with_ = (words: Words, others: Words) =>
    words.flatMap((word) => others.flatMap((other) => [`${word} ${other}`, `${other} ${word}`]));
  return [
    {
      to: `${name} legend`,
      en: with_([...any, ...en], ['legend', 'inscription', 'text']),
      fr: with_(
        [...any, ...fr, ...fr.flatMap((word) => [`du ${word}`, `de ${word}`])],
        ['legende', 'inscription', 'titulature'],
      ),
      de: [
        ...with_([...any, ...de], ['legende', 'umschrift', 'aufschrift', 'inschrift', 'schrift']),
        ...(name === 'edge' ? ['randschrift', 'randinschrift'] : []),
      ],
      it: with_(
        [...any, ...it, ...it.flatMap((word) => [`del ${word}`, `al ${word}`])],
        ['legenda', 'leggenda', 'iscrizione'],
      ),
      es: with_([...any, ...es, ...es.map((word) => `del ${word}`)], ['leyenda', 'inscripcion']),
      nl: with_([...any, ...nl], ['omschrift', 'legende', 'opschrift', 'tekst']),
    },
    { to: `${name} reading`, en: with_([...any, ...en], ['reading', 'transcription']) },
    {
      to: `${name} design`,
      any: any.filter((word) => word.length > 1),
      en: [...en, ...with_([...any, ...en], ['design', 'type', 'description', 'image', 'picture'])],
      fr: [
        ...fr,
        ...with_([...any, ...fr, ...fr.flatMap((word) => [`du ${word}`, `de ${word}`])], ['description', 'type']),
      ],
      de: [...de, ...with_([...any, ...de], ['bild', 'beschreibung', 'darstellung', 'motiv'])],
      it: [...it, ...with_([...any, ...it, ...it.map((word) => `del ${word}`)], ['descrizione', 'tipo'])],
      es: [...es, ...with_([...any, ...es, ...es.map((word) => `del ${word}`)], ['descripcion', 'tipo'])],
      nl: [...nl, ...with_([...any, ...nl], ['beschrijving', 'afbeelding'])],
    },
  ];
}
