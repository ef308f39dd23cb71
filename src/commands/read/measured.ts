import { formatAxis, parseAxis } from '../../core/measures/parse-axis.ts';
import { formatLength, parseLength } from '../../core/measures/parse-length.ts';
import { formatWeight, parseWeight } from '../../core/measures/parse-weight.ts';
import type { Weight } from '../../core/measures/parse-weight.ts';
import { fineMetal } from '../../core/metal/fine-metal.ts';
import { formatFineness, parseFineness } from '../../core/metal/parse-fineness.ts';
import type { Fineness } from '../../core/metal/parse-fineness.ts';
import { refuse } from '../../core/outcome.ts';
import type { Outcome } from '../../core/outcome.ts';
import { parseGravity } from '../../core/metal/specific-gravity.ts';
import { answer, figure, ofOneText, span } from './kind.ts';
import type { Kind } from './kind.ts';

const weight = ofOneText('weight', ['1.38 g ± 0.01', '21.3 grains', '1 oz'], (text) =>
  answer(parseWeight(text), (read) => ({
    sentence: `${formatWeight(read)}: ${figure(read.grams, 4)} grams${read.plusMinus === null ? ', no precision stated' : ` ± ${figure(read.plusMinus, 4)}`}.`,
    fields: { grams: read.grams, plusMinus: read.plusMinus },
  })),
);

const length = ofOneText('length', ['18.6 mm', '18.2-19.4 mm', '1.205 in'], (text) =>
  answer(parseLength(text), (read) => ({
    sentence: `${formatLength(read)}.`,
    fields: { millimetres: read.low === read.high ? read.low : [read.low, read.high] },
  })),
);

const fineness = ofOneText('fineness', ['11 oz 2 dwt', '22 ct', '0.90/0.92'], (text) =>
  answer(parseFineness(text), (read) => ({
    sentence: `${formatFineness(read)}: ${span({ low: read.low * 1000, high: read.high * 1000 }, 1)} parts in a thousand are fine metal.`,
    fields: { low: read.low, high: read.high },
  })),
);

const metal: Kind = {
  name: 'metal',
  args: ['weight', 'fineness'],
  optional: 1,
  examples: [['412.5 grains', '900/1000'], ['7.98805 g 22 ct']],
  read: (words) => {
    const [weighed, assayed] = weightAndFineness(words);
    if (!weighed.ok) return weighed;
    return answer(assayed, (read) => {
      const found = fineMetal(weighed.value, read);
      return {
        sentence:
          `Fine metal: ${span(found.grams, 4)} g, or ${span(found.troyOunces, 4)} oz t. ${found.assumed.join(' ')}`.trim(),
        fields: { fineGrams: found.grams, fineTroyOunces: found.troyOunces },
      };
    });
  },
};

/** A word for the metal in front, which says nothing of how fine it is. */
const METAL_FIRST = /^(?:AR|AV|AU|AG|silver|gold|silber|argent|or|oro|plata|argento)[,;:]? (?=\S)/i;

/** A weight and a fineness, in two texts or in one, whichever stands first; one text that can be cut in two ways asks. */
function weightAndFineness([first = '', ...more]: readonly string[]): readonly [Outcome<Weight>, Outcome<Fineness>] {
  if (more.length > 0) return [parseWeight(first), parseFineness(more.join(' '))];
  const words = first.replace(METAL_FIRST, '').split(/[\s,;]+/u);
  const cuts = words
    .slice(1)
    .map((_, at) => [words.slice(0, at + 1).join(' '), words.slice(at + 1).join(' ')] as const);
  const ways = cuts.toReversed().flatMap(([one, other]) =>
    [[one, other] as const, [other, one] as const].flatMap(([weighed, assayed]) => {
      const split = [parseWeight(weighed), parseFineness(assayed)] as const;
      return split[0].ok && split[1].ok ? [{ split, grams: split[0].value.grams, fine: split[1].value.low }] : [];
    }),
  );
  const [way] = ways;
  if (way !== undefined && ways.every(({ grams, fine }) => grams === way.grams && fine === way.fine)) return way.split;
  if (way !== undefined)
    return [
      refuse(`"${first}" can be cut in two ways. Put the weight and the fineness in quotation marks each.`),
      parseFineness(''),
    ];
  if (parseFineness(first).ok)
    return [
      refuse(`"${first}" gives no weight. Write it before the fineness, like 7.98805 g 22 ct.`),
      parseFineness(first),
    ];
  const near = cuts.find(([one, other]) => /how near/.test(problemOf(parseWeight(one))) && parseFineness(other).ok);
  const half = parseWeight(near?.[0] ?? first);
  return [
    half,
    half.ok
      ? refuse(`"${first}" gives no fineness. Write it after the weight, like 7.98805 g 22 ct.`)
      : parseFineness(''),
  ];
}

const problemOf = (read: Outcome<unknown>): string => (read.ok ? '' : read.problem);

const gravity: Kind = {
  name: 'gravity',
  args: ['weight in air', 'weight in water', 'alloy'],
  optional: 1,
  examples: [['26.922 g', '24.283 g', 'silver and copper']],
  read: ([air = '', water = '', ...alloy]) =>
    answer(parseGravity(air, water, alloy.join(' ')), (read) => {
      const share =
        read.fineness === null
          ? 'no share of the two metals has it'
          : `${span({ low: read.fineness.low * 1000, high: read.fineness.high * 1000 }, 0)} parts in a thousand`;
      return {
        sentence:
          `Specific gravity ${span(read.specificGravity, 2)}; as ${read.alloy.title}, ${share}. ${read.assumed.join(' ')}`.trim(),
        fields: { specificGravity: read.specificGravity, fineness: read.fineness },
      };
    }),
};

const axis = ofOneText('axis', ['6h', '180°', 'none'], (text) =>
  answer(parseAxis(text), (read) => ({
    sentence:
      read.hours === null
        ? 'The piece has no axis.'
        : `${formatAxis(read)}: the reverse is turned ${(read.hours % 12) * 30} degrees.`,
    fields: { hours: read.hours },
  })),
);

/** What is weighed and measured. */
export const MEASURED: readonly Kind[] = [weight, length, fineness, metal, gravity, axis];
