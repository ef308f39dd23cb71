import { resolve } from 'node:path';
import process from 'node:process';

/** The cabinet that is meant: the variable CABINET, or `content` in the project. Absolute. */
export function cabinetFolder(): string {
  return resolve(process.env['CABINET'] ?? 'content');
}
