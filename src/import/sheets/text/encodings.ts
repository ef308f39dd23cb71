import { good, refuse, type Outcome } from '../../../core/outcome.ts';

/** What keepers and their programs call encodings, beside the labels of the Encoding Standard. */
const ALSO: Readonly<Record<string, string>> = {
  macroman: 'macintosh',
  'mac-roman': 'macintosh',
  'mac os roman': 'macintosh',
  utf16: 'utf-16le',
  'utf-16 le': 'utf-16le',
  'utf-16 be': 'utf-16be',
};

/** An encoding by any of its labels (Encoding Standard, 4.2), as that standard names it. */
export function parseEncoding(label: string): Outcome<string> {
  const plain = label.trim().toLowerCase();
  try {
    return good(new TextDecoder(ALSO[plain] ?? plain.replace(/^cp-?(?=125\d$)/, 'windows-')).encoding);
  } catch {
    return refuse(
      `No encoding is called "${label}". Write one of utf-8, utf-16le, utf-16be, windows-1250, windows-1251, windows-1252, windows-1253, windows-1256, macintosh.`,
    );
  }
}

/** The bytes 80 to 9F of windows-1252 (Encoding Standard, index windows-1252). */
const BETWEEN = '€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ';

/** Bytes as a text, a mark at the beginning left out. */
export function decodeAs(bytes: Uint8Array, encoding: string): string {
  const text = new TextDecoder(encoding).decode(bytes);
  if (encoding !== 'windows-1252') return text;
  // Some releases of Node read windows-1252 as ISO-8859-1, in which these bytes are control signs.
  return text.replace(/[\x80-\x9f]/g, (sign) => BETWEEN[sign.charCodeAt(0) - 0x80] ?? sign);
}
