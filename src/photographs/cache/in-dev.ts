import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';
import { handedOver } from '../../catalogue/handed-over.ts';

/** While following edits, serves the made pictures from the cache; a build links them into `dist`. */
export function photographsInDev(): AstroIntegration {
  return {
    name: 'photographs-in-dev',
    hooks: {
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const match = /\/photographs\/([a-z0-9-]+)\/([a-z0-9.-]+\.(webp|jpg))$/.exec(request.url ?? '');
          if (match === null) {
            next();
            return;
          }
          const file = join(handedOver().photographs, match[1] ?? '', match[2] ?? '');
          stat(file).then(
            () => {
              response.setHeader('Content-Type', match[3] === 'webp' ? 'image/webp' : 'image/jpeg');
              createReadStream(file).pipe(response);
            },
            () => next(),
          );
        });
      },
    },
  };
}
