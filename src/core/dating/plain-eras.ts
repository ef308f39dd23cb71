/** Signs of an era as they are printed, with points and spaces, and the short form that the grammar goes on with. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/(?<![\p{L}\d.])B\. ?C\. ?E\.?(?![\p{L}\d])|(?<=\d)B\. ?C\. ?E\.?(?!\p{L})/giu, 'BCE'],
  [/(?<![\p{L}.])B\. ?C\.?(?![\p{L}.]| ?E\b)/giu, 'BC'],
  [/(?<![\p{L}.])A\. ?D\.?(?![\p{L}.])/giu, 'AD'],
  [/(?<![\p{L}.])C\. ?E\.?(?![\p{L}.])/gu, 'CE'],
  [/(?<![\p{L}.])A\. ?H\.?(?![\p{L}.])/gu, 'AH'],
];

/** `1279 AD.`, `AD. 134` */
const POINT_AFTER = /(?<!\p{L})(AD|BCE?|CE|AH)\.(?!\p{L})/giu;

/** A sign run together with its figures: `AD134`, `27BC`. */
const RUN_ON_BEFORE = /(?<!\p{L})(AD|BC|AH|CE|BCE)(?=\d)/giu;
const RUN_ON_AFTER = /(?<=\d)(?=(?:AD|BCE?|CE|AH)(?!\p{L}))/giu;

/** `A.D. 134-138`, `AD134`, `27 B. C.` with the signs of the era in their short form, parted from the figures. */
export function withPlainEras(text: string): string {
  return SIGNS.reduce((words, [printed, short]) => words.replace(printed, short), text)
    .replace(POINT_AFTER, '$1')
    .replace(RUN_ON_BEFORE, '$1 ')
    .replace(RUN_ON_AFTER, ' ');
}
