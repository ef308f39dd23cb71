import type { Built } from '../parts/build-site.ts';
import { shownFolder } from '../parts/make-site.ts';

const KINDS = ['git', 'files', 'stick'] as const;
export type HostKind = (typeof KINDS)[number];

export function isHostKind(word: string): word is HostKind {
  return (KINDS as readonly string[]).includes(word);
}

/** What to upload and how, for a git host, for any web space, and for a folder on a stick; `cabinet` as a keeper writes it. */
export function howToPublish(kind: HostKind, built: Built, cabinet: string): string {
  const steps = STEPS[kind](built, shownFolder(built.out), cabinet);
  return [...steps.map((step, at) => `${at + 1}. ${step}`), ...remarksOn(kind, built)].join('\n');
}

const STEPS: Readonly<Record<HostKind, (built: Built, out: string, cabinet: string) => readonly string[]>> = {
  git: (_, __, cabinet) => [
    `Put the folder ${cabinet} under git, if it is not: git -C ${cabinet} init`,
    `See that private/ stays behind: git -C ${cabinet} check-ignore private must answer "private". A repository also holds your original photographs, with whatever the camera wrote into them; make it a private one, or clean them first with npm run photos.`,
    `Commit and push it, addresses.txt included: git -C ${cabinet} add --all, git -C ${cabinet} commit -m "Publish", git -C ${cabinet} push`,
    'In the settings of the repository choose that its pages are built by a workflow. The file .github/workflows/publish.yaml, which begin put into the cabinet, does the rest; read its first lines once.',
    'Each time you change something: npm run build here, then commit and push. What was not built here beside private/ is refused there.',
  ],
  files: ({ address }, out) => [
    `Open your web space with the program its host names (SFTP, or the host's own page for files), in the folder that ${address === null ? 'the site is to be in' : `answers at ${address}`}.`,
    `Upload everything inside ${out}, not the folder itself, and the files whose names begin with a dot or a line as well (.nojekyll, _headers, _redirects); a host that does not know them ignores them.`,
    'Delete there what is no longer in the folder, or let the program do it ("mirror" or "synchronise"): a piece that you made private stays on the web until its old files are gone.',
    `Open ${address ?? 'the address'} and one piece, and look for the pictures.`,
  ],
  stick: ({ exhibits }, out) =>
    exhibits[0] === undefined
      ? [
          'Make the copy that opens without a server: npm run build -- --copy',
          'Copy the whole folder whole-catalogue to the stick.',
          `Open open-me.html in it with a double click. The folder ${out} itself wants a server.`,
        ]
      : [
          `Make the copy that opens without a server: npm run build -- --hall ${exhibits[0]}`,
          `Copy the whole folder hall-${exhibits[0]} to the stick.`,
          'Open open-me.html in it with a double click, on the machine of the hall, before the day.',
        ],
};

/** What is worth knowing of this site on this kind of host. */
function remarksOn(kind: HostKind, { address, base }: Built): readonly string[] {
  if (kind === 'stick') return [];
  return [
    ...(address === null
      ? [
          'The cabinet says no address, so links that leave the site (feed, data, citations) cannot name it. Write address: in cabinet.yaml and build again.',
        ]
      : []),
    ...(base === '/'
      ? []
      : [
          `Search engines read robots.txt at the root of a host only. Yours stands under ${base} and will not be read; every page says the same by itself, so nothing is lost.`,
        ]),
  ];
}
