/** The scripts a legend is distinguished by; `other` is any script without a table of its own here. */
export type Script = 'latin' | 'greek' | 'cyrillic' | 'arabic' | 'hebrew' | 'runic' | 'other';

/**
 * What a stretch of a transcription is.
 *
 * `cut` letters stand on the piece; `restored` ones stood there and are supplied `[ ]`; `expanded` ones never stood
 * there, they complete an abbreviation `( )`; `lost` is a stretch nobody can read `…`; a `stop` is cut between words
 * or marks an abbreviation; a `break` is a space, or where the legend goes on in another line, ring or field; a
 * `mark` is a picture among the letters, such as the cross a legend begins at.
 */
export type PartKind = 'cut' | 'restored' | 'expanded' | 'lost' | 'stop' | 'break' | 'mark';

/** One stretch. `supplied` is true on a stop, a mark or an expansion that stands inside `[ ]`. */
export type Part = { readonly kind: PartKind; readonly text: string; readonly supplied?: true };

/** A legend as read: the text as written, its stretches in order, and how its script runs. */
export type Legend = {
  readonly text: string;
  readonly parts: readonly Part[];
  readonly direction: 'ltr' | 'rtl';
  readonly script: Script;
};
