import { fileURLToPath } from 'node:url';
import process from 'node:process';

/** How a command ended and what it said, as a process would have it. */
export type Ran = { readonly status: number; readonly stdout: string; readonly stderr: string };

/** Ends a command in the middle, as `process.exit` would. */
class Ended extends Error {
  readonly status: number;
  constructor(status: number) {
    super('The command ended.');
    this.status = status;
  }
}

let count = 0;

/**
 * Runs a command of `src/commands` with these words in this process, at the end of a pipe and with nobody to ask: what a process of
 * its own would do, without the second that starting one takes. What is killed or raced needs a process.
 */
export async function runHere(command: string, ...words: readonly string[]): Promise<Ran> {
  const at = fileURLToPath(new URL(`../../src/commands/${command}.ts`, import.meta.url));
  const said = { stdout: '', stderr: '' };
  const faulty: ((error: unknown) => void)[] = [];
  const put = (name: 'stdout' | 'stderr') => (text: unknown) => {
    said[name] += String(text);
    return true;
  };
  const { argv, exitCode, env } = process;
  const cabinet = env['CABINET'];
  const heard = process.stdout.listeners('error');
  const replaced = [
    replace(process, 'exit', (status: unknown) => {
      throw new Ended(Number(status ?? process.exitCode ?? 0));
    }),
    replace(process, 'on', (event: string, listener: (error: unknown) => void) => {
      // What the process hears of faults is what this runner would be told; the rest is heard as ever.
      if (event === 'uncaughtException') faulty.push(listener);
      else if (event !== 'unhandledRejection') process.addListener(event as 'exit', listener as () => void);
      return process;
    }),
    replace(process.stdout, 'write', put('stdout')),
    replace(process.stderr, 'write', put('stderr')),
  ];
  process.argv = [process.execPath, at, ...words];
  process.exitCode = undefined;
  const ends = async (act: () => Promise<unknown>): Promise<number> => {
    try {
      await act();
      return Number(process.exitCode ?? 0);
    } catch (error) {
      if (error instanceof Ended) return error.status;
      // As the process would: the command's own word on a fault of the program.
      const [tell] = faulty.splice(0);
      if (tell === undefined) throw error;
      return ends(async () => {
        await Promise.resolve();
        tell(error);
      });
    }
  };
  try {
    count += 1;
    // A module of its own for each run; those that it is made of stay.
    const status = await ends(() => import(/* @vite-ignore */ `${at}?run=${count}`));
    return { status, ...said };
  } finally {
    for (const putBack of replaced) putBack();
    process.argv = argv;
    process.exitCode = exitCode;
    if (cabinet === undefined) delete env['CABINET'];
    else env['CABINET'] = cabinet;
    for (const listener of process.stdout.listeners('error'))
      if (!heard.includes(listener)) process.stdout.removeListener('error', listener as () => void);
  }
}

/** Puts something of a test's in the place of a method, and answers with how to put it back. */
function replace(owner: object, name: string, by: (...words: never[]) => unknown): () => void {
  const was: unknown = Reflect.get(owner, name);
  Reflect.set(owner, name, by);
  return () => Reflect.set(owner, name, was);
}
