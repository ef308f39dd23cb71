import process from 'node:process';
import { layCase } from '../../src/core/cases/plan-case.ts';

/**
 * How long the plan of a case of 60 pieces takes, in milliseconds of the processor: one that fits, one whose labels go on a
 * key, and one that does not fit and is given advice. Run it with `node tests/benchmarks/case-plan.ts`; it ends with 1 when
 * one takes more than a second.
 */
const MOST_MILLISECONDS = 1000;
const LABEL =
  'Penny of Edward I, York, class 3b. 1280–81. Silver, 1.38 g. North 1017. The archbishop had a quatrefoil.';

function sixty(width: number, height: number) {
  return {
    inside: { width, height, depth: 69.85 },
    groups: Array.from({ length: 6 }, (_, g) => ({
      title: `Group ${g + 1}`,
      text: 'Kings and archbishops struck side by side at York. The designs shrank to a name on each face.',
      pieces: Array.from({ length: 10 }, (_, p) => ({
        key: g * 10 + p + 1,
        piece: `piece-${g}-${p}`,
        title: `Piece ${g * 10 + p + 1}`,
        faces: Array.from({ length: 1 + (p % 2) }, () => ({ width: 15 + p * 2, height: 15 + p * 2 })),
        thickness: 1,
        label: LABEL,
        facts: null,
      })),
    })),
  };
}

const CASES = [
  { name: 'fits', one: sixty(1600, 1200), points: 12 },
  { name: 'labels on a key', one: sixty(831.85, 640), points: 18 },
  { name: 'does not fit', one: sixty(300, 200), points: 18 },
];

for (const { name, one, points } of CASES) {
  const from = process.cpuUsage();
  const { stand, misfits } = layCase(one, { width: 60, points, height: null, stand: null });
  const { user, system } = process.cpuUsage(from);
  const milliseconds = (user + system) / 1000;
  process.stdout.write(
    `60 pieces, ${name}: ${milliseconds.toFixed(0)} ms, labels ${stand}, ${misfits.length} misfits\n`,
  );
  if (milliseconds > MOST_MILLISECONDS) process.exitCode = 1;
}
