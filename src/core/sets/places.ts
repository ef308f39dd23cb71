import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { clashOf, clashWithin } from './clash.ts';
import { placesByRule } from './places-by-rule.ts';
import { rulerWhere, yearPlace } from './set-place.ts';
import type { SetPlace } from './set-place.ts';
import type { Lists, PlaceWritten, SetRule } from './set-rule.ts';

/** Every place of a set in order: those written out, or those the rule yields from the list files. */
export function placesOf(rule: SetRule, lists: Lists): Outcome<readonly SetPlace[]> {
  const within = clashWithin(rule.where);
  if (within !== null) return refuse(`Nothing can stand anywhere in “${rule.title}”: ${within}`);
  if (rule.places === undefined) return placesByRule(rule, lists);
  if (rule.places.length === 0)
    return refuse(`“${rule.title}” has no place. Name at least one under places:, or leave places: out.`);
  const places: SetPlace[] = [];
  for (const written of rule.places) {
    if (places.some(({ id }) => id === written.is)) {
      return refuse(`“${rule.title}” names the place ${written.is} twice. Give the second its own id, or remove it.`);
    }
    const place = readPlace(written, rule, lists);
    if (!place.ok) return place;
    places.push(place.value);
  }
  return good(places);
}

function readPlace(written: PlaceWritten, rule: SetRule, lists: Lists): Outcome<SetPlace> {
  const named = byId(written.is, rule, lists);
  const label = written.label ?? (named.ok ? named.value.label : written.is);
  if (written.excused !== undefined) return good({ id: written.is, label, where: {}, excused: written.excused });
  if (written.where === undefined && !named.ok) return named;
  const where = written.where ?? (named.ok ? named.value.where : {});
  const clash = clashOf(rule.where, where);
  if (clash !== null) return refuse(`Nothing can stand in the place ${written.is} of “${rule.title}”: ${clash}`);
  return good({ id: written.is, label, where });
}

/** What a bare id stands for under the rule. */
function byId(id: string, rule: SetRule, lists: Lists): Outcome<SetPlace> {
  const unknown = (file: string) =>
    refuse(
      `“${rule.title}” names the place ${id}, and there is no ${file}/${id}.yaml. Add the file, or write { is: ${id}, where: { … } }.`,
    );
  switch (rule['one-per']) {
    case 'ruler': {
      const ruler = lists.rulers.find((each) => each.id === id);
      return ruler ? good({ id, label: ruler.name, where: rulerWhere(id, rule) }) : unknown('rulers');
    }
    case 'mint': {
      const mint = lists.mints.find((each) => each.id === id);
      return mint ? good({ id, label: mint.name, where: { mint: [id] } }) : unknown('mints');
    }
    case 'date': {
      const year = /^(\d{1,4})(-bc)?$/.exec(id);
      if (year === null)
        return refuse(
          `The place ${id} of “${rule.title}” is no year. Write 1887 or 44-bc, or { is: ${id}, where: { date: … } }.`,
        );
      return good(yearPlace(year[2] === undefined ? Number(year[1]) : 1 - Number(year[1])));
    }
    case 'area':
      return good({ id, label: id, where: { area: [id] } });
    case 'reference':
      return good({ id, label: id, where: { references: [id] } });
    case 'die':
      return good({ id, label: id, where: { die: [id] } });
    case 'listed':
      return refuse(
        `“${rule.title}” does not say what fills the place ${id}. Write { is: ${id}, where: { tag: ${id} } }, or any other fact.`,
      );
  }
}
