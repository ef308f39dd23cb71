import fc from 'fast-check';
import { expect, test } from 'vitest';
import { consult } from '../../src/commands/read/consulted.ts';
import { kinds } from '../../src/commands/read/all-kinds.ts';
import { tries } from '../tries.ts';

/*
 * Every kind that `read` knows is given the examples of all kinds, broken and spliced, and random text. The core's own
 * tests put many more such texts through each parser; here the sentence a keeper reads is looked at too.
 */
const EXAMPLES = kinds().flatMap(({ examples }) => examples.flat());
const SPLICES = ['', ' ', '-', '/', '±', '%', '…', '[', ')', '½', '٣', '9999999999', '\u0000', '\u202E', '\uD800', '__proto__', 'constructor', '\n']; // prettier-ignore

const broken = fc
  .tuple(fc.constantFrom(...EXAMPLES), fc.nat(20), fc.nat(6), fc.constantFrom(...SPLICES, ...EXAMPLES))
  .map(([text, at, gone, splice]) => text.slice(0, at) + splice + text.slice(at + gone));
const anyText = fc.oneof(broken, fc.constantFrom(...EXAMPLES), fc.string({ unit: 'binary', maxLength: 40 }));

/** What no sentence for a keeper says, beside the words that are quoted from the text itself. */
const OF_MACHINES = /\b(?:undefined|null|NaN|Infinity|object Object|invalid|unexpected|schema)\b/i;

test('triples of texts through every kind: an answer that is sound in print, or a refusal in a sentence', async () => {
  const all = kinds((await consult('content')) ?? undefined);
  fc.assert(
    fc.property(fc.array(anyText, { minLength: 3, maxLength: 3 }), (texts) => {
      for (const { name, args, read } of all) {
        const words = texts.slice(0, args.length);
        const outcome = read(words, {});
        const said = outcome.ok ? outcome.value.sentence : outcome.problem;
        if (!/\S.*[.”")]$/su.test(said)) expect.unreachable(`${name} ${words.join(' | ')}: ${said}`);
        if (OF_MACHINES.test(said) && !texts.some((text) => OF_MACHINES.test(text)))
          expect.unreachable(`${name} ${words.join(' | ')}: ${said}`);
        if (outcome.ok && /NaN|Infinity/.test(JSON.stringify(outcome.value.fields)))
          expect.unreachable(`${name} ${words.join(' | ')}: ${JSON.stringify(outcome.value.fields)}`);
      }
    }),
    { numRuns: tries(4_000) },
  );
}, 120_000);
