/** The page on which pieces are laid side by side. */
export const compareWords = {
  title: 'Side by side',
  description: 'Pieces of the cabinet laid side by side at one scale, or a face laid over another.',
  lead: 'Lay two pieces or more side by side, at one scale, with their facts beneath; or lay one face over another and see whether one die struck both.',
  noScript:
    'Laying pieces side by side wants a script. Without one, open two pages of pieces beside one another: every piece is shown at the same scale there, above a rule in millimetres.',
  list: 'The list of all pieces',
  worth: 'Worth laying side by side',
  sameDie: 'share a die',
  sameType: 'are of one type',
  these: (count: number) => (count === 2 ? 'these two' : `these ${count}`),
  nothing: 'Nothing lies here yet. Choose a piece.',
  lies: (count: number) => (count === 1 ? 'One piece lies here; add another.' : `${count} pieces at one scale.`),
  missing: (ids: readonly string[]) =>
    ids.length === 1
      ? `There is no piece “${ids[0] ?? ''}” here; its address may have been mistyped.`
      : `There are no pieces ${ids.map((id) => `“${id}”`).join(', ')} here; the address may have been mistyped.`,
  unfetched: 'Not everything could be fetched. Load the page again when there is a connection.',
  tooMany: (most: number) => `${most} pieces can lie here at once; the rest was left off.`,
  add: 'Add a piece',
  addHint: 'Its number, or words of its title',
  answers: (count: number) =>
    count === 0
      ? 'No piece answers to that. Try another word.'
      : count === 1
        ? 'One piece answers.'
        : `${count} pieces answer.`,
  first: (count: number, all: number) => `The first ${count} of ${all} that answer.`,
  show: 'Show',
  faces: { both: 'both faces', obverse: 'obverses', reverse: 'reverses' },
  laying: 'Lay them',
  laid: { beside: 'side by side', over: 'one over the other' },
  turned: 'reverses as they come up when turned',
  larger: 'larger',
  smaller: 'smaller',
  fit: 'as fits',
  size: 'Size',
  and: 'and',
  remove: (title: string) => `Take away ${title}`,
  takeAway: 'take away',
  earlier: (title: string) => `Move ${title} forward`,
  later: (title: string) => `Move ${title} back`,
  board: 'The pieces',
  facts: 'Their facts',
  fact: 'Fact',
  legendOf: (face: string) => `${face}: legend`,
  designOf: (face: string) => `${face}: design`,
  grade: 'Grade',
  problem: 'What ails it',
  differs: 'differs',
  onlyDiffering: 'only what differs',
  nothingTold: 'nothing told',
  more: (by: number, unit: string) => `${Math.abs(by)} ${unit} ${by > 0 ? 'more' : 'less'} than the first`,
  over: {
    name: (upper: string, lower: string) => `${upper} over ${lower}`,
    keys: 'Arrows move the upper one, [ and ] turn it, the space bar lifts it off and lays it back, 0 puts it straight.',
    fade: 'How much of the upper one is seen',
    role: 'two faces, one over the other',
    moves: [
      { name: 'move left', sign: '←', x: -1, y: 0 },
      { name: 'move right', sign: '→', x: 1, y: 0 },
      { name: 'move up', sign: '↑', x: 0, y: -1 },
      { name: 'move down', sign: '↓', x: 0, y: 1 },
    ],
    left: 'turn left',
    right: 'turn right',
    lift: 'lift it off',
    lay: 'lay it back',
    swap: 'change places',
    next: 'lay another over it',
    straight: 'put it straight',
    noPicture: 'There is no photograph of that face of both.',
    says: (degrees: number, across: number, down: number) =>
      degrees === 0 && across === 0 && down === 0
        ? 'It lies straight.'
        : [
            degrees === 0 ? '' : `turned ${Math.abs(degrees)}° to the ${degrees > 0 ? 'right' : 'left'}`,
            across === 0 ? '' : `${Math.abs(across).toFixed(1)} mm to the ${across > 0 ? 'right' : 'left'}`,
            down === 0 ? '' : `${Math.abs(down).toFixed(1)} mm ${down > 0 ? 'down' : 'up'}`,
          ]
            .filter((part) => part !== '')
            .join(', '),
  },
  /** On the page of a piece. */
  with: 'Lay it beside',
  another: 'another piece of your choice',
  soft: 'larger than its photograph is sharp',
  /** On the page where pieces are found. */
  gather: 'Choose pieces to compare',
  gatherOne: (title: string) => `Compare ${title}`,
  gatherShort: 'compare',
  gathered: (count: number) =>
    count === 0 ? 'None chosen yet.' : count === 1 ? 'One chosen; choose another.' : `${count} chosen.`,
  go: 'Lay them side by side',
  leave: 'Leave off choosing',
} as const;
