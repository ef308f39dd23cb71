import { expect, test } from 'vitest';
import { LIST_ROWS } from '../../../src/catalogue/fields/list-fields.ts';
import type { FactsTable } from '../../../src/catalogue/fields/row.ts';
import { jsonSchemaOf } from '../../../src/catalogue/schema/json-schemas.ts';
import type { FileKind } from '../../../src/catalogue/schema/json-schemas.ts';

type Schema = {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly enum?: readonly string[];
};
const KIND: Readonly<Record<keyof typeof LIST_ROWS, FileKind>> = {
  rulers: 'ruler', mints: 'mint', denominations: 'denomination', works: 'work', eras: 'era', sets: 'set', exhibits: 'exhibit',
  cabinet: 'cabinet',
}; // prettier-ignore
/** The cases of an exhibit have a page of their own. */
const ELSEWHERE = ['exhibits.cases'];
/** What fills a place of a set is written as it stands in a file. */
const AS_WRITTEN = ['sets.places.where'];

/** The fields of a schema, of each entry of a list, or of the one form that has fields. */
function fieldsOf(schema: Schema | undefined): Readonly<Record<string, Schema>> | null {
  const all = [schema, schema?.items, ...(schema?.anyOf ?? []), ...(schema?.items?.anyOf ?? [])];
  return all.find((one) => one?.properties !== undefined)?.properties ?? null;
}

test.for(Object.keys(LIST_ROWS) as (keyof typeof LIST_ROWS)[])(
  'the form of %s has every field of its schema, at every depth, and none besides; its choices are those of the schema',
  (kind) => {
    const compare = (rows: FactsTable, schema: Schema | undefined, at: string): void => {
      const fields = fieldsOf(schema) ?? {};
      const wanted = Object.keys(fields).filter((name) => !ELSEWHERE.includes(`${at}.${name}`));
      expect([at, Object.keys(rows).sort()]).toEqual([at, wanted.sort()]);
      for (const [name, row] of Object.entries(rows)) {
        expect([`${at}.${name}`, row.label.length > 0, /[.…)\w]$/.test(row.says)]).toEqual([
          `${at}.${name}`,
          true,
          true,
        ]);
        if (row.control === 'choice')
          expect([`${at}.${name}`, row.choices]).toEqual([`${at}.${name}`, fields[name]?.enum ?? row.choices]);
        if (AS_WRITTEN.includes(`${at}.${name}`)) continue;
        if (row.parts !== undefined) compare(row.parts, fields[name], `${at}.${name}`);
        else expect([`${at}.${name}`, fieldsOf(fields[name])]).toEqual([`${at}.${name}`, null]);
      }
    };
    compare(LIST_ROWS[kind], jsonSchemaOf(KIND[kind]), kind);
  },
);
