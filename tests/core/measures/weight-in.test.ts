import { expect, test } from 'vitest';
import { parseWeight, weightIn } from '../../../src/core/measures/parse-weight.ts';

test.for([
  ['1.38 g', '1.38', '21.3'],
  ['4 g', '4', '62'],
  ['21.3 grains', '1.38', '21.3'],
  ['26.34 g ± 0.02', '26.34 ± 0.02', '406.5 ± 0.3'],
  ['1.42/1.45 g', '1.42–1.45', '21.9–22.4'],
  ['1.421/1.422 g', '1.421–1.422', '21.93–21.94'],
  ['22 2/9 grains', '1.44', '22.2'],
  ['1380 mg', '1.380', '21.30'],
  ['1.25 kg', '1250', '19290'],
] as const)('%s is %s g and %s grains, with no more figures than were weighed', ([text, grams, grains]) => {
  const outcome = parseWeight(text);
  if (!outcome.ok) throw new Error(outcome.problem);
  expect([weightIn(outcome.value, 'g'), weightIn(outcome.value, 'gr')]).toEqual([grams, grains]);
});
