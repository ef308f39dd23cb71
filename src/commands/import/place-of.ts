import { basename, join } from 'node:path';
import { fileId } from '../../core/file-id.ts';

/** Where an import keeps what is the keeper's: paths inside the cabinet, with forward slashes. */
export type ImportPlaces = {
  readonly name: string;
  readonly mapping: string;
  readonly names: string;
  readonly unread: string;
  /** The folder of the trial's pages. */
  readonly trial: string;
  readonly rows: string;
  readonly broughtIn: string;
};

/** The places of the import of this name. */
export function importPlaces(name: string): ImportPlaces {
  const at = `private/import/${name}`;
  return {
    name,
    mapping: `${at}.mapping.yaml`,
    names: `${at}.names.yaml`,
    unread: `${at}/unread.csv`,
    trial: `${at}.trial`,
    rows: `${at}/rows.csv`,
    broughtIn: `${at}/brought-in.jsonl`,
  };
}

/** The name of an import: `coins` for `Coins.xlsx`, `coins-medals` for its sheet Medals where there are several. */
export function importName(file: string, sheet: string | null): string {
  const plain = basename(file).replace(/\.[^.]+$/, '');
  return fileId(sheet === null ? plain : `${plain} ${sheet}`);
}

/** A path inside the cabinet on this machine. */
export function pathIn(cabinet: string, file: string): string {
  return join(cabinet, ...file.split('/'));
}
