import type { FactsTable } from './row.ts';

/** Where the comments of a block begin, and how long a line may be. */
const COMMENT = 32;
const WIDE = 118;

/**
 * The lines of a file with every field of a table, each with an example and what belongs in it: what `content/README.md`
 * shows. What stands between the lines can be read as it is.
 */
export function fieldsAsLines(rows: FactsTable): readonly string[] {
  return Object.entries(rows).flatMap(([name, { example, says, choices, control }]) => {
    const line = `${name}: ${example}`;
    const words = `${says}${control === 'choice' && choices !== undefined ? ` One of: ${choices.join(', ')}.` : ''}`;
    const plain = words.replaceAll('`', '');
    // An example longer than its column stands below its comment.
    if (line.length > COMMENT - 2) return [...folded(plain, WIDE - 2).map((one) => `# ${one}`), line];
    const [first = '', ...more] = folded(plain, WIDE - COMMENT - 2);
    const pad = ' '.repeat(COMMENT);
    return [`${line.padEnd(COMMENT)}# ${first}`, ...more.map((one) => `${pad}# ${one}`)];
  });
}

/** The parts of the fields that have parts, as lines of a list: `obverse: legend, reading, design`. */
export function partsAsLines(rows: FactsTable): readonly string[] {
  const seen = new Map<FactsTable, string[]>();
  const walk = (all: FactsTable, before: string): void => {
    for (const [name, { parts }] of Object.entries(all)) {
      if (parts === undefined) continue;
      seen.set(parts, [...(seen.get(parts) ?? []), `${before}${name}`]);
      walk(parts, `${before}${name}.`);
    }
  };
  walk(rows, '');
  return [...seen].map(
    ([parts, names]) =>
      `- ${names.map((name) => `\`${name}\``).join(', ')}: ${Object.entries(parts)
        .map(
          ([name, { says, choices, control }]) => `\`${name}\` (${says.replace(/\.$/, '')}${oneOf(control, choices)})`,
        )
        .join('; ')}.`,
  );
}

/** The words that a choice of more than yes and no is among. */
function oneOf(control: string, choices: readonly string[] = []): string {
  return control === 'choice' && !choices.includes('yes') ? `. One of: ${choices.join(', ')}` : '';
}

function folded(text: string, wide: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + word.length + 1 > wide) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}
