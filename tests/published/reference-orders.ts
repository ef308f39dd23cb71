const RIC = 'numbers of one museum’s Roman coins, as in its published export';

/** Numbers in the order their books print them. */
export const BOOK_ORDERS: readonly { readonly numbers: readonly string[]; readonly source: string }[] = [
  { numbers: ['2', '2a', '10'], source: 'the natural order of a book (common practice)' },
  { numbers: ['8B', '16A', '18B', '22A', '45B', '58A'], source: `RIC IX, ${RIC}` },
  { numbers: ['42', '52A', '109A', '112A', '136B', '642b'], source: `RIC IV, ${RIC}` },
  { numbers: ['83B', '86C', '89A', '120'], source: `RIC IX Constantinople, ${RIC}` },
  {
    numbers: ['I 5', 'IV 1', 'V 1', 'IX 2', 'X 1'],
    source: 'the ten volumes of The Roman Imperial Coinage, 1923–1994',
  },
  {
    numbers: ['480/2a', '480/2b', '480/3', '480/10'],
    source: 'Crawford, Roman Republican Coinage (1974), issue 480, as it numbers',
  },
];

/** Ranges as printed, with the last number cut short, and what they run to. */
export const RANGES: readonly {
  readonly printed: string;
  readonly from: string;
  readonly to: string;
  readonly source: string;
}[] = [
  { printed: '223-5', from: '223', to: '225', source: 'common practice in lists' },
  { printed: '223–25', from: '223', to: '225', source: 'New Hart’s Rules, ranges of numbers' },
  { printed: '1018–1020', from: '1018', to: '1020', source: 'New Hart’s Rules, ranges of numbers' },
  { printed: '132–6', from: '132', to: '136', source: 'New Hart’s Rules, ranges of numbers' },
  { printed: '1997–8', from: '1997', to: '1998', source: 'New Hart’s Rules, ranges of numbers' },
  { printed: '12a-c', from: '12a', to: '12c', source: 'common practice' },
  {
    printed: '480/2a-c',
    from: '480/2a',
    to: '480/2c',
    source: 'Crawford, Roman Republican Coinage (1974), common practice in citing it',
  },
];
