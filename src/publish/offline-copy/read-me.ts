import { FRONT, REST } from './places.ts';

/** What the note in an offline copy says of it. */
export type ShownInHall = {
  readonly title: string;
  readonly cabinet: string;
  /** What it shows on the web; null when it is not there. */
  readonly address: string | null;
  /** Whether it is the whole catalogue, without an exhibit before it, and whether pieces that are on no list are in it. */
  readonly whole?: 'listed' | 'with unlisted';
};

/** The note that lies in a hall copy, for whoever is handed the folder: lines as every editor of plain text takes them. */
export function readMe({ title, cabinet, address, whole }: ShownInHall): string {
  const lines = [
    title,
    whole === undefined ? `An exhibit from ${cabinet}, with its whole catalogue behind it.` : 'The whole catalogue.',
    '',
    `TO OPEN IT       Double-click ${FRONT}. It opens in the web browser.`,
    '                 Nothing is installed and no network is needed.',
    '',
    'THE WHOLE SCREEN Press F11; on a Mac, Ctrl + Cmd + F. The same again ends it.',
    '',
    'TO FIND A PIECE  Choose Pieces at the top of any page. The name of the cabinet,',
    '                 beside it, leads to the whole catalogue.',
    '',
    'AT TRUE SIZE     A screen has to be measured once, with a bank card, on the page',
    '                 of any piece. Do it when you set up.',
    '',
    `TO COPY IT       Copy the whole folder. ${FRONT} needs the folder`,
    `                 "${REST}" beside it.`,
    '',
    'WHAT IS IN IT    What the keeper publishes and nothing else. What was paid and where',
    whole === 'with unlisted'
      ? '                 things are kept is not in it. Pieces that are on no list on the web are.'
      : '                 things are kept is not in it, nor is any piece that is on no list.',
    ...(whole === 'with unlisted' ? ['                 It is for whom it was given to: do not pass it on.'] : []),
    ...(address === null ? [] : ['', 'ON THE WEB', address]),
    '',
  ];
  return lines.join('\r\n');
}
