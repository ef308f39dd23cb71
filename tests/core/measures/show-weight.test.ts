import { expect, test } from 'vitest';
import { parseWeight, showWeight } from '../../../src/core/measures/parse-weight.ts';

test.for([
  ['1.38 g', 'metric', '1.38 g (21.3 gr)'],
  ['1.38 g', 'grains', '21.3 gr (1.38 g)'],
  ['21.3 grains', 'grains', '21.3 gr (1.38 g)'],
  ['26.34 g ± 0.02', 'metric', '26.34 ± 0.02 g (406.5 ± 0.3 gr)'],
  ['1.42/1.45 g', 'metric', '1.42–1.45 g (21.9–22.4 gr)'],
  ['22 2/9 grains', 'metric', '1.44 g (22.2 gr)'],
] as const)('%s in a %s cabinet is shown as %s', ([text, units, shown]) => {
  const outcome = parseWeight(text);
  if (!outcome.ok) throw new Error(outcome.problem);
  expect(showWeight(outcome.value, units)).toBe(shown);
});
