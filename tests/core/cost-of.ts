import process from 'node:process';

/**
 * How many patterns are tried while something runs: a count that is the same on every machine and on every day. Texts
 * are short when they are read, so that the work in one pattern is bounded, and the number of them is what can grow.
 */
export function patternsTried(run: () => void): number {
  const real = Object.getOwnPropertyDescriptor(RegExp.prototype, 'exec') ?? {};
  const exec = real.value as (this: RegExp, text: string) => RegExpExecArray | null;
  let tried = 0;
  const counting = function (this: RegExp, text: string) {
    tried += 1;
    return exec.call(this, text);
  };
  Object.defineProperty(RegExp.prototype, 'exec', { ...real, value: counting });
  try {
    run();
  } finally {
    Object.defineProperty(RegExp.prototype, 'exec', real);
  }
  return tried;
}

/**
 * The milliseconds of processor that something takes, the least of nine runs. Other programs' turns are not counted,
 * and the first runs, which are slower while the engine learns the code, do not matter.
 */
export function processorMilliseconds(run: () => void): number {
  const times = Array.from({ length: 9 }, () => {
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}
