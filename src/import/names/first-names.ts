/**
 * Names of rulers as English, French, German, Italian, Spanish, Dutch and Latin write them, with the shortenings of lists; the
 * English form first. Small letters without accents. From memory; facts of the languages, common practice.
 */
const NAMES: readonly string[] = [
  'adolphus adolf adolphe adolfo',
  'albert alberto albrecht albertus',
  'alexander alexandre alessandro alejandro alexandros aleksander alex',
  'alfonso alphonse alfons alphonsus alonso',
  'anne anna ana',
  'augustus auguste august augusto',
  'baldwin baudouin balduin baldovino balduino boudewijn',
  'catherine katharina caterina catalina katharine ekaterina',
  'charles karl carlo carlos karel carolus chas',
  'christian christiaan cristiano christianus',
  'claudius claude claudio',
  'conrad konrad corrado conrado koenraad',
  'constantine constantin konstantin costantino constantino constantijn constantinus konstantinos',
  'edgar edgard edgardo',
  'edmund edmond edmondo edmundo',
  'edward edouard eduard edoardo eduardo edwardus edw',
  'elizabeth elisabeth elisabetta eliz',
  'ernest ernst ernesto ernestus',
  'eugene eugen eugenio',
  'ferdinand fernando ferdinando fernand ferdinandus ferd',
  'francis francois franz francesco francisco frans franciscus',
  'frederick frederic friedrich federico frederik fredrik fridericus fred',
  'george georges georg giorgio jorge joris georgius geo',
  'gustav gustave gustavus gustaf gustavo',
  'henry henri heinrich enrico enrique hendrik henricus hen',
  'hugh hugues hugo ugo',
  'isabella isabelle isabel',
  'ivan iwan',
  'james jacques jakob giacomo jaime jacobus jas',
  'joan jeanne johanna giovanna juana',
  'john jean johann giovanni juan jan johannes ioannes joannes jno',
  'joseph josef giuseppe jose jozef josephus',
  'leopold leopoldo leopoldus',
  'louis ludwig luigi luis lodewijk ludovicus lewis',
  'margaret marguerite margarethe margherita margarita margaretha',
  'mary marie maria',
  'matthias mathias mattia matias',
  'maximilian maximilien massimiliano maximiliano maximiliaan',
  'maurice moritz maurizio mauricio maurits mauritius',
  'nicholas nicolas nikolaus nicola niccolo nikolaas nikolai nicolaus',
  'otto othon ottone oton otho',
  'paul paolo pablo paulus',
  'peter pierre pietro pedro petrus pieter',
  'philip philippe philipp filippo felipe filips philippus phil',
  'pius pie pio',
  'richard riccardo ricardo ricardus rich ric',
  'robert roberto robertus rob',
  'rudolf rodolphe rodolfo rudolph rudolphus',
  'sigismund sigismond sigismondo segismundo zygmunt',
  'stephen etienne stephan stefan stefano esteban steven stephanus steph',
  'sylvester silvester silvestre',
  'theodore theodor teodoro theodorus',
  'theodosius theodose teodosio',
  'umberto humbert humberto',
  'victor viktor vittorio',
  'victoria viktoria vittoria',
  'vladislaus wladyslaw ladislaus ladislas ladislao',
  'william guillaume wilhelm guglielmo guillermo willem gulielmus wm will',
]; // prettier-ignore

const ENGLISH = new Map(
  NAMES.flatMap((line) => {
    const forms = line.split(' ');
    return forms.map((form) => [form, forms[0] ?? form] as const);
  }),
);

/**
 * The English form of a ruler's name, whichever of the languages it is written in: `eduard` is `edward`. A shortened form with its
 * point, `edw.`, is the one name it can begin; null where it could begin several, or none.
 */
export function englishName(word: string): string | null {
  const plain = word.replace(/\.$/, '');
  const known = ENGLISH.get(plain);
  if (known !== undefined || plain === word) return known ?? plain;
  const begun = new Set([...ENGLISH].filter(([form]) => form.startsWith(plain)).map(([, english]) => english));
  const [only] = begun;
  return begun.size === 1 && only !== undefined ? only : null;
}

/** Whether a word is a name that rulers bear, in its English form. */
export function isFirstName(word: string): boolean {
  return ENGLISH.has(word);
}

/** By-names that are a word in each language; the English word first. */
const BYNAMES: readonly string[] = [
  'great grosse grossen grand grande groote grote magnus magno',
  'bald chauve kahle calvo kale',
  'bold temeraire kuhne temerario stoute hardi',
  'confessor confesseur bekenner confessore confesor belijder',
  'conqueror conquerant eroberer conquistatore conquistador veroveraar',
  'fair bel schone bello hermoso',
  'fat gros dicke grosso gordo dikke',
  'good bon gute guten buono bueno goede',
  'just juste gerechte giusto justo rechtvaardige',
  'lame boiteux lahme zoppo cojo',
  'pious pieux fromme frommen piadoso vrome',
  'short bref kurze breve korte',
  'wise sage weise weisen saggio sabio wijze',
  'younger jeune jungere jungeren giovane joven jonge junior',
  'elder aine altere alteren vecchio viejo oude senior',
]; // prettier-ignore
const BYNAME = new Map(
  BYNAMES.flatMap((line) => {
    const forms = line.split(' ');
    return forms.map((form) => [form, forms[0] ?? form] as const);
  }),
);

/** The English form of a by-name: `grosse` is `great`; null for any other word. */
export function englishByname(word: string): string | null {
  return BYNAME.get(word) ?? null;
}
