import process from 'node:process';

const WIDTH = 24;
/** Away from a terminal, a line is written each time this many more are done, or a twentieth of all. */
const STRIDE = 25;

/** Tells how far long work has come: a bar that fills on a terminal, a line now and then elsewhere. */
export function progressLine(name: string): (done: number, all: number) => void {
  return (done, all) => {
    const full = Math.round((done / all) * WIDTH);
    const bar = `${'█'.repeat(full)}${'░'.repeat(WIDTH - full)}`;
    if (process.stdout.isTTY) process.stdout.write(`\r${name} ${bar} ${done} of ${all}${done === all ? '\n' : ''}`);
    else if (done % Math.max(STRIDE, Math.ceil(all / 20)) === 0 && done < all)
      process.stdout.write(`${name}: ${done} of ${all}\n`);
  };
}
