import type { Legend, Part } from './legend.ts';

function isRestored(part: Part | undefined): boolean {
  return part?.kind === 'restored' || part?.supplied === true;
}

/** Writes a legend with its brackets, from its parts: neighbours restored together share one pair of `[ ]`. */
export function formatLegend({ parts }: Pick<Legend, 'parts'>): string {
  let text = '';
  let restored = false;
  let expanded = false;
  for (const [i, part] of parts.entries()) {
    // A break belongs to no bracket; between two restored stretches it stays inside theirs.
    const within: boolean = part.kind === 'break' ? restored && isRestored(parts[i + 1]) : isRestored(part);
    if (expanded && (part.kind !== 'expanded' || within !== restored)) {
      text += ')';
      expanded = false;
    }
    if (within !== restored) {
      restored = within;
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
