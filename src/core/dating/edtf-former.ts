import { readEdtf } from './edtf.ts';

/**
 * Forms of the draft of 2012 that the standard of 2019 took out, each with its form of today. They are refused by
 * name and not read, because software still in use writes them.
 */
interface FormerForm {
  readonly found: RegExp;
  readonly now: (text: string) => string;
  readonly because: string;
}

const FORMER_FORMS: readonly FormerForm[] = [
  {
    found: /(?:^|\/)unknown(?:\/|$)/i,
    now: (text) => text.replace(/unknown/gi, ''),
    because: 'An unknown end is now left empty',
  },
  {
    found: /\/open$|^open\//i,
    now: (text) => text.replace(/open/gi, '..'),
    because: 'An open end is now two full stops',
  },
  {
    found: /(?:^|[-/?~%])-?\d{0,3}u+(?:$|[-/?~%])/i,
    now: (text) => text.replace(/u/gi, 'X'),
    because: 'The u of 2012 is now X',
  },
  {
    found: /^-?\d{1,3}x+(?:$|[-/?~%])/,
    now: (text) => text.replaceAll('x', 'X'),
    because: 'An open digit is now a capital X',
  },
  {
    found: /^[?~%]?y-?\d/,
    now: (text) => text.replace('y', 'Y').replaceAll('e', 'E').replace('p', 'S'),
    because: 'The y of 2012 is now a capital Y',
  },
  { found: /\d(?:\?~|~\?)/, now: (text) => text.replace(/\?~|~\?/g, '%'), because: 'The pair ?~ is now %' },
  {
    found: /^(?!\(\d+\)$)(?=[^)]*\))\(?-?\d[\d\-?~%()/]*$/,
    now: (text) => text.replace(/[()]/g, ''),
    because: 'Parentheses no longer group',
  },
  { found: /^-?\d{4}-2\d\^/, now: (text) => text.replace(/\^.*$/, ''), because: 'The ^ of 2012 is gone' },
];

/** The sentence that refuses a form of 2012, or undefined when the text is none. */
export function refuseFormerEdtf(text: string): string | undefined {
  const found = FORMER_FORMS.filter((form) => form.found.test(text));
  const [former] = found;
  if (!former) return undefined;
  const now = found.reduce((written, form) => form.now(written), text);
  if (!readEdtf(now)?.ok) return undefined;
  return `"${text}" is EDTF as it stood in 2012. ${former.because}: write ${now} instead.`;
}
