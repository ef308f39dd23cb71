import type { NameQuestion } from '../../import/names/join-names.ts';

/** Which spellings were taken for one, and which were kept apart, with the file in which either is changed; empty where there is nothing to ask. */
export function tellNames(questions: readonly NameQuestion[], shownFile: string): string {
  const lines = (some: readonly NameQuestion[]): string =>
    some.map(({ id, spelled, kind }) => `  ${kind}/${id}: ${spelled.join(', ')}`).join('\n');
  const one = questions.filter(({ isParted }) => !isParted);
  const several = questions.filter(({ isParted }) => isParted);
  return [
    ...(one.length === 0
      ? []
      : [`Taken for one and the same, as ${shownFile} says; change it there if they are not:\n${lines(one)}`]),
    ...(several.length === 0
      ? []
      : [
          `Kept apart, though they may be one, as ${shownFile} says; put them in one line there if they are one:\n${lines(several)}`,
        ]),
  ].join('\n\n');
}
