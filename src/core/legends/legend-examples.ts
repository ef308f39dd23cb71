/** How a legend is written here, for a visitor's table: what to write, and what it means. */
export const LEGEND_EXAMPLES: readonly { readonly write: string; readonly means: string }[] = [
  { write: 'CIVI TAS EBO RACI', means: 'cut in four parts, one between each pair of arms of the cross' },
  { write: '+EADGAR REX', means: 'begins at a cross' },
  { write: "EDW R' ANGL'", means: 'two words cut short, marked as such by the engraver' },
  { write: 'REX·ANGLIE', means: 'a stop between two words' },
  { write: 'ANGLO[RX]', means: 'the last two letters are no longer legible and are supplied' },
  { write: 'AVG(ustus)', means: 'the letters -ustus never stood there; they complete the word' },
  { write: 'OSBCHE…RE', means: 'a stretch is lost, and nobody can say of how many letters' },
  { write: 'MEMORIA FELIX, PLN', means: 'a second legend, in the exergue or in the field' },
  { write: 'محمد رسول الله', means: 'in Arabic letters, read from right to left' },
];

/** How a worn legend is asked for. */
export const MASK_EXAMPLES: readonly { readonly write: string; readonly means: string }[] = [
  { write: 'EBO', means: 'these three letters together, anywhere round the rim' },
  { write: 'E?O', means: 'one letter between E and O cannot be read' },
  { write: 'CIV*RACI', means: 'any number of letters between them, or none' },
  { write: 'RACICIVI', means: 'the end of the legend, and on to its beginning' },
];
