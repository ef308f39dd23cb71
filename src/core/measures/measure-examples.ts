/** How measures are read here, by example: what to write, and what is understood. Each row is tested. */
export type Example = { readonly write: string; readonly means: string };

export const WEIGHT_EXAMPLES: readonly Example[] = [
  { write: '1.38 g', means: '1.38 g' },
  { write: '1,38 g', means: '1.38 g; a comma before two figures is a decimal mark' },
  { write: '1.38 g ± 0.01', means: '1.38 g ± 0.01; somewhere from 1.37 to 1.39 g' },
  { write: '1.42/1.45 g', means: '1.42–1.45 g; the ends of a range' },
  { write: '22 2/9 grains', means: '22.2222 grains; a grain is 0.06479891 g' },
  { write: '1 dwt 4½ gr', means: '28.5 grains; a pennyweight is 24 grains' },
  { write: '0.5 oz t', means: '0.5 oz t; the troy ounce, 31.1034768 g' },
  { write: '0.5 oz av', means: '0.5 oz av; the avoirdupois ounce, 28.349523125 g' },
  { write: '1 lb Tower', means: '1 lb Tower; 5400 grains; pounds, marks and drachms name their standard' },
  { write: '1.38 g, 21.3 gr', means: '1.38 g; grams and grains side by side are one weight and no sum' },
  { write: '1.38 g (21.3 gr)', means: '1.38 g; the two must agree' },
];

export const WEIGHT_REFUSALS: readonly Example[] = [
  {
    write: '1 oz',
    means: '"1 oz" does not say which ounce. Write 1 oz t (31.103 g) or 1 oz av (28.350 g).',
  },
  { write: '1,380 g', means: 'The comma in "1,380 g" can be read two ways. Write 1.380 or 1380.' },
  {
    write: '21.3 gr',
    means:
      'The gr in "21.3 gr" may be grams or grains. Write 21.3 g or 21.3 grains, or once in cabinet.yaml, gr: grains.',
  },
  {
    write: '22/23 g',
    means: '"22/23 g" may be a range or a fraction. Write 22-23 g for the range.',
  },
  { write: '1.38', means: '"1.38" has no unit. Write 1.38 g for grams or 1.38 grains.' },
];

export const SIZE_EXAMPLES: readonly Example[] = [
  { write: '18.6 mm', means: '18.6 mm; the diameter' },
  { write: '18.2-19.4 mm', means: '18.2–19.4 mm; the least and the greatest diameter' },
  { write: '9 x 24 mm', means: '9 × 24 mm; height, then width, of what is not round' },
  { write: '3/4 in', means: '19.05 mm; an inch is 25.4 mm' },
  { write: '9 lines', means: '19.05 mm; a line is the twelfth of an inch' },
  { write: '9 Paris lines', means: '20.302 mm; a metre is 443.296 Paris lines' },
];

export const AXIS_EXAMPLES: readonly Example[] = [
  { write: '6h', means: '6h; the reverse is upside down when the piece is turned on its upright axis' },
  { write: "12 o'clock", means: '12h; both faces upright' },
  { write: '180°', means: '6h' },
  { write: '↑↓', means: '6h' },
  { write: '↓', means: '6h; the reverse points down' },
  { write: 'medal alignment', means: '12h' },
  { write: 'frappe monnaie', means: '6h; Kehrprägung and alla francese likewise' },
  { write: 'none', means: 'none; for a piece with one face, or cast' },
];
