import type { Cabinet } from '../cabinet.ts';
import { absolute, hasPublicAddress } from '../urls.ts';
import { inlineStyle, styleHash } from './sizes.ts';

export type Crumb = { readonly name: string; readonly to: string };

/** What a page says of itself to its own head. */
export type PageHead = {
  readonly title: string;
  readonly description: string;
  /** This page's own address, from `urls`. */
  readonly own: string;
  /** The way here from the first page, without this page itself. */
  readonly trail: readonly Crumb[];
  /** True for an unlisted piece: search engines are asked to leave it alone. */
  readonly hidden?: boolean;
  /** A picture for sharing, from `urls`. */
  readonly picture?: string;
  /** Linked data about what the page shows. */
  readonly linked?: object;
};

/** Everything the layout needs. */
export type Page = PageHead & {
  readonly site: { readonly title: string; readonly keeper: string; readonly language: string; readonly isDemo: boolean };
  readonly style: string;
  readonly policy: string;
  readonly canonical: string | null;
  readonly sharing: string | null;
};

/** The frame of a page; made once for the style, which is the same on every page. */
export function framePage(cabinet: Cabinet, head: PageHead): Page {
  const style = styleOf(cabinet);
  const { title, keeper, language, demo } = cabinet.lists.cabinet;
  const policy = [
    "default-src 'none'", "img-src 'self'", "font-src 'self'", `style-src 'self' '${styleHash(style)}'`,
    "script-src 'self'", "connect-src 'self'", "form-action 'self'", "base-uri 'none'",
  ].join('; '); // prettier-ignore
  return {
    ...head,
    site: { title, keeper, language, isDemo: demo === 'yes' },
    style,
    policy,
    canonical: hasPublicAddress && head.hidden !== true ? absolute(head.own) : null,
    sharing: hasPublicAddress && head.picture !== undefined ? absolute(head.picture) : null,
  };
}

const styles = new WeakMap<Cabinet, string>();

function styleOf(cabinet: Cabinet): string {
  const known = styles.get(cabinet);
  if (known !== undefined) return known;
  const style = inlineStyle(cabinet.pieces, cabinet.photographs);
  styles.set(cabinet, style);
  return style;
}
