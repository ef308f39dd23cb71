import { periodYears } from '../../../core/eras/era-scheme.ts';
import type { EraScheme } from '../../../core/eras/era-scheme.ts';
import { yearsInWords } from '../../../core/eras/years-in-words.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { countWords } from '../../words/counts.ts';
import { barOf, ticksOf } from '../charts/time-scale.ts';
import type { TimeBar, TimeScale, TimeTick } from '../charts/time-scale.ts';
import { piecesIn, tallyIn } from './placed.ts';

/** A period as a row of a narrow page: its words beside its band, which has a mark for every piece. */
export type PeriodRow = {
  readonly name: string;
  /** Where its pieces are. */
  readonly href: string;
  readonly years: string;
  readonly count: string;
  /** Across in per cent; null where the period shows nowhere on the scale. */
  readonly band: TimeBar | null;
  /** The middle of each piece's years within the band, each place once. */
  readonly marks: readonly number[];
};

export type PeriodRows = { readonly ticks: readonly TimeTick[]; readonly rows: readonly PeriodRow[] };

/** Per cent that the name of a year takes of a narrow drawing. */
const YEAR = 24;

/** The years that have room for their names, from the first. */
function sparse(ticks: readonly TimeTick[]): readonly TimeTick[] {
  return ticks.reduce<readonly TimeTick[]>((kept, tick) => {
    const last = kept.at(-1);
    return last === undefined || tick.x >= last.x + YEAR ? [...kept, tick] : kept;
  }, []);
}

/** Every period of a scheme, one a row, those of all schemes on one scale. */
export function periodRows(
  scheme: EraScheme,
  pieces: readonly PublicPiece[],
  scale: TimeScale,
  { rulers }: Pick<Cabinet['lists'], 'rulers'>,
): PeriodRows {
  return {
    ticks: sparse(ticksOf(scale)),
    rows: scheme.periods.map((period) => {
      const years = periodYears(period);
      const here = piecesIn(pieces, scheme, period.id);
      const tally = tallyIn(here, scheme, period.id, rulers);
      return {
        name: period.name,
        href: `${urls.era(scheme.id)}#${period.id}`,
        years: yearsInWords(years),
        count: here.length === 0 || tally.here.high > 0 ? countWords.between(tally.here) : countWords.tally(tally),
        band: barOf(scale, years),
        marks: [
          ...new Set(
            here.flatMap((piece) => {
              const own = piece.years;
              const bar =
                own === null
                  ? null
                  : barOf(scale, { low: Math.max(own.low, years.low), high: Math.min(own.high, years.high) });
              return bar === null ? [] : [Math.round(bar.x + bar.width / 2)];
            }),
          ),
        ],
      };
    }),
  };
}
