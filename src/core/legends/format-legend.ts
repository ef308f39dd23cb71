import type { Legend, Part } from './legend.ts';

function isRestored(part: Part): boolean {
  return part.kind === 'restored' || part.supplied === true;
}

/** Writes a legend with its brackets, from its parts: neighbours restored together share one pair of `[ ]`. */
export function formatLegend(legend: Pick<Legend, 'parts'>): string {
  let text = '';
  let restored = false;
  let expanded = false;
  for (const part of legend.parts) {
    if (expanded && (part.kind !== 'expanded' || isRestored(part) !== restored)) {
      text += ')';
      expanded = false;
    }
    if (isRestored(part) !== restored) {
      restored = !restored;
      text += restored ? '[' : ']';
    }
    if (part.kind === 'expanded' && !expanded) {
      expanded = true;
      text += '(';
    }
    text += part.text;
  }
  return text + (expanded ? ')' : '') + (restored ? ']' : '');
}
