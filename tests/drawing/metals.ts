/** Colours from the deepest shadow to the brightest light, at 0, ¼, ½, ¾ and 1. */
type Ramp = readonly [Shade, Shade, Shade, Shade, Shade];
type Shade = readonly [number, number, number];

/** A metal as it looks in the hand: where it is bare, and where it has toned (in hollows, and in patches). */
export type Metal = {
  readonly bare: Ramp;
  readonly toned: Ramp;
  /** What sits in its pits: soil, verdigris, white bloom. */
  readonly deposit: Shade;
  /** How sharp its lights are: 1 is fresh metal, below it dull. */
  readonly shine: number;
};

export const METALS = {
  silver: {
    bare: [
      [26, 26, 29],
      [86, 86, 87],
      [158, 157, 154],
      [212, 210, 205],
      [254, 252, 247],
    ],
    toned: [
      [17, 16, 17],
      [56, 53, 51],
      [112, 106, 100],
      [168, 160, 150],
      [226, 218, 205],
    ],
    deposit: [58, 50, 42],
    shine: 0.9,
  },
  bright: {
    bare: [
      [26, 27, 31],
      [92, 94, 98],
      [166, 168, 171],
      [220, 221, 222],
      [255, 255, 253],
    ],
    toned: [
      [20, 19, 22],
      [70, 67, 68],
      [132, 126, 120],
      [188, 178, 164],
      [240, 230, 210],
    ],
    deposit: [62, 58, 56],
    shine: 1.15,
  },
  grey: {
    bare: [
      [24, 24, 26],
      [76, 76, 77],
      [140, 139, 137],
      [190, 188, 184],
      [240, 238, 232],
    ],
    toned: [
      [14, 14, 15],
      [42, 42, 43],
      [84, 83, 82],
      [132, 130, 126],
      [200, 196, 188],
    ],
    deposit: [50, 46, 42],
    shine: 0.75,
  },
  billon: {
    bare: [
      [24, 21, 19],
      [78, 71, 64],
      [142, 131, 119],
      [192, 180, 165],
      [240, 230, 215],
    ],
    toned: [
      [16, 14, 12],
      [48, 42, 36],
      [92, 80, 68],
      [140, 122, 104],
      [200, 184, 162],
    ],
    deposit: [58, 54, 40],
    shine: 0.7,
  },
  gold: {
    bare: [
      [52, 28, 6],
      [126, 80, 20],
      [202, 148, 52],
      [240, 200, 104],
      [255, 246, 204],
    ],
    toned: [
      [40, 18, 4],
      [98, 54, 14],
      [164, 106, 36],
      [214, 160, 74],
      [250, 224, 160],
    ],
    deposit: [84, 50, 24],
    shine: 1.05,
  },
  bronze: {
    bare: [
      [20, 14, 10],
      [60, 43, 29],
      [106, 80, 55],
      [158, 127, 92],
      [236, 212, 174],
    ],
    toned: [
      [14, 13, 9],
      [40, 38, 27],
      [72, 68, 48],
      [112, 106, 78],
      [186, 180, 148],
    ],
    deposit: [92, 108, 82],
    shine: 0.7,
  },
  dark: {
    bare: [
      [16, 13, 11],
      [48, 39, 31],
      [86, 70, 55],
      [132, 110, 87],
      [208, 190, 162],
    ],
    toned: [
      [10, 11, 9],
      [28, 31, 25],
      [52, 57, 46],
      [88, 92, 75],
      [160, 160, 138],
    ],
    deposit: [116, 104, 76],
    shine: 0.7,
  },
  copper: {
    bare: [
      [34, 17, 10],
      [92, 52, 32],
      [136, 86, 58],
      [188, 134, 98],
      [252, 220, 188],
    ],
    toned: [
      [22, 12, 8],
      [60, 35, 23],
      [104, 65, 44],
      [152, 106, 76],
      [220, 184, 150],
    ],
    deposit: [74, 62, 44],
    shine: 0.95,
  },
  brass: {
    bare: [
      [34, 24, 10],
      [94, 72, 34],
      [154, 124, 68],
      [206, 178, 116],
      [254, 240, 198],
    ],
    toned: [
      [22, 17, 8],
      [62, 49, 25],
      [108, 88, 49],
      [158, 134, 84],
      [222, 202, 154],
    ],
    deposit: [70, 66, 42],
    shine: 0.85,
  },
  styca: {
    bare: [
      [26, 20, 11],
      [80, 64, 38],
      [136, 112, 70],
      [186, 160, 110],
      [240, 222, 178],
    ],
    toned: [
      [15, 14, 9],
      [44, 41, 27],
      [80, 73, 49],
      [122, 112, 80],
      [192, 180, 142],
    ],
    deposit: [84, 100, 72],
    shine: 0.65,
  },
  lead: {
    bare: [
      [26, 27, 28],
      [56, 57, 59],
      [88, 89, 91],
      [128, 129, 130],
      [190, 190, 188],
    ],
    toned: [
      [22, 22, 22],
      [48, 47, 46],
      [78, 76, 73],
      [114, 111, 106],
      [172, 168, 160],
    ],
    deposit: [186, 182, 170],
    shine: 0.45,
  },
  pewter: {
    bare: [
      [28, 28, 30],
      [84, 85, 88],
      [146, 148, 150],
      [196, 198, 199],
      [244, 245, 245],
    ],
    toned: [
      [18, 18, 19],
      [54, 54, 56],
      [100, 100, 101],
      [150, 150, 150],
      [210, 210, 208],
    ],
    deposit: [70, 70, 68],
    shine: 0.7,
  },
} as const satisfies Readonly<Record<string, Metal>>;

export type MetalName = keyof typeof METALS;

/** The colour of a metal under a light from 0 to 1. */
export function shadeOf(ramp: Ramp, light: number, into: [number, number, number]): void {
  const exact = Math.min(3.9999, Math.max(0, light * 4));
  const whole = Math.floor(exact);
  const part = exact - whole;
  const low = ramp[whole] ?? ramp[0];
  const high = ramp[whole + 1] ?? ramp[4];
  into[0] = low[0] + (high[0] - low[0]) * part;
  into[1] = low[1] + (high[1] - low[1]) * part;
  into[2] = low[2] + (high[2] - low[2]) * part;
}
