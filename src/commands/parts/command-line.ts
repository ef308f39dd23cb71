import { relative, resolve } from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import type { ParseArgsConfig } from 'node:util';
import { faultSentence, tellFault } from '../../catalogue/keep/fault-sentence.ts';
import { keepOutputPlain } from './plain-output.ts';

/** Ends of commands: something is wrong that a keeper can see to; the program itself is at fault. */
const WRONG = 1;
const FAULT = 2;

type Flags = NonNullable<ParseArgsConfig['options']>;

/** The cabinet a command works on: its absolute folder, and the folder as a keeper would write it. */
export type MeantCabinet = { readonly at: string; readonly shown: string };

/**
 * The words of a command line. `--help` prints the help and ends; a flag that is not known ends with a sentence.
 * A cabinet named by `--cabinet` is also put in the variable CABINET, which the pages read.
 */
export function readWords<T extends Flags>(help: string, flags: T) {
  // Whoever reads only the first lines (`| head`) closes the pipe: then there is nobody left to tell.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit();
    throw error;
  });
  keepOutputPlain();
  endFaultsWithSentences();
  const read = (): ReturnType<typeof parse> => {
    try {
      return parse();
    } catch (error) {
      return endWith(
        `${error instanceof Error ? error.message.split('. ')[0] : String(error)}. Write --help to see what this command takes.`,
      );
    }
  };
  const parse = () =>
    parseArgs({ options: { ...flags, help: { type: 'boolean', short: 'h' } }, allowPositionals: true, strict: true });
  const { values, positionals } = read();
  const chosen: Readonly<Record<string, unknown>> = values;
  if (chosen['help'] === true) {
    process.stdout.write(help);
    process.exit(0);
  }
  if (typeof chosen['cabinet'] === 'string') process.env['CABINET'] = resolve(chosen['cabinet']);
  const at = resolve(process.env['CABINET'] ?? 'content');
  const cabinet: MeantCabinet = { at, shown: relative(process.cwd(), at) || '.' };
  return { values, positionals, cabinet };
}

/** ` --cabinet "my coins"`, as a command that is to be given next wants it; nothing for the cabinet that commands mean by themselves. */
export function cabinetFlag({ at, shown }: MeantCabinet): string {
  if (at === resolve('content')) return '';
  return ` --cabinet ${/^[\w./\\:-]+$/.test(shown) ? shown : JSON.stringify(shown)}`;
}

/** From here on nothing ends a command with a stack trace. */
function endFaultsWithSentences(): void {
  for (const event of ['uncaughtException', 'unhandledRejection'])
    process.on(event, (error: unknown) => {
      process.stderr.write(`${tellFault(error)}\n`);
      process.exit(faultSentence(error) === null ? FAULT : WRONG);
    });
}

/** Ends the command with a sentence on what is wrong. */
export function endWith(sentence: string): never {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}
