import { readYaml } from '../catalogue/yaml.ts';
import { linkRecords } from '../catalogue/link.ts';
import type { Records } from '../catalogue/records.ts';
import { setSchema } from '../catalogue/schema/sets-and-eras.ts';
import type { SetState } from '../core/sets/set-state.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { publicPieces } from '../publish/public-piece.ts';
import { countSet } from '../core/sets/count-set.ts';
import { setListsOf, setRuleOf } from '../catalogue/for-core/set-rule.ts';
import { setPieceOf } from '../publish/set-piece.ts';
import type { Cabinet } from '../site/cabinet.ts';
import { onceFor } from '../site/once-for.ts';

/** The cabinet as the pages of the site have it, without pictures; worked out once for the records as they are. */
export const linkedCabinet = onceFor((records: Records): Cabinet => {
  const { pieces: linked, ...lists } = linkRecords(records);
  const pieces = publicPieces({ ...lists, pieces: linked });
  return { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs: {}, changed: {} };
});

/** How far a set has come whose file says this; a sentence where its rule cannot be read or yields nothing. */
export function setStateOf(records: Records, id: string, text: string): Outcome<SetState> {
  const read = readYaml(text);
  const fields = read.ok ? setSchema.safeParse(read.value) : null;
  if (fields === null || !fields.success)
    return refuse(fields?.error.issues[0]?.message ?? 'The rule cannot be read yet.');
  const { lists, listed } = linkedCabinet(records);
  const from = setListsOf(records, lists.cabinet, lists.types);
  const state = countSet(setRuleOf({ id, file: '', story: '', fields: fields.data }), listed.map(setPieceOf), from);
  return state.ok ? good(state.value) : state;
}
