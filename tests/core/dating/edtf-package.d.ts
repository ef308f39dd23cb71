/** The little of the package `edtf` that the tests ask; it brings no types of its own. */
declare module 'edtf' {
  /** First and last millisecond; null for an end not known, infinite for an open one, NaN for one out of reach. */
  export default function edtf(text: string): {
    readonly type: string;
    readonly min: number | null;
    readonly max: number | null;
  };
}
