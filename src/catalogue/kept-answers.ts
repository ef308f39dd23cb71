import { hash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { makeFolder } from './keep/fault-sentence.ts';
import { writeWhole } from './keep/flush.ts';

/**
 * What was found out in an earlier run is not found out again: the answer to a question, under everything it depends on. Answers
 * that are not to be kept, such as anything wrong or not published, are worked out each time.
 */
export type Earlier = {
  readonly once: <Answer>(
    dependsOn: () => readonly string[],
    work: () => Answer,
    isKept: (answer: Answer) => boolean,
  ) => Answer;
};

/** Nothing is known of earlier. */
export const NOT_EARLIER: Earlier = { once: (_, work) => work() };

type Answers = ReadonlyMap<string, unknown>;

/**
 * What the program of this digest kept in a folder. `keep` writes down what was asked now and nothing else: what belongs to a text
 * that is no more is gone with it.
 */
export function earlierIn(store: string, program: string): Earlier & { readonly keep: () => Promise<void> } {
  const file = join(store, 'answers');
  const before = readAnswers(file, program);
  const now = new Map<string, unknown>();
  let isNew = false;
  return {
    once: (dependsOn, work, isKept) => {
      const key = hash('sha256', JSON.stringify(dependsOn()), 'base64url');
      const known = before.get(key) as { readonly answer: ReturnType<typeof work> } | undefined;
      if (known !== undefined) {
        now.set(key, known);
        return known.answer;
      }
      const answer = work();
      if (isKept(answer)) {
        now.set(key, { answer });
        isNew = true;
      }
      return answer;
    },
    keep: async () => {
      if (!isNew && now.size === before.size) return;
      makeFolder(store);
      await writeWhole(file, serialize({ program, answers: now }), 0o600);
    },
  };
}

function readAnswers(file: string, program: string): Answers {
  try {
    const kept = deserialize(readFileSync(file)) as { readonly program: string; readonly answers: Answers };
    return kept.program === program ? kept.answers : new Map();
  } catch {
    return new Map();
  }
}
