/** The words of the printed forms. */
export const paperWords = {
  forms: 'Print and set up',
  description: 'The forms of an exhibit, to be printed at true size.',
  heading: (exhibit: string) => `${exhibit}: print`,
  lead: 'Tick what to print, and print it from the menu of your browser, or with Ctrl P (⌘ P on a Mac): the sheets below are what comes out.',
  howToPrint: 'At true size, and on which paper',
  how: (paper: string) => [
    `In the window that opens choose ${paper}, 100 % (“actual size”), no margins, and no headers or footers. The line at the foot of every sheet must be 100 mm long: hold a ruler to it before you cut.`,
    `Begin on plain ${paper} with the plans and the set-up list. Put the joined sheets of a plan into the empty case: they show where everything goes.`,
    'Then put in white card of 160 to 250 g for the title, headings, labels, tickets and books.',
    'Everything is black on white, so a black-and-white printer will do. QR codes and large print are printed where you tick them.',
  ],
  stock: { plain: 'On plain paper', card: 'On card' },
  choose: 'What to print',
  part: (name: string, count: number) => `${name} (${count === 1 ? '1 sheet' : `${count} sheets`})`,
  holder: 'Cut for',
  beginAt: 'First cell (sheets that are half used: count from the left, row by row)',
  cell: (at: number, row: number, column: number) => `${at}: row ${row}, column ${column}`,
  foldHow:
    'Front: number, ruler, denomination, mint, date. Back: number, reference, metal and weight, die axis, issuer. “York?” is possibly York, “prob. York” probably. Fold along the dashes, paste, and cut round the front.',
  reports: 'What does not fit',
  withheldHeading: 'What is left out of this form',
  back: 'The exhibit online',
  others: 'Other forms',
  form: (paper: string, anonymous: boolean) =>
    `${paper}, ${anonymous ? 'without a name, for judging' : 'as the exhibit is shown'}`,
  rule: '0 to 100 mm',
  ruleSays: 'Not 100 mm? Print again at 100 % (“actual size”).',
  sheet: (number: number, of: number) => `Sheet ${number} of ${of}`,
  furtherSheet: 'Continued',
  furtherSheets: (count: number) =>
    `Show ${count === 1 ? 'one more sheet' : `${count} more sheets`} of this here; all are printed`,
  onSheet: (exhibit: string, name: string) => `${exhibit}. ${name}`,
  tooLarge: (width: number, height: number) =>
    `Cut off here: this is ${Math.ceil(width)} × ${Math.ceil(height)} mm, larger than the sheet. Shorten the text or make the label narrower.`,
  titleCard: 'Title and statement',
  overview: (number: number, scale: number) => `Plan of case ${number}, 1 : ${scale}`,
  overviewSays: (size: string, scale: number) =>
    `Inside ${size}. Drawn at 1 : ${scale}; the sheets that follow are at true size, cut where the dashes are. Numbers as in the list below.`,
  misfits: 'What does not fit:',
  plan: (number: number) => `Case ${number} at true size`,
  tile: (row: number, column: number) => `row ${row}, column ${column}`,
  joins: (left: number, top: number) =>
    `This corner is ${left.toFixed(1)} mm from the left and ${top.toFixed(1)} mm from the top of the case. Cut along the frame; join where the half circles meet.`,
  blankTile: (row: number, column: number) => `${row}.${column} empty, not printed`,
  blankTiles: (tiles: readonly string[]) => `Nothing is in ${tiles.join('; ')}: no sheet is printed for it.`,
  labels: 'Labels',
  labelNote: (key: number, number: string) => `${key} · ${number}`,
  groupCards: 'Headings and texts',
  tickets: 'Tickets, front and back',
  ticketsFor: (shape: 'round' | 'square', across: number | null) =>
    across === null
      ? 'Round tickets, 24 to 45 mm by piece'
      : `Tickets, ${shape}, ${across} mm${across === 50.8 ? ' (2 × 2 inches)' : ''}`,
  leftOut: (number: string, facts: readonly string[]) =>
    `${number}: no room for ${facts.join('; ')}. Choose a wider ticket.`,
  longLabels: 'Long labels',
  cutOff: (name: string, width: number, height: number) =>
    `${name}: ${Math.ceil(width)} × ${Math.ceil(height)} mm, larger than the sheet, so it is cut off there. Shorten the text or make the label narrower.`,
  aCard: 'A card',
  codes: 'QR codes for visitors, one for each case',
  codeSays: 'Pieces and labels of this case, on your telephone',
  largePrint: 'Every text in large print (24 pt)',
  plans: 'Plans of the cases',
  key: 'Key to the numbers',
  keyTo: (number: number) => `Key to case ${number}`,
  abbreviations: 'Abbreviations',
  bibliography: 'Bibliography',
  furtherReading: 'Further reading',
  research: 'Own research',
  acknowledgements: 'Acknowledgements',
  setUp: 'Set-up list',
  /** What is done in a case before and after its pieces are laid. */
  layPlan: (number: number) => `Case ${number}: the joined plan into the empty case`,
  layCards: (number: number, cards: number, isFirst: boolean) =>
    isFirst
      ? `Case ${number}: title card, and headings and texts (${cards})`
      : `Case ${number}: headings and texts (${cards})`,
  close: (number: number, labels: number) =>
    `Case ${number}: labels to their pieces (${labels}), look it through, close and lock it`,
  namingAddress: 'Without codes: the address they lead to says the name of the exhibitor.',
  noAddress: 'Without codes: the cabinet has no public address yet.',
  theExhibitor: 'the exhibitor',
  theExhibitorOpening: 'The exhibitor',
  nothingWithheld: 'The name is in no text of the exhibit; only “Shown by” was left out.',
  withheld: (places: readonly string[]) =>
    `The name, or a part of it, was in: ${places.join('; ')}. It now says “the exhibitor” there. Read these again before you print.`,
  ordinaryKept: (count: number) =>
    `${count === 1 ? 'One word of the name is' : `${count} words of the name are`} also in the lists or an ordinary word of this exhibit, and left where ${count === 1 ? 'it is' : 'they are'} alone. Read through for any that a judge could take for the name.`,
  /** What a form without a name prints all the same. */
  titleCardKept: (lines: readonly string[]) =>
    `The title card still says: ${lines.map((line) => `“${line}”`).join('; ')}. In a contest between clubs the name of a club is a name too: take it out of title-card: before you print.`,
  codesKept:
    'Where the set-up list has codes, they lead to pages that name nobody; but their address is that of the site. Do not leave that list with the case.',
  initialsInNumbers:
    'Some inventory numbers begin with the initials of the name. They are printed on tickets and next to labels.',
  placeOf: {
    title: 'the title',
    scope: 'the scope',
    statement: 'the statement',
    titleCard: 'the title card',
    abbreviations: 'the abbreviations',
    bibliography: 'the bibliography',
    furtherReading: 'the further reading',
    research: 'the own research',
    acknowledgements: 'the acknowledgements',
  } as Readonly<Record<string, string>>,
  inCaseTitle: (number: number) => `the title of case ${number}`,
  inGroup: (number: number, group: number) => `the heading or text of group ${group} in case ${number}`,
  inLabel: (key: number) => `the label of piece ${key}`,
  inPiece: (key: number) => `the title or facts of piece ${key}`,
  setUpTitle: (exhibit: string) => `${exhibit}: setting up`,
  setUpHow:
    'Every piece in the order of the cases, with the face to show. The codes of the set-up list lead here when the forms are printed without a name.',
  setUpFace: (title: string, face: string) => `${title}, ${face}`,
  shownBy: (keeper: string) => `Shown by ${keeper}`,
  inCase: (number: number, group: string) => `Case ${number}: ${group}`,
  axis: (hours: number) => `die axis ${hours}h`,
  codeOf: (title: string) => `A code that leads to the page of ${title}.`,
} as const;
