import { basename } from 'node:path';
import process from 'node:process';
import { faultSentence } from '../../catalogue/keep/fault-sentence.ts';

/** Ends of commands: something is wrong that a keeper can see to; the program itself is at fault. */
const WRONG = 1;
const FAULT = 2;

/** From here on nothing ends a command with a stack trace. */
export function endFaultsWithSentences(): void {
  for (const event of ['uncaughtException', 'unhandledRejection'])
    process.on(event, (error: unknown) => {
      process.stderr.write(`${tellFault(error)}\n`);
      process.exit(faultSentence(error) === null ? FAULT : WRONG);
    });
}

/**
 * What is said of an error: what to do about it, or how to report a fault of the program. Of that only its kind and the lines of
 * our own it passed through are told: its message may hold what stands in a private file.
 */
export function tellFault(error: unknown): string {
  const sentence = faultSentence(error);
  if (sentence !== null) return sentence;
  const kind = error instanceof Error ? error.name.replace(/[^A-Za-z]/g, '') : typeof error;
  const lines = [...(error instanceof Error ? (error.stack ?? '') : '').matchAll(/[/\\](src[/\\][\w./\\[\]-]+:\d+)/g)];
  const report = [
    `command  ${basename(process.argv[1] ?? '').replace(/\.ts$/, '')}`,
    `system   ${process.platform}, Node ${process.versions.node}`,
    `fault    ${kind}`,
    ...lines.slice(0, 8).map(([, line = '']) => `at       ${line.replaceAll('\\', '/')}`),
  ];
  return `This is a fault in Underglass and not in your cabinet, which is as it was. Please report it with these lines; nothing of yours stands in them:\n\n${report.map((line) => `  ${line}`).join('\n')}\n`;
}
