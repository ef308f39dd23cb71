/** The words of the printed forms. */
export const paperWords = {
  forms: 'To print and set up',
  description: 'The forms of an exhibit, to be printed at true size.',
  heading: (exhibit: string) => `${exhibit}: the forms to print`,
  how: (paper: string) => [
    `First on plain ${paper}: the plans and the set-up list. Lay the sheets of a plan in the empty case, joined, and the rest goes where they say.`,
    `Then on white card of 160 to 250 g: title, headings, labels, tickets, books, in this order. Untick below what is not to be printed this time.`,
    'At 100 % (“actual size”), without margins and headers of the program. The line at the foot of every sheet must be 100 mm long: hold a ruler to it before you cut.',
  ],
  stock: { plain: 'On plain paper', card: 'On card' },
  choose: 'What to print',
  part: (name: string, count: number) => `${name} (${count === 1 ? '1 sheet' : `${count} sheets`})`,
  holder: 'Cut for',
  beginAt: 'First cell (sheets that are half used: count from the left, row by row)',
  cell: (at: number, row: number, column: number) => `${at}: row ${row}, column ${column}`,
  foldHow:
    'Front: number, ruler, denomination, mint, date. Back: number, reference, metal and weight, die axis. Fold along the dashes, paste, and cut round the front.',
  reports: 'What has no room',
  withheldHeading: 'What this form withholds',
  back: 'The exhibit on line',
  others: 'Other forms',
  form: (paper: string, anonymous: boolean) =>
    `${paper}, ${anonymous ? 'without a name, for judging' : 'as the exhibit is shown'}`,
  rule: '0 to 100 mm',
  ruleSays: 'Not 100 mm? Print again at 100 % (“actual size”).',
  sheet: (number: number, of: number) => (number > of ? `Sheet ${number}, the last` : `Sheet ${number} of ${of}`),
  onSheet: (exhibit: string, name: string) => `${exhibit}. ${name}`,
  tooLarge: (width: number, height: number) =>
    `Cut off here: this is ${Math.ceil(width)} × ${Math.ceil(height)} mm, larger than the sheet. Shorten the text or make the label narrower.`,
  titleCard: 'Title and statement',
  overview: (number: number, scale: number) => `Plan of case ${number}, 1 : ${scale}`,
  overviewSays: (width: number, height: number, scale: number) =>
    `Inside ${width} × ${height} mm. Drawn at 1 : ${scale}; the sheets that follow are at true size, cut where the dashes are. Numbers as in the list below.`,
  misfits: 'What does not fit:',
  plan: (number: number) => `Case ${number} at true size`,
  tile: (row: number, column: number) => `row ${row}, column ${column}`,
  joins: (left: number, top: number) =>
    `This corner lies ${left.toFixed(1)} mm from the left and ${top.toFixed(1)} mm from the top of the case. Cut along the frame; join where the half circles meet.`,
  blankTile: (row: number, column: number) => `${row}.${column} empty, not printed`,
  blankTiles: (tiles: readonly string[]) => `Nothing lies in ${tiles.join('; ')}: no sheet is printed for it.`,
  labels: 'Labels',
  labelNote: (key: number, number: string) => `${key} · ${number}`,
  groupCards: 'Headings and texts',
  tickets: 'Tickets, front and back',
  ticketsFor: (shape: 'round' | 'square', across: number | null) =>
    across === null
      ? 'Tickets, round, each as wide as its piece (24 to 45 mm)'
      : `Tickets, ${shape}, ${across} mm${across === 50.8 ? ' (2 × 2 inches)' : ''}`,
  leftOut: (number: string, facts: readonly string[]) =>
    `${number}: no room for ${facts.join('; ')}. Choose a wider ticket.`,
  longLabels: 'Long labels',
  cutOff: (name: string, width: number, height: number) =>
    `${name}: ${Math.ceil(width)} × ${Math.ceil(height)} mm, larger than the sheet, so it is cut off there. Shorten the text or make the label narrower.`,
  aCard: 'A card',
  plans: 'Plans of the cases',
  key: 'Key to the numbers',
  keyTo: (number: number) => `Key to case ${number}`,
  abbreviations: 'Abbreviations',
  bibliography: 'Books',
  furtherReading: 'To read further',
  acknowledgements: 'Thanks',
  setUp: 'Set-up list',
  namingAddress: 'Without codes: the address they lead to says the name of the exhibitor.',
  noAddress: 'Without codes: the cabinet has no public address yet.',
  theExhibitor: 'the exhibitor',
  theExhibitorOpening: 'The exhibitor',
  nothingWithheld: 'The name stood in no text of the exhibit; only “Shown by” was left out.',
  withheld: (places: readonly string[]) =>
    `The name, or a part of it, stood in: ${places.join('; ')}. It now says “the exhibitor” there. Read these again before you print.`,
  ordinaryKept: (count: number) =>
    `${count === 1 ? 'One word of the name is' : `${count} words of the name are`} also in the lists or an ordinary word of this exhibit, and left where ${count === 1 ? 'it stands' : 'they stand'} alone. Read through for any that a judge could take for the name.`,
  initialsInNumbers:
    'Some inventory numbers begin with the initials of the name. They are printed on tickets and beside labels.',
  placeOf: {
    title: 'the title',
    scope: 'the scope',
    statement: 'the statement',
    titleCard: 'the title card',
    abbreviations: 'the abbreviations',
    bibliography: 'the books',
    furtherReading: 'the further reading',
    acknowledgements: 'the thanks',
  } as Readonly<Record<string, string>>,
  inCaseTitle: (number: number) => `the title of case ${number}`,
  inGroup: (number: number, group: number) => `the heading or text of group ${group} in case ${number}`,
  inLabel: (key: number) => `the label of piece ${key}`,
  inPiece: (key: number) => `the title or facts of piece ${key}`,
  setUpTitle: (exhibit: string) => `${exhibit}: setting up`,
  setUpHow:
    'Every piece in the order of the cases, the face shown upwards. The codes of the set-up list lead here when the forms are printed without a name.',
  setUpFace: (title: string, face: 'obverse' | 'reverse') => `${title}, ${face}`,
  shownBy: (keeper: string) => `Shown by ${keeper}`,
  inCase: (number: number, group: string) => `Case ${number}: ${group}`,
  faces: { obverse: 'obverse', reverse: 'reverse', both: 'both faces' },
  faceShort: { obverse: 'obv.', reverse: 'rev.' },
  axis: (hours: number) => `die axis ${hours}h`,
  codeOf: (title: string) => `A code that leads to the page of ${title}.`,
} as const;
