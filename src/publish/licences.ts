/** Licences as people write them, and the address by which each is known. Source: creativecommons.org, as IIIF and schema.org ask. */
const LICENCES: readonly (readonly [RegExp, string])[] = [
  [/^CC0(?:[ -]1\.0)?$/i, 'http://creativecommons.org/publicdomain/zero/1.0/'],
  [/^(?:public domain|PDM(?:[ -]1\.0)?)$/i, 'http://creativecommons.org/publicdomain/mark/1.0/'],
  ...['BY', 'BY-SA', 'BY-NC', 'BY-NC-SA', 'BY-ND', 'BY-NC-ND'].map((terms): readonly [RegExp, string] => [
    new RegExp(`^CC[ -]${terms}[ -]4\\.0$`, 'i'),
    `http://creativecommons.org/licenses/${terms.toLowerCase()}/4.0/`,
  ]),
];

/** The address of a licence; null for terms in other words. */
export function licenceAddress(licence: string): string | null {
  return LICENCES.find(([written]) => written.test(licence.trim()))?.[1] ?? null;
}
