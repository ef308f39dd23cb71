import type { Candidate, Identification } from '../../../core/types/key/identify.ts';
import { keyWords as words } from '../../words/key.ts';
import { element, left, likelyBroader } from './open-key.ts';
import type { OpenKey } from './open-key.ts';

/** Lets the wells of the board show what is left: a type that the answers speak against grows empty, the others say how likely. */
export function markWells(host: HTMLElement, open: OpenKey, found: Identification, answers: number): void {
  const remaining = new Map(left(found).map((candidate) => [candidate.id, candidate]));
  const [first] = found.candidates;
  const alike = [...remaining.values()].filter(({ probability }) => probability === first?.probability);
  for (const well of host.querySelectorAll<HTMLElement>('[data-type]')) {
    const candidate = remaining.get(well.dataset['type'] ?? '');
    well.toggleAttribute('data-out', answers > 0 && candidate === undefined);
    well.toggleAttribute('data-likeliest', answers > 0 && alike.length === 1 && candidate === first);
    well.querySelector('[data-left]')?.replaceChildren(...(answers === 0 ? [] : saidOf(open, candidate)));
  }
  const broader = new Map(likelyBroader(open, found, answers).map(({ id, probability }) => [id, probability]));
  for (const row of host.querySelectorAll<HTMLElement>('[data-row]')) {
    row.toggleAttribute('data-out', row.querySelector('[data-type]:not([data-out])') === null);
    const share = broader.get(row.dataset['row'] ?? '');
    const together = row.querySelector('[data-together]');
    if (together !== null) together.textContent = share === undefined ? '' : words.chance(share);
  }
}

function saidOf({ file }: OpenKey, candidate: Candidate | undefined): readonly HTMLElement[] {
  if (candidate === undefined) return [element('span', words.unlikely, 'for-listeners')];
  const labels = candidate.against.map((id) => file.characters.find((one) => one.id === id)?.label ?? id);
  const share = element('strong', words.chance(candidate.probability));
  return labels.length === 0 ? [share] : [share, element('span', words.speaksAgainst(labels), 'against')];
}
