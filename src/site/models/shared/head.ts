import { createHash } from 'node:crypto';
import { licenceAddress } from '../../../publish/licences.ts';
import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { hasPublicAddress, inFull, urls } from '../../urls.ts';
import { contactOf } from './contact.ts';
import type { Contact } from './contact.ts';
import { siteWords } from '../../words/site.ts';

export type Crumb = { readonly name: string; readonly href: string };
export type Room = Crumb & { readonly isHere: boolean };
/** One of the few names at the head of a page: a link, or what folds out to several. */
export type RoomGroup = { readonly name: string; readonly isHere: boolean; readonly rooms: readonly Room[] };

/** What a page says of itself. */
export type PageHead = {
  readonly title: string;
  readonly description?: string;
  /** The page's own address, from `urls`. */
  readonly here: string;
  /** The rooms above it, outermost first, without the home page and itself. */
  readonly trail?: readonly Crumb[];
  /** True keeps it out of search engines: an unlisted piece. */
  readonly unlisted?: boolean;
  /** Where the page has gone: an old id that stays alive. */
  readonly movedTo?: string;
  /** A picture for sharing, from `urls`. */
  readonly picture?: string;
  /** What that picture shows. */
  readonly pictureSays?: string;
  /** Linked data about what the page shows. */
  readonly linked?: object;
};

/** Linked data of a page, where there are any. */
export function linkedHead(linked: object | undefined): Pick<PageHead, 'linked'> {
  return linked === undefined ? {} : { linked };
}

/** Everything the frame of a page holds. */
export type Frame = {
  readonly language: string;
  readonly title: string;
  readonly cabinetTitle: string;
  readonly keeper: string;
  readonly contact: Contact | null;
  readonly isDemo: boolean;
  readonly policy: string;
  /** The one inline style, which the policy allows by its digest. */
  readonly layers: string;
  readonly canonical: string | null;
  readonly picture: string | null;
  /** The terms of the texts, and their address where they have one; null where the keeper states none. */
  readonly licence: { readonly name: string; readonly href: string | null } | null;
  /** What search engines are told; null where they may list the page. */
  readonly robots: string | null;
  readonly groups: readonly RoomGroup[];
  readonly linked: string | null;
};

// The order of the layers stands before every style sheet, or sorted imports could turn the cascade round.
const LAYERS = '@layer tokens,base,components,page;';

/** The language of the keeper's texts where it is not the site's own, for `lang` on titles and stories. */
export function keeperLanguage({ lists }: Pick<Cabinet, 'lists'>): string | undefined {
  const { language } = lists.cabinet;
  return language === 'en' ? undefined : language;
}

/** All that the frame of a page knows of the cabinet: what changes in it changes every page. */
type FrameFacts = {
  readonly cabinet: Cabinet['lists']['cabinet'];
  readonly exhibits: boolean;
  readonly types: boolean;
};

export function frameFacts({ lists: { cabinet, exhibits, types } }: Cabinet): FrameFacts {
  return { cabinet, exhibits: exhibits.length > 0, types: types.series.length > 0 };
}

export async function frameOf(head: PageHead): Promise<Frame> {
  const facts = frameFacts(await loadCabinet());
  const { cabinet } = facts;
  const digest = createHash('sha256').update(LAYERS).digest('base64');
  return {
    // The site's own words are English, whatever language the keeper's texts are in.
    language: 'en',
    title: siteWords.pageTitle(head.title, cabinet.title),
    cabinetTitle: cabinet.title,
    keeper: cabinet.keeper,
    contact: contactOf(cabinet.contact),
    isDemo: cabinet.demo === 'yes',
    policy: policyFor(digest),
    layers: LAYERS,
    canonical: hasPublicAddress() ? inFull(head.here) : null,
    picture: head.picture === undefined || !hasPublicAddress() ? null : inFull(head.picture),
    licence:
      cabinet.licence?.texts === undefined
        ? null
        : { name: cabinet.licence.texts, href: licenceAddress(cabinet.licence.texts) },
    robots: head.unlisted === true || cabinet.robots === 'none' ? 'noindex, nofollow' : null,
    groups: groupsAt(head.here, facts),
    // What would end the script early is written as an escape.
    linked: head.linked === undefined ? null : JSON.stringify(head.linked).replaceAll('<', '\\u003c'),
  };
}

/** Nothing from elsewhere, nothing inline but the one style. While following edits the tool's own script is let in. */
function policyFor(digest: string): string {
  const loosened = import.meta.env.DEV;
  return [
    "default-src 'none'",
    "img-src 'self'",
    "font-src 'self'",
    `style-src 'self' ${loosened ? "'unsafe-inline'" : `'sha256-${digest}'`}`,
    `script-src 'self'${loosened ? " 'unsafe-inline'" : ''}`,
    "manifest-src 'self'",
    `connect-src 'self'${loosened ? ' ws:' : ''}`,
    "form-action 'self'",
    "base-uri 'none'",
  ].join('; ');
}

/** Whether a page is one of a room; pieces next to one another are among the pieces. */
function isIn(room: string, here: string): boolean {
  return here.startsWith(room) || (room === urls.pieces() && here.startsWith(urls.compare()));
}

function groupsAt(here: string, has: Omit<FrameFacts, 'cabinet'>): readonly RoomGroup[] {
  const all: readonly (readonly [string, readonly Crumb[]])[] = [
    ...(has.exhibits ? [[siteWords.exhibits, [{ name: siteWords.exhibits, href: urls.exhibits() }]] as const] : []),
    [siteWords.pieces, [{ name: siteWords.pieces, href: urls.pieces() }]],
    [siteWords.sets, [{ name: siteWords.sets, href: urls.sets() }]],
    [
      siteWords.reference,
      [
        { name: siteWords.rulers, href: urls.rulers() },
        { name: siteWords.mints, href: urls.mints() },
        ...(has.types ? [{ name: siteWords.types, href: urls.types() }] : []),
        { name: siteWords.eras, href: urls.eras() },
        { name: siteWords.measures, href: urls.measures() },
      ],
    ],
    [
      siteWords.about,
      [
        { name: siteWords.aboutThis, href: urls.about() },
        { name: siteWords.works, href: urls.works() },
        { name: siteWords.openFiles, href: urls.data() },
      ],
    ],
  ];
  return all.map(([name, crumbs]) => {
    const rooms = crumbs.map((room) => ({ ...room, isHere: isIn(room.href, here) }));
    return { name, rooms, isHere: rooms.some(({ isHere }) => isHere) };
  });
}
