import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import { barOf, lanesOf } from '../charts/time-scale.ts';
import type { TimeBar, TimeScale } from '../charts/time-scale.ts';

/** A period drawn as a band. `fits`: where its name can be written in it. */
export type EraBand = TimeBar & {
  readonly name: string;
  readonly lane: number;
  readonly fits: 'everywhere' | 'on a wide page' | 'nowhere';
  /** The number that stands for a name for which there is no room, on a wide page and on a narrow; null where the name is written. */
  readonly number: { readonly wide: number | null; readonly narrow: number | null };
};

export type EraBands = { readonly title: string; readonly lanes: number; readonly bands: readonly EraBand[] };

/** The schemes of a drawing, the first at the top; names without room are numbered through all of them, a name by one number wherever it is. */
export function allBands(schemes: readonly EraScheme[], scale: TimeScale): readonly EraBands[] {
  const named = { wide: new Map<string, number>(), narrow: new Map<string, number>() };
  const numberOf = (page: 'wide' | 'narrow', name: string): number => {
    const number = named[page].get(name) ?? named[page].size + 1;
    named[page].set(name, number);
    return number;
  };
  return schemes.map((scheme) => {
    const { bands, ...rest } = eraBands(scheme, scale);
    const numbered = bands.map((band) => ({
      ...band,
      number: {
        wide: band.fits === 'nowhere' ? numberOf('wide', band.name) : null,
        narrow: band.fits === 'everywhere' ? null : numberOf('narrow', band.name),
      },
    }));
    return { ...rest, bands: numbered };
  });
}

type Unnumbered = Omit<EraBands, 'bands'> & { readonly bands: readonly Omit<EraBand, 'number'>[] };

// Widths of a drawing in pixels on a wide page and a narrow, and of a letter at the size of a band's name.
const WIDE = 1100;
const NARROW = 300;
const LETTER = 7;

/** The periods of a scheme that show on the scale; those that overlap lie in lanes of their own. */
function eraBands(scheme: EraScheme, scale: TimeScale): Unnumbered {
  const drawn = scheme.periods.flatMap((period) => {
    const bar = barOf(scale, periodYears(period));
    return bar === null ? [] : [{ name: period.name, bar }];
  });
  // A period is seen to touch the next; only a true overlap takes another lane.
  const lanes = lanesOf(
    drawn.map(({ bar }) => bar),
    -Math.max(0.1, 150 / (scale.high - scale.low + 1)),
  );
  return {
    title: scheme.title,
    lanes: Math.max(0, ...lanes.map((lane) => lane + 1)),
    bands: drawn.map(({ name, bar }, at) => {
      const room = name.length * LETTER + 12;
      const [onWide, onNarrow] = [(WIDE * bar.width) / 100, (NARROW * bar.width) / 100];
      const fits = room <= onNarrow ? 'everywhere' : room <= onWide ? 'on a wide page' : 'nowhere';
      return { ...bar, name, lane: lanes[at] ?? 0, fits };
    }),
  };
}
