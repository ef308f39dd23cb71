import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { linkOrCopy } from '../../photographs/cache/link-photographs.ts';
import { plainPage } from '../../publish/host-files.ts';
import type { Hosted } from '../../publish/host-files.ts';

/** Where a record has more than its page: its folder, and its files of data. Addresses are counted from the site. */
const BESIDES: Readonly<Record<string, readonly string[]>> = {
  pieces: ['data/pieces/ID.json', 'data/iiif/ID/manifest.json'],
  rulers: ['pieces/by/ruler/ID'],
  mints: ['pieces/by/mint/ID'],
  sets: ['sets/ID', 'data/sets/ID.json'],
  exhibits: ['exhibits/ID', 'data/iiif/exhibits/ID/manifest.json'],
  types: ['types/ID', 'data/types/ID.json'],
};

/**
 * Leaves at the old address of each record that has moved what stands below its page: pages lead on, and data and pictures, which
 * cannot lead on, are there as well. An unlisted piece has nothing but its own page.
 */
export function leaveOldAddresses(
  site: string,
  { base, leads, unlisted }: Pick<Hosted, 'base' | 'leads' | 'unlisted'>,
): void {
  for (const [from, to] of leads) {
    if (to === null || to === from || unlisted.has(to)) continue;
    const [kind = '', old = '', ...within] = from.split('/');
    const [kindNow, now = ''] = to.split('/');
    // A type goes with its series.
    if (kind !== kindNow || within.length > 1) continue;
    for (const place of BESIDES[kind] ?? [])
      for (const file of filesAt(site, place.replace('ID', now))) {
        const [left, stands] = [old, now].map((id) => [place.replace('ID', id), ...file].join('/')) as [string, string];
        if (existsSync(join(site, left))) continue;
        mkdirSync(dirname(join(site, left)), { recursive: true });
        if (stands.endsWith('/index.html'))
          writeFileSync(join(site, left), plainPage(`${base}${stands.replace(/index\.html$/, '')}`));
        else linkOrCopy(join(site, stands), join(site, left));
      }
  }
}

/** The files of a folder and of all within it, by the steps of their paths in it; of a file, itself without a step. */
function filesAt(site: string, place: string): readonly (readonly string[])[] {
  const at = join(site, place);
  if (!existsSync(at)) return [];
  if (/\.\w+$/.test(place)) return [[]];
  return readdirSync(at, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(at.length + 1)
        .split(sep),
    );
}
