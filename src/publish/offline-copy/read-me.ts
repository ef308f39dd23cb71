import { FRONT, REST } from './places.ts';

/** What the note in a hall copy says of it. The address is the exhibit's own on the web; null when it has none. */
export type ShownInHall = { readonly title: string; readonly cabinet: string; readonly address: string | null };

/** The note that lies in a hall copy, for whoever is handed the folder: lines as every editor of plain text takes them. */
export function readMe({ title, cabinet, address }: ShownInHall): string {
  const lines = [
    title,
    `An exhibit from ${cabinet}, with its whole catalogue behind it.`,
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
    '                 things are kept is not in it, nor is any piece that is on no list.',
    ...(address === null ? [] : ['', 'ON THE WEB', address]),
    '',
  ];
  return lines.join('\r\n');
}
