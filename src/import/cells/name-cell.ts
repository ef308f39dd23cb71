import type { NamedInSheet } from '../plan/draft.ts';
import type { Said } from './cell-result.ts';

type Named = 'ruler' | 'mint' | 'denomination';

const REIGN = /^(.*?\D)[,;:]? ?[([]?(?:reg\.|r\.|reigned|regn\.|reg\. ab|règne|regno) ?([^)\]]*\d[^)\]]*)[)\]]?$/i;
const YEARS_IN_BRACKETS = /^(.*?)[,;:]? ?[([]((?:AD|BC|A\.D\.|c\.|ca\.|AH)? ?\d{1,4}[^)\]]*)[)\]]$/i;
const YEARS_AFTER =
  /^(.*?\D)[,;:]? ((?:AD |A\.D\. |AH |c\. ?)?\d{1,4} ?(?:BC|B\.C\.)? ?[-–/] ?\d{1,4} ?(?:AD|BC|A\.D\.|B\.C\.|v\. ?Chr\.|n\. ?Chr\.)?)$/i;

/** A name, or several of a joint reign, with the years a sheet puts behind it; a question mark behind it is a doubt. */
export function readNames(text: string, field: Named): readonly Said[] {
  const parts = field === 'ruler' ? text.split(/\s*;\s*|\s+\/\s+|\s*\n\s*/) : [text];
  const doubtful = parts.some((part) => part.includes('?'));
  const names = parts.map((part) => part.replace(DOUBT, '$1').trim()).filter((part) => part !== '');
  const read = names.map((name) => (field === 'ruler' ? withYears(name) : { name: tidy(name) }));
  return [
    { kind: 'name', field, names: read },
    ...(doubtful ? [{ kind: 'fact', field: `sure.${field}`, value: 'possible' } as const] : []),
  ];
}

/** A question mark behind a name, or before the years behind it: `Foscari? (1423-1457)`. */
const DOUBT = /\s*(?:\(\s*\?\s*\)|\[\s*\?\s*\]|\?)((?:\s*[([][^()[\]]*\d[^()[\]]*[)\]])?)$/;

function withYears(text: string): NamedInSheet {
  for (const form of [YEARS_IN_BRACKETS, REIGN, YEARS_AFTER]) {
    const [, name, years] = form.exec(text) ?? [];
    if (name !== undefined && years !== undefined && /\p{L}/u.test(name))
      return { name: tidy(name.replace(/[,;:(]+$/, '')), years: years.trim() };
  }
  return { name: tidy(text) };
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
