import { statSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import type { AstroIntegration } from 'astro';

/** The folders of the project whose files pages are made of. */
export const SERVED = ['src', 'public', 'node_modules'] as const;

/**
 * Refuses every request, while edits are followed, that leads to a file outside the folders that pages are made of: the server
 * would give out a piece's text as a module (`piece.md?import`), whatever folders it was allowed, and open files in an editor.
 */
export function serveOnlyPages(): AstroIntegration {
  return {
    name: 'serve-only-pages',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({
          vite: {
            server: { fs: { allow: [...SERVED] } },
            // Whatever way a request was rewritten on: what is asked for by a script or a socket is resolved too.
            plugins: [{ name: 'serve-only-pages', enforce: 'pre', resolveId: refuseFile }],
          },
        });
      },
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          if (!leadsElsewhere(request.url ?? '/')) {
            next();
            return;
          }
          response.statusCode = 403;
          response.end('Only pages are served here.');
        });
      },
    },
  };
}

function refuseFile(asked: string): null {
  if (leadsElsewhere(asked)) throw new Error('Only what pages are made of is served.');
  return null;
}

/** Whether an address, in any of its readings, leads to a file that is in none of the folders that are served. */
export function leadsElsewhere(address: string, project = resolve('.')): boolean {
  return readingsOf(address).some((path) => {
    if (path.startsWith('/__open-in-editor')) return true;
    const named = path.replace(/^(?:\/*@(?:fs|id)\/|\/*__x00__)+/, '/');
    return [resolve(named), resolve(named.replace(/^\/+/, '/')), resolve(project, named.replace(/^\/+/, ''))].some(
      (file) => isFile(file) && !SERVED.some((folder) => isWithin(file, resolve(project, folder))),
    );
  });
}

/** An address without what follows its path, as it is and with its escapes undone once and twice. */
function readingsOf(address: string): readonly string[] {
  const whole = [address, decoded(address), decoded(decoded(address))].map((one) => one.replaceAll('\\', '/'));
  return whole.flatMap((one) => [one, one.replace(/[?#].*$/s, '')]);
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}

function isFile(path: string): boolean {
  return !path.includes('\0') && statSync(path, { throwIfNoEntry: false })?.isFile() === true;
}

function isWithin(file: string, folder: string): boolean {
  return !/^(?:\.\.|[A-Za-z]:|[\\/])/.test(relative(folder, file));
}
