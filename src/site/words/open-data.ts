/** What is said of the files that hold the catalogue as data. */
export const openDataWords = {
  title: 'The catalogue as data',
  description:
    'The public facts of every listed piece as files for spreadsheets, programs, readers and other catalogues.',
  lead: 'All that the pages show, to take away.',
  sheet: 'As a spreadsheet',
  sheetSays: (count: number): string =>
    `A table with a row for each of the ${count} pieces, which any spreadsheet program opens.`,
  sheetDoes: 'Download the table',
  detail: 'How the table is written',
  whole: 'For programs and other catalogues',
  pieceByPiece: 'Piece by piece',
  pieceFiles: (count: number) => `The files of ${count === 1 ? 'one piece' : `${count} pieces`}`,
  setBySet: 'Set by set',
  terms: 'Terms of use',
  piecesJson: 'pieces.json',
  piecesJsonSays: (count: number) =>
    `An array of ${count} ${count === 1 ? 'piece' : 'pieces'}: what the keeper recorded, in the keeper’s words, and what was computed from it.`,
  piecesCsv: 'pieces.csv',
  piecesCsvSays:
    'One row a piece, in UTF-8, with commas between the cells and quotation marks doubled (RFC 4180). A cell that a spreadsheet would take for a formula, such as a legend that begins with a cross, has an apostrophe in front; figures and EDTF dates that begin with a minus have none.',
  piecesSchema: 'pieces.schema.json',
  piecesSchemaSays: 'What pieces.json may hold, field by field (JSON Schema).',
  piecesCsvMetadata: 'pieces.csv-metadata.json',
  piecesCsvMetadataSays: 'What each column of pieces.csv holds (CSV on the Web).',
  linkedWhole: 'catalogue.jsonld',
  linkedWholeSays:
    'Pieces, rulers, mints, denominations, types, sets and exhibits as linked data in one file (JSON-LD, in the terms of schema.org and of Nomisma’s ontology).',
  exhibitManifest: 'manifest.json',
  exhibitManifestSays: (title: string) =>
    `The pictures of the exhibit ${title}, by case and group, for picture viewers (IIIF).`,
  feed: 'feed.xml',
  feedSays: 'The pieces added last, for a feed reader (RSS 2.0).',
  sitemap: 'sitemap.xml',
  sitemapSays: 'The address of every page, for search engines.',
  linkedSays:
    'Each piece has a linked-data record (JSON-LD, in the terms of schema.org and of Nomisma’s ontology) and, if it has photographs, a IIIF manifest for picture viewers.',
  elsewhere: (count: number, record: string, manifest: string) =>
    `The ${count} pieces are too many to list here. Each page links to its own files, and pieces.json gives every id: the record is at ${record}, the manifest at ${manifest}.`,
  setSays:
    'Every place of a set with its state, its piece and the reason, the other pieces that fit (“spares”) and the upgrades.',
  computed: 'How the computed facts are written',
  computedSays: [
    [
      'dating',
      'The earliest and the latest year. Years BC are counted as astronomers do: 0 is 1 BC, −1 is 2 BC. “open” stands where a date has no end, null where an end is not known.',
    ],
    [
      'eras',
      'For every scheme of periods: within, straddles, outside or unknown, and the periods with the share of each; null where the date has no end to share.',
    ],
    [
      'grade',
      'Lowest and highest step on the numeric scale that the words may mean; left out where a piece is not graded.',
    ],
    ['grams', 'The weight as a number; left out where it is not recorded.'],
    ['millimetres', 'The size as two numbers, across and down.'],
    ['fine', 'Grams of fine metal, lowest and highest; left out where weight or fineness is not known.'],
  ],
  notHere:
    'Not included: prices and values, storage, exact find spots, sellers that no history of a piece names, and pieces the keeper does not publish.',
  facts: 'Facts are free to use. Please cite this catalogue if they help you.',
  pictures: 'The licence of each photograph is given on its page and in its manifest.',
  noAddress:
    'This copy was made without a public address: full addresses in these files lead to the machine it was made on.',
  demo: 'A demonstration: the pieces are invented. Do not take them for evidence of anything.',
  table: { piece: 'Piece', linked: 'Linked data', iiif: 'Pictures' },
  manifest: 'manifest',
  record: 'record',
  fileOf: (file: string, title: string) => `${file} of ${title}`,
  feedTitle: (cabinet: string) => `${cabinet}: new pieces`,
  feedDescription: 'The pieces added last.',
  manifestFacts: {
    number: 'Number',
    date: 'Date',
    metal: 'Metal',
    weight: 'Weight',
    by: 'Photograph',
    record: 'Linked data',
  },
} as const;
