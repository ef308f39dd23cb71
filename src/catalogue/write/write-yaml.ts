import type { Written } from '../yaml.ts';

/** The width a line of facts keeps to where it can. */
const WIDE = 120;
/** The width up to which a list or a few fields stay on one line. */
const SHORT = 100;
/** Fields whose letters are always between quotation marks: an inventory number keeps its noughts, a legend its signs. */
const QUOTED = new Set(['number', 'legend']);

type Fields = { readonly [field: string]: Written };

/** Facts as YAML, field under field, as a person writes them; `readYaml` reads the same facts back. Ends with a line end. */
export function formatYaml(fields: Fields): string {
  return Object.entries(fields)
    .map(([name, value]) => `${formatField(name, value)}\n`)
    .join('');
}

/** One field with its value: one line where it is short, else lines indented below. No line end at its end. */
export function formatField(name: string, value: Written, indent = ''): string {
  const key = `${indent}${formatKey(name)}:`;
  if (typeof value === 'string') return `${key} ${formatText(value, { indent, before: key.length + 1, name })}`;
  const line = `${key} ${formatInLine(value, name)}`;
  const inner = `${indent}  `;
  if (isList(value)) {
    const isPlainList = value.every((one) => typeof one === 'string');
    if (value.length === 0 || (line.length <= SHORT && (isPlainList || value.length === 1))) return line;
    return [key, ...value.map((one) => `${inner}- ${formatInList(one, inner)}`)].join('\n');
  }
  const isShort = line.length <= SHORT && Object.values(value).every((one) => typeof one === 'string');
  if (isShort || Object.keys(value).length === 0) return line;
  return [key, ...Object.entries(value).map(([field, one]) => formatField(field, one, inner))].join('\n');
}

/** A value on one line whatever its length, as it stands after a field's colon. */
export function formatInLine(value: Written, name = ''): string {
  if (typeof value === 'string') return formatScalar(value, false, name);
  return formatInBrackets(value);
}

/** An entry of a list, after its hyphen. */
function formatInList(value: Written, indent: string): string {
  if (typeof value === 'string') return formatScalar(value, false);
  const line = formatInBrackets(value);
  if (isList(value) || Object.keys(value).length === 0 || indent.length + line.length + 2 <= WIDE * 1.5) return line;
  return Object.entries(value)
    .map(([field, one]) => formatField(field, one, `${indent}  `))
    .join('\n')
    .trimStart();
}

/** An entry of a list in lines of its own, its hyphen after `indent`; what holds lists is written field under field. */
export function formatEntry(value: Written, indent: string): string {
  const isDeep = typeof value === 'object' && !isList(value) && Object.values(value).some(isList);
  const lines = isDeep
    ? Object.entries(value)
        .map(([field, one]) => formatField(field, one, `${indent}  `))
        .join('\n')
        .trimStart()
    : formatInList(value, indent);
  return `${indent}- ${lines}\n`;
}

function formatInBrackets(value: Written): string {
  if (typeof value === 'string') return formatScalar(value, true);
  if (isList(value)) return `[${value.map(formatInBrackets).join(', ')}]`;
  const fields = Object.entries(value).map(
    ([name, one]) =>
      `${formatKey(name)}: ${typeof one === 'string' ? formatScalar(one, true, name) : formatInBrackets(one)}`,
  );
  return fields.length === 0 ? '{}' : `{ ${fields.join(', ')} }`;
}

/** A text after its field: on the line, or folded or line by line below it when it is long or has lines of its own. */
function formatText(text: string, at: { indent: string; before: number; name: string }): string {
  const inner = `${at.indent}  `;
  const isTidy = text.trim() === text && !UNPRINTABLE.test(text.replaceAll('\n', '')) && text !== '';
  if (isTidy && text.includes('\n'))
    return ['|-', ...text.split('\n').map((line) => (line === '' ? '' : `${inner}${line}`))].join('\n');
  const scalar = formatScalar(text, false, at.name);
  if (!isTidy || QUOTED.has(at.name) || at.before + scalar.length <= WIDE || !text.includes(' ')) return scalar;
  return ['>-', ...fold(text, WIDE - inner.length).map((line) => `${inner}${line}`)].join('\n');
}

/** A text in lines broken at single blanks, which reading joins again by one blank each. */
function fold(text: string, wide: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/(?<=\S) (?=\S)/)) {
    if (line !== '' && line.length + 1 + word.length > wide) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** What must be told by its number between double quotation marks: controls, odd line ends and blanks, marks of order. */
const UNPRINTABLE = /[\p{Cc}\u2028\u2029\uFEFF\uFFFE\uFFFF]|\p{Cs}/u;
const EVERY_UNPRINTABLE = new RegExp(UNPRINTABLE, 'gu');

function formatScalar(text: string, isInBrackets: boolean, name = ''): string {
  if (!QUOTED.has(name) && isPlain(text, isInBrackets)) return text;
  const isSingle = /["\\]/.test(text) && !text.includes("'") && !UNPRINTABLE.test(text);
  if (isSingle) return `'${text}'`;
  return inDoubleMarks(text);
}

function inDoubleMarks(text: string): string {
  const inside = text
    .replace(/["\\]/g, '\\$&')
    .replace(EVERY_UNPRINTABLE, (sign) =>
      sign === '\n' ? '\\n' : sign === '\t' ? '\\t' : `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
    );
  return `"${inside}"`;
}

/** Whether a text needs no quotation marks: not for reading it back, nor for any other reader of YAML to see a text in it. */
function isPlain(text: string, isInBrackets: boolean): boolean {
  if (text === '' || text.trim() !== text || UNPRINTABLE.test(text)) return false;
  if (/^[-?:](?:\s|$)|^[,[\]{}#&*!|>'"%@`=<~]|^\.\.\.|^---/.test(text)) return false;
  if (/:(?:\s|$)|\s#/.test(text)) return false;
  if (isInBrackets && /[,[\]{}]|^[-?:]|:/.test(text)) return false;
  return !/^[-+]?0\d+$|^0[xob]/i.test(text) && !/---\s*$/.test(text);
}

function formatKey(name: string): string {
  return isPlain(name, true) ? name : inDoubleMarks(name);
}

function isList(value: Written): value is readonly Written[] {
  return Array.isArray(value);
}
