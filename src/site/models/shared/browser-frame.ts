import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';

/**
 * The ground of a page by day and by night, for what a browser draws round it: the jobs of tokens.css, which no style sheet can
 * give to a `meta`. A test holds the two together.
 */
export const GROUND = { light: 'oklch(0.962 0.004 220)', dark: 'oklch(0.23 0.014 240)' } as const;

/**
 * What a telephone calls the site, and shows of it, on its home screen. It opens in a browser: nothing here works without the
 * site being there. Source: W3C, Web Application Manifest (name, start_url, scope, display, icons).
 */
export function webManifest({ lists }: Cabinet): object {
  return {
    name: lists.cabinet.title,
    lang: lists.cabinet.language,
    start_url: urls.home(),
    scope: urls.home(),
    display: 'browser',
    background_color: GROUND.light,
    theme_color: GROUND.light,
    icons: [
      { src: urls.icon(), sizes: 'any', type: 'image/svg+xml' },
      { src: urls.touchIcon(), sizes: '180x180', type: 'image/png' },
      { src: urls.largeIcon(), sizes: '512x512', type: 'image/png', purpose: 'any maskable' },
    ],
  };
}
