import process from 'node:process';

/** A line that counts up on a terminal while long work goes on; silent elsewhere. */
export function progressLine(name: string): (done: number, all: number) => void {
  return (done, all) => {
    if (!process.stdout.isTTY || all === 0) return;
    const width = 24;
    const full = Math.round((done / all) * width);
    process.stdout.write(
      `\r${name} ${'█'.repeat(full)}${'░'.repeat(width - full)} ${done} of ${all}${done === all ? '\n' : ''}`,
    );
  };
}
