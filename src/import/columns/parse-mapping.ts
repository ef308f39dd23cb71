import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import { isCurrency } from '../../core/money/currencies.ts';
import { nearestName } from '../../catalogue/nearest.ts';
import { lineOf, readYaml } from '../../catalogue/yaml.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { Mapping, MappedColumn, Meaning, Settings } from './mapping.ts';
import { CALENDARS, DEFAULT_TITLE, LANGUAGES, MEANINGS, SETTINGS } from './mapping.ts';
import { parseReading } from './parse-column-rule.ts';
import { patternProblem } from './pattern.ts';
import { isField } from './targets.ts';

/** What is wrong with a mapping file, and where. */
export type MappingProblem = { readonly line: number; readonly field: string; readonly says: string };

const PARTS = [
  'language',
  'title',
  'read',
  'always',
  'words',
  'sections',
  'as-above',
  'dittos',
  'skip',
  'calendars',
  'blanks',
  'columns',
];

/** Reads a mapping file; what is wrong comes in one run, a line each: `line 7 · columns.Date: …`. */
export function parseMapping(text: string): Outcome<Mapping> {
  const yaml = readYaml(text);
  if (!yaml.ok) {
    const says =
      yaml.twice === null
        ? `This cannot be read from here on: ${yaml.reason}.`
        : `"${yaml.twice}" stands here twice. Take one of the two out.`;
    return refuse(`line ${yaml.line}: ${says}`);
  }
  const reader = new Map<string, Written>(entries(yaml.value));
  const problems: MappingProblem[] = [];
  const tell = (path: readonly PropertyKey[], says: string) => {
    problems.push({ line: lineOf(text, path), field: path.join('.'), says });
  };
  if (typeof yaml.value === 'string' || Array.isArray(yaml.value))
    return refuse(`line 1: This is no mapping. Begin with a line columns: and a line for each column below it.`);
  for (const name of reader.keys()) if (!PARTS.includes(name)) tell([name], unknown('part', name, PARTS));
  const mapping: Mapping = {
    language: oneOf(LANGUAGES, reader.get('language') ?? 'en', (says) => tell(['language'], says)) ?? 'en',
    title: titleOf(reader.get('title'), (says) => tell(['title'], says)),
    settings: settingsOf(reader.get('read'), (name, says) => tell(['read', name], says)),
    always: alwaysOf(reader.get('always'), (name, says) => tell(['always', name], says)),
    skip: skipOf(reader.get('skip'), (at, says) => tell(['skip', at], says)),
    calendars: calendarsOf(reader.get('calendars'), (at, says) => tell(['calendars', at], says)),
    words: wordsOf(reader.get('words'), (name, says) => tell(['words', name], says)),
    sections: sectionsOf(reader.get('sections'), (says) => tell(['sections'], says)),
    asAbove: headingsOf(reader.get('as-above'), () => tell(['as-above'], AS_ABOVE)),
    dittos: headingsOf(reader.get('dittos'), () => tell(['dittos'], DITTOS)),
    blanks: blanksOf(reader.get('blanks'), (word, says) => tell(['blanks', word], says)),
    columns: columnsOf(reader.get('columns'), (heading, says) => tell(['columns', heading], says)),
  };
  if (problems.length === 0) return good(mapping);
  const lines = [...problems].sort((a, b) => a.line - b.line);
  return refuse(lines.map(({ line, field, says }) => `line ${line} · ${field}: ${says}`).join('\n'));
}

type Tell = (says: string) => void;
type TellOf = (name: string, says: string) => void;

function entries(written: Written | undefined): readonly (readonly [string, Written])[] {
  return written === undefined || typeof written === 'string' || Array.isArray(written) ? [] : Object.entries(written);
}

function oneOf<T extends string>(known: readonly T[], written: Written, tell: Tell): T | null {
  const found = known.find((one) => one === written);
  if (found === undefined)
    tell(`${typeof written === 'string' ? `"${written}"` : 'A list'} is not known here. Write ${known.join(' or ')}.`);
  return found ?? null;
}

function unknown(what: string, name: string, known: readonly string[]): string {
  const near = nearestName(name, known);
  return `There is no ${what} "${name}". Write ${near ?? `one of ${known.join(', ')}`}.`;
}

function titleOf(written: Written | undefined, tell: Tell): string {
  if (written === undefined) return DEFAULT_TITLE;
  const wrong = typeof written === 'string' ? patternProblem(written) : `A title is one line, like ${DEFAULT_TITLE}.`;
  if (wrong !== null) tell(wrong);
  return typeof written === 'string' ? written : DEFAULT_TITLE;
}

function settingsOf(written: Written | undefined, tell: TellOf): Settings {
  const read = entries(written).flatMap(([name, answer]): readonly (readonly [string, string])[] => {
    if (name === 'currency') {
      const code = typeof answer === 'string' && isCurrency(answer);
      if (!code) tell(name, 'A currency is its three letters, like GBP or EUR.');
      return code ? [[name, answer]] : [];
    }
    const known = Object.entries(SETTINGS).find(([setting]) => setting === name)?.[1];
    if (known === undefined) tell(name, unknown('setting', name, [...Object.keys(SETTINGS), 'currency']));
    const found = known === undefined ? null : oneOf<string>(known, answer, (says) => tell(name, says));
    return found === null ? [] : [[name, found]];
  });
  return Object.fromEntries(read);
}

function alwaysOf(written: Written | undefined, tell: TellOf): Mapping['always'] {
  return Object.fromEntries(
    entries(written).flatMap(([name, text]) => {
      if (!isField(name)) tell(name, 'This is no field of a piece. Write kind, metal, ruler, mint or the like.');
      if (typeof text !== 'string') tell(name, 'This wants one value, like kind: coin.');
      return isField(name) && typeof text === 'string' ? [[name, text]] : [];
    }),
  );
}

function wordsOf(written: Written | undefined, tell: TellOf): Mapping['words'] {
  return Object.fromEntries(
    entries(written).flatMap(([name, held]) => {
      const pairs = entries(held).flatMap(([word, meant]) =>
        typeof meant === 'string' ? [[word, meant] as const] : [],
      );
      if (!isField(name)) tell(name, 'This is no field of a piece. Write kind, metal, grade, ruler or the like.');
      if (pairs.length === 0 || pairs.length < entries(held).length)
        tell(
          name,
          'This wants a word of the sheet and what it stands for on each line below, like paper money: paper.',
        );
      return isField(name) ? [[name, Object.fromEntries(pairs)]] : [];
    }),
  );
}

function sectionsOf(written: Written | undefined, tell: Tell): Mapping['sections'] {
  if (written === undefined || written === 'nothing') return null;
  if (typeof written === 'string' && isField(written)) return written;
  tell('Headings between the rows state one field, like sections: kind, or nothing.');
  return null;
}

const AS_ABOVE = 'Columns whose empty cells say what stands above are a list, like as-above: [Ruler, Mint].';
const DITTOS = 'Columns in which a ditto says what stands above are a list, like dittos: [Ruler, Mint].';

function headingsOf(written: Written | undefined, tell: () => void): readonly string[] {
  const all: readonly Written[] = Array.isArray(written)
    ? (written as readonly Written[])
    : written === undefined
      ? []
      : [written];
  const headings = all.filter((one) => typeof one === 'string');
  if (headings.length < all.length) tell();
  return headings;
}

function skipOf(written: Written | undefined, tell: TellOf): Mapping['skip'] {
  return (Array.isArray(written) ? written : []).flatMap((rule: Written, at) => {
    const held = new Map(entries(rule));
    const [column, is] = [held.get('column'), held.get('is')];
    if (typeof column === 'string' && typeof is === 'string' && held.size === 2) return [{ column, is }];
    tell(String(at), 'A rule for rows to leave out is written { column: Title, is: "Total*" }.');
    return [];
  });
}

function calendarsOf(written: Written | undefined, tell: TellOf): Mapping['calendars'] {
  return (Array.isArray(written) ? written : []).flatMap((rule: Written, at) => {
    const held = new Map(entries(rule));
    const [column, is, years] = [held.get('column'), held.get('is'), held.get('years')];
    const known = CALENDARS.find((one) => one === years);
    if (typeof column === 'string' && typeof is === 'string' && known !== undefined && held.size === 3)
      return [{ column, is, years: known }];
    tell(
      String(at),
      `A rule for the calendar of some rows is written { column: Country, is: "Abbasid*", years: AH }; years is ${CALENDARS.join(', ')}.`,
    );
    return [];
  });
}

function blanksOf(written: Written | undefined, tell: TellOf): Mapping['blanks'] {
  return Object.fromEntries(
    entries(written).flatMap(([word, meaning]): readonly (readonly [string, Meaning])[] => {
      const found = oneOf(MEANINGS, meaning, (says) => tell(word, says));
      return found === null ? [] : [[word, found]];
    }),
  );
}

function columnsOf(written: Written | undefined, tell: TellOf): readonly MappedColumn[] {
  return entries(written).map(([heading, value]) => {
    const texts = Array.isArray(value) ? (value as readonly Written[]) : [value];
    const readings = texts.flatMap((text) => {
      const read = typeof text === 'string' ? parseReading(text) : null;
      if (read?.ok !== true)
        tell(heading, read?.problem ?? 'This wants a field, like date, or several: [title, "{ruler}, {mint}"].');
      return read?.ok === true ? [read.value] : [];
    });
    return { heading, readings };
  });
}
