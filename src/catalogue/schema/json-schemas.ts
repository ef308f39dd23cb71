import { z } from 'zod';
import { pieceRows } from '../fields/piece-fields.ts';
import { cabinetSchema } from './cabinet.ts';
import { exhibitSchema } from './exhibit.ts';
import { eraSchema, setSchema } from './sets-and-eras.ts';
import { denominationSchema, mintSchema, rulerSchema, workSchema } from './lists.ts';
import { pieceSchema } from './piece.ts';
import { seriesSchema } from './series.ts';

/** The kinds of files a keeper writes, and the zod schema each is read against. */
const SCHEMAS = {
  cabinet: cabinetSchema,
  piece: pieceSchema(),
  ruler: rulerSchema,
  mint: mintSchema,
  denomination: denominationSchema,
  work: workSchema,
  era: eraSchema,
  set: setSchema,
  exhibit: exhibitSchema,
  series: seriesSchema,
} as const;
export type FileKind = keyof typeof SCHEMAS;
export const FILE_KINDS = Object.keys(SCHEMAS) as readonly FileKind[];

type JsonSchema = { type?: unknown; properties?: Readonly<Record<string, { description?: string }>> } & Record<
  string,
  unknown
>;

/**
 * The JSON Schema (2020-12) of the front matter of a kind of file, for editors that complete and explain while one types. It
 * knows which fields there are, which words they take and how they nest; how a date, a weight or a name is read, `check` knows.
 * Where we read text, an editor may see a number (`date: 1279`) or a yes, and both are allowed.
 */
export function jsonSchemaOf(kind: FileKind): object {
  const made = z.toJSONSchema(SCHEMAS[kind], {
    io: 'input',
    unrepresentable: 'any',
    override: ({ jsonSchema }) => {
      const schema = jsonSchema as JsonSchema;
      if (schema.type === 'string' && schema['enum'] === undefined && schema['const'] === undefined)
        schema.type = ['string', 'number', 'boolean'];
    },
  }) as JsonSchema;
  if (kind === 'piece')
    for (const [name, { says, example }] of Object.entries(pieceRows({})))
      if (made.properties?.[name] !== undefined) made.properties[name].description = `${says} Example: ${example}`;
  return { title: `The facts of a ${kind}`, ...made };
}
