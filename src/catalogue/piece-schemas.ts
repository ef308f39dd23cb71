import type { DateContext } from '../core/dating/dating.ts';
import type { Filed } from './records.ts';
import { reignsOf } from './for-core/reigns.ts';
import { pieceSchema } from './schema/piece.ts';
import type { RulerFields } from './schema/lists.ts';

const RULER_LINE = /^ruler: *(?<ids>[^#\n]+)/m;
/** Only a year of the Hijra with a year of reign asks when a ruler came to the throne. */
const HIJRI_PAIR = /^date:.*\d *(?:\/|r\.? ?y\b|regnal)/im;

type PieceSchema = ReturnType<typeof pieceSchema>;

const names = new WeakMap<object, string>();

/** What a schema of pieces was made of: the same text, the same schema. Undefined for any other schema. */
export function madeOf(schema: object): string | undefined {
  return names.get(schema);
}

/**
 * The schema of a piece by the text of its facts: what is known of the ruler it names settles dates with two readings,
 * and the cabinet says what `gr` is. Pieces of one realm share a schema, and while no reign changes it is the same from one reading of the cabinet to the
 * next.
 */
export function pieceSchemas(): (
  rulers: readonly Filed<RulerFields>[],
  gr?: 'grains' | 'grams',
) => (facts: string) => PieceSchema {
  const schemas = new Map<string, PieceSchema>();
  let known = '';
  return (rulers, gr) => {
    const reigns = rulers.flatMap(reignsOf);
    const named = JSON.stringify([reigns, gr]);
    if (named !== known) schemas.clear();
    known = named;
    const byId = new Map(rulers.map((ruler) => [ruler.id, ruler]));
    return (facts) => {
      const ids = (RULER_LINE.exec(facts)?.groups?.['ids'] ?? '').match(/[a-z0-9]+(?:-[a-z0-9]+)*/g) ?? [];
      const context = contextOf(
        ids.flatMap((id) => byId.get(id) ?? []),
        HIJRI_PAIR.test(facts),
      );
      const key = JSON.stringify(context);
      const schema = schemas.get(key) ?? pieceSchema({ ...context, reigns }, gr);
      schemas.set(key, schema);
      names.set(schema, `${named} ${key}`);
      return schema;
    };
  };
}

/** The one realm of some rulers, and when they came to the throne: what settles a date with two readings. */
export function contextOf(rulers: readonly Filed<RulerFields>[], withAccessions: boolean): DateContext {
  const realms = [...new Set(rulers.flatMap(({ fields }) => fields.realm ?? []))];
  const [realm] = realms;
  const accessions = withAccessions ? rulers.flatMap(({ fields }) => fields.reigns.map(({ from }) => from.text)) : [];
  return {
    ...(realm === undefined || realms.length > 1 ? {} : { realm }),
    ...(accessions.length > 0 && { accessions }),
  };
}
