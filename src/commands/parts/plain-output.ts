import process from 'node:process';

/** A sequence that steers a terminal (ECMA-48), and what is left of one; a return is kept where a line of progress begins with it. */
// eslint-disable-next-line no-control-regex -- it is what is taken out
const SEQUENCE = /\u001b\[[0-?]*[ -/]*[@-~]|\u001b\][^\u0007\u001b]*(?:\u0007|\u001b\\)/g;
// eslint-disable-next-line no-control-regex -- it is what is taken out
const STEERING = /(?!^)\r(?!\n)|[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;

/** A text as a terminal shows it and is not steered by it. */
export function plainOutput(text: string): string {
  return text.replace(SEQUENCE, '').replace(STEERING, '\u00b7');
}

let asking = 0;
/** While a question stands on the screen, the terminal is steered by who asks it. */
export async function asSteered<T>(question: () => Promise<T>): Promise<T> {
  asking += 1;
  try {
    return await question();
  } finally {
    asking -= 1;
  }
}

/** From here on, nothing that is in a cabinet or a sheet can steer the terminal it is told on. */
export function keepOutputPlain(): void {
  for (const stream of [process.stdout, process.stderr]) {
    const write = stream.write.bind(stream) as (...words: unknown[]) => boolean;
    stream.write = (chunk: unknown, ...more: unknown[]) =>
      write(typeof chunk === 'string' && asking === 0 ? plainOutput(chunk) : chunk, ...more);
  }
}
