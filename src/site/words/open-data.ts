/** What is said of the files that hold the catalogue as data. */
export const openDataWords = {
  title: 'The catalogue as data',
  description:
    'The public facts of every listed piece as files for spreadsheets, programs, readers and other catalogues.',
  lead: 'All that the pages show can be taken away: as a table for a spreadsheet, as one file for a program of your own or another catalogue, as pictures to look at side by side.',
  sheet: 'As a spreadsheet',
  sheetSays: (count: number): string =>
    `A table with a row for each of the ${count} pieces, which any spreadsheet program opens: to sort, to count, to print a list.`,
  sheetDoes: 'Download the table',
  whole: 'As one file',
  pieceByPiece: 'Piece by piece',
  pieceFiles: (count: number) => `The files of ${count === 1 ? 'one piece' : `${count} pieces`}`,
  setBySet: 'Set by set',
  terms: 'Terms of use',
  forPrograms: 'For those who write programs',
  forProgramsSays: 'The formats, how each is written, and a file for every piece.',
  piecesJson: 'pieces.json',
  piecesJsonDoes: 'All pieces, for a program of your own',
  piecesJsonSays: (count: number) =>
    `What the keeper recorded of ${count} ${count === 1 ? 'piece' : 'pieces'}, in the keeper’s words, and what was computed from it.`,
  piecesCsv: 'pieces.csv',
  piecesCsvSays:
    'One row a piece, in UTF-8, with commas between the cells and quotation marks doubled (RFC 4180). A cell that a spreadsheet would take for a formula, such as a legend that begins with a cross, has an apostrophe in front; figures and EDTF dates that begin with a minus have none.',
  piecesSchema: 'pieces.schema.json',
  piecesSchemaSays: 'What pieces.json may hold, field by field (JSON Schema).',
  piecesCsvMetadata: 'pieces.csv-metadata.json',
  piecesCsvMetadataSays: 'What each column of pieces.csv holds (CSV on the Web).',
  linkedWhole: 'catalogue.jsonld',
  linkedWholeDoes: 'Everything, for other catalogues',
  linkedWholeSays:
    'Pieces, rulers, mints, denominations, types, sets and exhibits, each with its address, in a form that museums and libraries read.',
  linkedWholeFormat: 'JSON-LD, in the terms of schema.org and of Nomisma’s ontology.',
  exhibitManifest: 'manifest.json',
  exhibitManifestDoes: (title: string) => `The pictures of the exhibit “${title}”`,
  exhibitManifestSays: 'By case and group, to look at in a viewer for pictures from museums.',
  exhibitManifestFormat: 'IIIF Presentation; one for each exhibit that has pictures.',
  feed: 'feed.xml',
  feedDoes: 'The pieces added last',
  feedSays: 'For a feed reader, which tells you when there is a new one.',
  feedFormat: 'RSS 2.0.',
  sitemap: 'sitemap.xml',
  sitemapSays: 'The address of every page, for search engines.',
  linkedSays:
    'Each piece has a linked-data record (JSON-LD, in the terms of schema.org and of Nomisma’s ontology) and, if it has photographs, a IIIF manifest for picture viewers.',
  elsewhere: (count: number, record: string, manifest: string) =>
    `The ${count} pieces are too many to list here. Each page links to its own files, and pieces.json gives every id: the record is at ${record}, the manifest at ${manifest}.`,
  setSays:
    'A set with every place: its state, the piece in it and the reason, the other pieces that fit, and what would be better.',
  formats: 'The files and their formats',
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
