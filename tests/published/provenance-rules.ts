type WrittenLink = {
  readonly year?: string;
  readonly how?: string;
  readonly from?: string;
  readonly to?: string;
  readonly says?: string;
  readonly direct?: boolean;
  readonly possibly?: boolean;
  readonly dealer?: boolean;
};

const AAM = 'American Alliance of Museums, Guide to Provenance Research (2001), suggested format';
const PHILADELPHIA = 'Philadelphia Museum of Art, How to read provenance information';

/** Rules of the printed form, each with a chain of invented owners that shows it. */
export const PRINTED_CHAINS: readonly { readonly rule: string; readonly links: readonly WrittenLink[]; readonly printed: string; readonly source: string }[] = [
  {
    rule: 'A semicolon says that it passed directly between two owners',
    links: [{ year: '1938', to: 'Captain Hollinside', direct: true }, { year: '1951', how: 'gift', to: 'Miss Garrowby' }],
    printed: 'Captain Hollinside, 1938; Miss Garrowby, by gift, 1951.',
    source: `${AAM}; ${PHILADELPHIA}`,
  },
  {
    rule: 'A full stop separates two owners when a direct transfer is not known to have occurred',
    links: [{ year: '1938', to: 'Captain Hollinside' }, { year: '1951', how: 'gift', to: 'Miss Garrowby' }],
    printed: 'Captain Hollinside, 1938. Miss Garrowby, by gift, 1951.',
    source: `${AAM}; ${PHILADELPHIA}`,
  },
  {
    rule: 'Dealers and salerooms stand in parentheses',
    links: [{ year: '1938', to: 'a shop in Stonegate', dealer: true, direct: true }, { year: '1940', how: 'purchase', to: 'Hubert Skelwith' }],
    printed: '(A shop in Stonegate), 1938; Hubert Skelwith, by purchase, 1940.',
    source: AAM,
  },
  {
    rule: 'What is uncertain is printed with "possibly"',
    links: [{ year: '1938', to: 'Captain Hollinside', possibly: true }],
    printed: 'Possibly Captain Hollinside, 1938.',
    source: AAM,
  },
  {
    rule: 'The chain begins with the earliest known owner, whatever the order it was written in',
    links: [{ year: '1951', to: 'Miss Garrowby' }, { year: '1938', to: 'Captain Hollinside' }],
    printed: 'Captain Hollinside, 1938. Miss Garrowby, 1951.',
    source: `${AAM}; ${PHILADELPHIA}`,
  },
  {
    rule: 'A seller who is named is an owner of his own, printed once',
    links: [
      { year: '1938', how: 'auction', from: 'Captain Hollinside', to: 'Miss Garrowby', says: 'lot 14' },
      { year: '1951', how: 'gift', from: 'Miss Garrowby', to: 'the keeper' },
    ],
    printed: 'Captain Hollinside; Miss Garrowby, at auction, 1938, lot 14; the keeper, by gift, 1951.',
    source: AAM,
  },
  {
    rule: 'A dealer it was bought from stands in parentheses, whether named as a seller or as the owner before',
    links: [
      { year: '1974', how: 'exchange', to: 'a shop in Fossgate' },
      { year: '1984', how: 'purchase', from: 'a shop in Fossgate', to: 'the keeper', dealer: true },
    ],
    printed: '(A shop in Fossgate), by exchange, 1974; the keeper, by purchase, 1984.',
    source: AAM,
  },
  {
    rule: 'Words from a ticket are quoted, and keep their own full stop',
    links: [{ year: '1911', how: 'bequest', to: 'the Institute', says: 'My Danish pennies.' }],
    printed: 'The Institute, by bequest, 1911, “My Danish pennies.”',
    source: `${AAM}; quotation marks by the rule of American printing`,
  },
  {
    rule: 'Nothing is printed for nothing known',
    links: [],
    printed: '',
    source: AAM,
  },
]; // prettier-ignore
