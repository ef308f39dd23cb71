import process from 'node:process';
import { confirm, isCancel, log, select, text } from '@clack/prompts';
import { endWith } from './command-line.ts';
import { asSteered, plainOutput } from './plain-output.ts';

/** Whether somebody sits there who can be asked. */
export function canAsk(): boolean {
  return process.stdin.isTTY && process.stdout.isTTY;
}

/** One line of text. `refuse` gives the sentence that is shown when an answer will not do, null when it will. */
export async function askText(
  message: string,
  {
    placeholder = '',
    initial = '',
    refuse,
  }: { placeholder?: string; initial?: string; refuse?: (answer: string) => string | null } = {},
): Promise<string> {
  const answer = await asSteered(() =>
    text({
      message: plainOutput(message),
      placeholder,
      initialValue: initial,
      validate: (given) => refuse?.((given ?? '').trim()) ?? undefined,
    }),
  );
  return answered(answer).trim();
}

export async function askYesOrNo(message: string, initial: boolean): Promise<boolean> {
  return answered(await asSteered(() => confirm({ message: plainOutput(message), initialValue: initial })));
}

/** One of several choices, each with what it means. */
export async function askWhich<T extends string>(
  message: string,
  choices: readonly { readonly value: T; readonly label: string; readonly hint?: string }[],
): Promise<T> {
  const options = choices.map(({ value, label, hint }) => ({
    value,
    label: plainOutput(label),
    ...(hint === undefined ? {} : { hint: plainOutput(hint) }),
  }));
  return answered(await asSteered(() => select<string>({ message: plainOutput(message), options }))) as T;
}

/** An answer as it was understood, said back. */
export function sayAloud(sentence: string): void {
  log.message(plainOutput(sentence));
}

function answered<T>(answer: T): Exclude<T, symbol> {
  if (isCancel(answer)) endWith('Left. Nothing was written.');
  return answer as Exclude<T, symbol>;
}
