import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { hostname, uptime } from 'node:os';
import process from 'node:process';

/** Who holds a lock: the command, its process and the computer it runs on. */
export type Holder = {
  /** The command as a keeper writes it: `npm run import`. */
  readonly who: string;
  readonly pid: number;
  /** When the process began, in the words of its computer; null where the computer does not tell. Two processes never share pid and beginning. */
  readonly began: string | null;
  readonly host: string;
  /** When the lock was taken, in milliseconds since 1970. */
  readonly since: number;
};

export function holderNow(who: string): Holder {
  return { who, pid: process.pid, began: beganOf(process.pid), host: hostname(), since: Date.now() };
}

/** Whether a holder has ended without giving its lock back. False where that cannot be known, as on another computer. */
export function hasDied({ pid, began, host, since }: Holder): boolean {
  if (host !== hostname()) return false;
  if (!isRunning(pid)) return true;
  // Another process may have been given the number since; where the computer does not tell, a restart settles it.
  const now = beganOf(pid);
  if (began !== null && now !== null) return began !== now;
  return since < Date.now() - uptime() * 1000;
}

/** Whether there is a process of this number. */
export function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** Takes a line of a lock apart; null when it is none. */
export function parseHolder(text: string): Holder | null {
  try {
    const read = JSON.parse(text) as Partial<Holder> | null;
    const { who, pid, began, host, since } = read ?? {};
    const isWhole = typeof who === 'string' && Number.isInteger(pid) && typeof host === 'string';
    if (!isWhole || typeof since !== 'number') return null;
    return { who, pid: pid ?? 0, began: typeof began === 'string' ? began : null, host, since };
  } catch {
    return null;
  }
}

/** Who changes a thing and since when; `thing` begins the words, and no full stop ends them. */
export function changedBy(thing: string, { who, pid, host, since }: Holder): string {
  const at = new Date(since);
  const time = [at.getHours(), at.getMinutes()].map((part) => String(part).padStart(2, '0')).join(':');
  const where = host === hostname() ? `(process ${pid})` : `on the computer ${host}`;
  return `${thing} is being changed by ${who}, which began at ${time} ${where}`;
}

/** A sentence on who holds a thing, and what to do. `lock` is the folder to remove in need. */
export function heldBy(thing: string, holder: Holder, lock: string): string {
  const says = `${changedBy(thing, holder)}. Wait until it has ended, and try again`;
  return holder.host === hostname()
    ? `${says}.`
    : `${says}; if nothing runs there any more, remove the folder ${lock}.`;
}

/** Linux tells in /proc, together with the start of the machine; other systems through `ps`; Windows is not asked. */
function beganOf(pid: number): string | null {
  try {
    if (process.platform === 'linux') {
      const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
      // Field 22 of proc(5), counted behind the name in brackets, which may hold anything.
      const ticks = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? '';
      return `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()} ${ticks}`;
    }
    if (process.platform === 'win32') return null;
    const told = spawnSync('ps', ['-o', 'lstart=', '-p', String(pid)], { encoding: 'utf8' });
    return told.status === 0 ? told.stdout.trim() : null;
  } catch {
    return null;
  }
}
