import { readFileSync } from 'node:fs';

/**
 * Strings that three public implementations of EDTF accept and refuse in their own tests: unt-libraries/edtf-validate
 * (BSD), ixc/python-edtf (MIT), inukshuk/edtf.js (BSD).
 */
export interface EdtfString {
  readonly source: string;
  readonly edtf: string;
  readonly accepted: boolean;
}

const path = new URL('edtf-strings.csv', import.meta.url);

export const EDTF_STRINGS: readonly EdtfString[] = readFileSync(path, 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [, source = '', , quoted = '', expected = ''] = /^([^,]*),([^,]*),("[^"]*"|[^,]*),([^,]*)/.exec(line) ?? [];
    return { source, edtf: quoted.replace(/^"|"$/g, ''), accepted: expected === 'valid' };
  });
