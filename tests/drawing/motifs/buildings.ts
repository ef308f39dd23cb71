import type { Layer } from '../relief.ts';
import { bar, box, dot, fill, leaf, oval, stroke } from '../shapes.ts';

const both = (draw: string): string => `${draw}<g transform="scale(-1 1)">${draw}</g>`;
const lancet = (x: number, top: number, foot: number, wide: number): string =>
  fill(
    `M${x - wide / 2} ${foot}L${x - wide / 2} ${top + wide * 0.7}Q${x - wide / 2} ${top + wide * 0.2} ${x} ${top}Q${x + wide / 2} ${top + wide * 0.2} ${x + wide / 2} ${top + wide * 0.7}L${x + wide / 2} ${foot}Z`,
  );
const pinnacle = (x: number, foot: number, high: number): string =>
  bar(x, foot, x, foot - high, 9, 17, 3) + stroke(`M${x - 9} ${foot - high * 0.5}L${x + 9} ${foot - high * 0.5}`, 5);

/** The west front of York Minster: two towers, the great window between. 520 wide, 560 high. */
export function westFront(): Layer[] {
  const tower = box(-250, -170, 150, 420);
  return [
    { draw: both(tower) + fill('M-104 -60L0 -150L104 -60L104 250L-104 250Z'), height: 9, round: 12 },
    {
      draw: both(
        box(-258, -170, 20, 420) +
          box(-184, -170, 14, 420) +
          box(-116, -170, 20, 420) +
          box(-258, -60, 162, 10) +
          box(-258, 80, 162, 10) +
          box(-262, -178, 170, 13),
      ),
      height: 7,
      round: 5,
    },
    {
      draw: both(
        [-248, -212, -176, -140, -106]
          .map((x, at) => pinnacle(x, -176, at % 4 === 0 ? 92 : at === 2 ? 74 : 46))
          .join('') + stroke('M-246 -190L-104 -190', 12),
      ),
      height: 9,
      round: 6,
    },
    {
      draw: stroke('M-104 -60L0 -154L104 -60', 13) + pinnacle(0, -150, 60) + both(pinnacle(-66, -92, 34)),
      height: 8,
      round: 6,
    },
    {
      draw:
        both(
          lancet(-216, -150, -70, 36) +
            lancet(-146, -150, -70, 36) +
            lancet(-216, -36, 70, 36) +
            lancet(-146, -36, 70, 36) +
            lancet(-180, 110, 200, 60),
        ) +
        lancet(0, -96, 110, 150) +
        lancet(0, 132, 250, 92),
      height: 9,
      mode: 'sink',
      round: 7,
    },
    {
      draw:
        [-45, -15, 15, 45].map((x) => box(x - 3, -30, 6, 140)).join('') +
        stroke('M-58 -20Q0 -96 58 -20M-30 -30Q0 -70 30 -30M-60 -24Q-30 -60 0 -24Q30 -60 60 -24', 7) +
        dot(0, -58, 11) +
        box(-4, 150, 8, 100),
      height: 7,
      round: 4,
    },
    { draw: box(-290, 250, 580, 13) + box(-270, 266, 540, 9), height: 9, round: 5 },
  ];
}

/** The Minster seen from the south, flames and smoke over the choir. 640 wide. */
export function minsterBurning(): Layer[] {
  const windows =
    [-130, -95, -60, 90, 125, 160, 195, 230].map((x) => lancet(x, 50, 150, 20)).join('') +
    [-130, -95, -60, 90, 125, 160, 195, 230].map((x) => lancet(x, -6, 34, 16)).join('');
  const smoke =
    oval(120, -190, 70, 44) +
    oval(200, -240, 84, 50) +
    oval(286, -286, 76, 44) +
    oval(150, -270, 62, 40) +
    oval(240, -190, 52, 34) +
    oval(330, -230, 50, 32);
  const flame = (x: number, foot: number, high: number, lean: number): string =>
    fill(
      `M${x - 17} ${foot}Q${x - 30} ${foot - high * 0.5} ${x + lean} ${foot - high}Q${x + 6} ${foot - high * 0.55} ${x + 19} ${foot - high * 0.6}Q${x + 26} ${foot - high * 0.2} ${x + 15} ${foot}Z`,
    );
  return [
    { draw: smoke, height: 8, round: 30 },
    {
      draw: [oval(120, -190, 48, 28), oval(206, -240, 56, 30), oval(288, -284, 48, 26)].join(''),
      height: 5,
      round: 22,
    },
    { draw: box(-270, -20, 560, 190), height: 9, round: 10 },
    { draw: box(-300, -130, 62, 300) + box(-232, -130, 62, 300) + box(-46, -190, 112, 360), height: 13, round: 12 },
    {
      draw:
        [-296, -242, -228, -174].map((x) => pinnacle(x, -130, 54)).join('') +
        [-42, -12, 32, 62].map((x) => pinnacle(x, -190, 34)).join('') +
        [-150, -110, -75, 85, 120, 155, 190, 225, 260, 290].map((x) => pinnacle(x, -18, 26)).join(''),
      height: 9,
      round: 5,
    },
    {
      draw:
        [-150, -112, -77, 78, 108, 142, 178, 212, 248, 284].map((x) => box(x - 5, -16, 10, 186)).join('') +
        box(-272, 36, 562, 8) +
        box(-304, -40, 134, 8) +
        box(-50, -100, 120, 8),
      height: 6,
      round: 4,
    },
    {
      draw:
        windows +
        lancet(-269, -116, -50, 26) +
        lancet(-201, -116, -50, 26) +
        lancet(-269, -20, 100, 26) +
        lancet(-201, -20, 100, 26) +
        lancet(-14, -176, -110, 30) +
        lancet(34, -176, -110, 30) +
        lancet(10, -70, 60, 66) +
        lancet(10, 90, 170, 40),
      height: 6,
      mode: 'sink',
      round: 6,
    },
    {
      draw:
        flame(100, -14, 96, 20) +
        flame(140, -16, 140, 30) +
        flame(184, -14, 110, 26) +
        flame(224, -16, 150, 36) +
        flame(266, -12, 90, 24),
      height: 13,
      round: 10,
    },
    { draw: box(-320, 170, 640, 12), height: 9, round: 5 },
  ];
}

/** Clifford's Tower on its mound. */
export function cliffordsTower(): Layer[] {
  const stones = [-150, -110, -70]
    .flatMap((y, row) =>
      Array.from({ length: 9 }, (_, at) => stroke(`M${-170 + at * 40 + (row % 2) * 20} ${y}l24 0`, 4)),
    )
    .join('');
  const grass = Array.from({ length: 26 }, (_, at) =>
    stroke(`M${-250 + ((at * 83) % 500)} ${90 + ((at * 47) % 130)}l${(at % 3) * 8 - 8} -20`, 6),
  ).join('');
  return [
    { draw: fill('M-320 240Q-250 60 -190 10L190 10Q250 60 320 240Z'), height: 11, round: 60 },
    { draw: grass + stroke('M40 240Q70 160 30 100Q10 60 20 14', 12), height: 6, round: 4 },
    {
      draw: fill(
        'M-206 20L-206 -190Q-150 -206 -96 -190L-96 -200Q0 -220 96 -200L96 -190Q150 -206 206 -190L206 20Q0 50 -206 20Z',
      ),
      height: 13,
      round: 34,
    },
    {
      draw:
        [-196, -160, -122, -84, -46, -8, 30, 68, 106, 144, 180]
          .map((x, at) => box(x, -222 - Math.round(8 * Math.sin(at / 3.2)), 22, 34))
          .join('') + stroke('M-96 -190L-96 30M96 -190L96 30', 13),
      height: 9,
      round: 6,
    },
    { draw: stones, height: 4, round: 3 },
    {
      draw:
        lancet(0, -60, 36, 56) +
        lancet(-150, -150, -90, 22) +
        lancet(150, -150, -90, 22) +
        box(-44, -150, 16, 40) +
        box(30, -150, 16, 40),
      height: 11,
      mode: 'sink',
      round: 7,
    },
    {
      draw:
        bar(0, -216, 0, -300, 7, 9) +
        fill('M4 -300Q40 -310 70 -294Q40 -284 4 -270Z') +
        leaf(-280, 210, 90, 30, -30) +
        leaf(280, 210, 90, 30, 30),
      height: 9,
      round: 5,
    },
  ];
}
