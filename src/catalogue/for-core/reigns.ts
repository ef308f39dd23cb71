import type { Reign } from '../../core/dating/dating.ts';
import type { Filed } from '../records.ts';
import type { RulerFields } from '../schema/lists.ts';

/** A ruler's reigns as the reader of dates wants them, for `Edward I, year 7`. */
export function reignsOf(ruler: Filed<RulerFields>): readonly Reign[] {
  return ruler.fields.reigns.map((reign) => ({
    ruler: ruler.fields.name,
    names: [ruler.fields.name, ...ruler.fields['other-names']],
    from: reign.from.text,
    to: reign.to.text,
    ...(reign['regnal-from'] === undefined ? {} : { regnalFrom: reign['regnal-from'] }),
  }));
}
