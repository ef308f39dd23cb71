const COUNTS = ['', '', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** The page on which pieces are compared. */
export const compareWords = {
  title: 'Compare',
  description: 'Compare pieces of the cabinet side by side at one scale, or one face over another.',
  lead: 'Two or more pieces at one scale, with what differs under each; or one face over another, to see whether the same die struck both.',
  noScript:
    'Comparing needs JavaScript. Without it, see two pieces at one scale on any list, or open the pages of both: each page has its own scale, with a rule in millimetres.',
  list: 'The list of all pieces',
  worth: 'Worth comparing',
  sameDie: 'one die',
  sameType: 'the same type in a book',
  sameTypeOfMints: 'the same type in a book, different mints',
  these: (count: number) => `Compare these ${COUNTS[count] ?? String(count)}`,
  nothing: 'No piece chosen yet. Choose one.',
  lies: (count: number) => (count === 1 ? 'One piece here; choose another.' : `${count} pieces at one scale.`),
  missing: (ids: readonly string[]) =>
    ids.length === 1
      ? `There is no piece “${ids[0] ?? ''}” here; the address may be mistyped.`
      : `There are no pieces ${ids.map((id) => `“${id}”`).join(', ')} here; the address may be mistyped.`,
  unfetched: 'Not everything could be loaded. Try again when there is a connection.',
  tooMany: (most: number) => `At most ${most} pieces can be compared; the others were left out.`,
  add: 'Another piece',
  addHint: 'Its number, or words of its title',
  answers: (count: number) =>
    count === 0 ? 'No results. Try another word.' : count === 1 ? 'One result.' : `${count} results.`,
  first: (count: number, all: number) => `The first ${count} of ${all} results.`,
  show: 'Show',
  faces: { both: 'both faces', obverse: 'obverses', reverse: 'reverses' },
  laying: 'View',
  laid: { beside: 'side by side', over: 'one over the other' },
  turned: 'reverses turned by die axis',
  larger: 'larger',
  smaller: 'smaller',
  fit: 'fit',
  size: 'Size',
  remove: (title: string) => `Put back ${title}`,
  takeAway: 'put back',
  left: 'move left',
  right: 'move right',
  earlier: (title: string) => `Move left: ${title}`,
  later: (title: string) => `Move right: ${title}`,
  board: 'The pieces',
  facts: 'Facts',
  legendOf: (face: string) => `${face}: legend`,
  designOf: (face: string) => `${face}: design`,
  grade: 'Grade',
  problem: 'Problem',
  differ: 'Where they differ',
  partly: 'Recorded of some only',
  alike: 'Where they are alike',
  nothingTold: 'not recorded',
  more: (by: number, unit: string) => `${Math.abs(by)} ${unit} ${by > 0 ? 'more' : 'less'} than the first`,
  over: {
    name: (upper: string, lower: string) => `${upper} over ${lower}`,
    keys: 'Arrows move the upper face, [ and ] turn it, the space bar hides and shows it, 0 resets it.',
    fade: 'Opacity of the upper face',
    role: 'two faces, one over the other',
    moves: [
      { name: 'move left', sign: '←', x: -1, y: 0 },
      { name: 'move right', sign: '→', x: 1, y: 0 },
      { name: 'move up', sign: '↑', x: 0, y: -1 },
      { name: 'move down', sign: '↓', x: 0, y: 1 },
    ],
    left: 'turn left',
    right: 'turn right',
    lift: 'hide',
    lay: 'show',
    swap: 'swap',
    next: 'use another piece',
    straight: 'reset',
    noPicture: 'One of the two has no photograph of that face.',
    says: (degrees: number, across: number, down: number) =>
      degrees === 0 && across === 0 && down === 0
        ? 'In its original position.'
        : [
            degrees === 0 ? '' : `turned ${Math.abs(degrees)}° to the ${degrees > 0 ? 'right' : 'left'}`,
            across === 0 ? '' : `${Math.abs(across).toFixed(1)} mm to the ${across > 0 ? 'right' : 'left'}`,
            down === 0 ? '' : `${Math.abs(down).toFixed(1)} mm ${down > 0 ? 'down' : 'up'}`,
          ]
            .filter((part) => part !== '')
            .join(', '),
  },
  /** On the page of a piece. */
  with: (piece: string) => `Compare with ${piece}`,
  another: 'another piece',
  soft: 'larger than its photograph is sharp',
  /** On the page where pieces are found. */
  gather: 'Choose pieces to compare',
  gatherOne: (title: string) => `Compare ${title}`,
  gatherShort: 'compare',
  gathered: (count: number) =>
    count === 0 ? 'None chosen yet.' : count === 1 ? 'One chosen; choose another.' : `${count} chosen.`,
  go: 'Compare',
  leave: 'Cancel',
} as const;
