/** WCAG 2.0 to 2.2, levels A and AA. */
export const LEVELS = { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] } as const;
/** What of these depends on colours. */
export const COLOURS = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] } as const;

/** Runs in the page: what axe-core finds against these levels. */
export async function forbidden(runOnly: {
  readonly type: 'tag' | 'rule';
  readonly values: readonly string[];
}): Promise<readonly string[]> {
  type Violation = { id: string; nodes: readonly { target: unknown; failureSummary?: string }[] };
  type Axe = { run: (on: Document, how: object) => Promise<{ violations: readonly Violation[] }> };
  const { run } = (globalThis as unknown as { axe: Axe }).axe;
  // Only what is forbidden is described, and the style sheets are read as the page has them: half of the time went into the rest.
  const { violations } = await run(document, { runOnly, resultTypes: ['violations'], preload: false, iframes: false });
  return violations.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ target, failureSummary }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`),
  );
}
