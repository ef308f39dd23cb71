/** Published tables for identification keys. Shown as printed. */

/**
 * Five fruits and vegetables with seven characters: the small sample data set distributed with the open DELTA programs
 * (Atlas of Living Australia, `controlling_characters_simple`, 2011), and the best-character order with separating
 * powers printed by their own test. States are the states the published files cut each character into: measures at every
 * end of a range (thickness at 0, 1, 3 and 5 mm), the number of seeds at every number from below 1 to above 50. `?` is
 * read there as "any state".
 */
export const DELTA_SAMPLE = {
  taxa: ['carrot', 'apricot', 'strawberry', 'plum', 'potato'],
  characters: [
    { name: 'average weight', states: 8, cells: [[5], [2, 3, 4], [0, 1, 2], [1, 2, 3], [6, 7]], separates: 1.74 },
    { name: 'seed presence', states: 2, cells: [[1], [0], [0], [0], [1]], separates: 0.97 },
    { name: 'seed in shell', states: 2, cells: ['?', [0], [1], [0], '?'], separates: 0.49 },
    { name: 'thickness of seed shell', states: 4, cells: ['?', [2], '?', [3], '?'], separates: 0.45 },
    { name: 'average number of seeds', states: 52, cells: ['?', [1], [50], [1], '?'], separates: 0.79 },
    { name: 'colour', states: 5, cells: [[2], [2], [1], [0], [3]], separates: 1.92 },
    { name: 'average length', states: 5, cells: [[4], [1, 2, 3], [0, 1, 2], [2, 3], [3, 4]], separates: 1.1 },
  ],
  order: [
    'colour', 'average weight', 'average length', 'seed presence', 'average number of seeds', 'seed in shell',
    'thickness of seed shell',
  ],
} as const; // prettier-ignore

/** Fourteen Saturday mornings: J. R. Quinlan, "Induction of Decision Trees", Machine Learning 1 (1986), table 1 (from memory; the gains are those printed in textbooks since). */
export const SATURDAYS = {
  play: 'NNPPPNPNPPPPPN',
  attributes: [
    { name: 'outlook', cells: ['sunny', 'sunny', 'overcast', 'rain', 'rain', 'rain', 'overcast', 'sunny', 'sunny', 'rain', 'sunny', 'overcast', 'overcast', 'rain'], gain: 0.2467 },
    { name: 'humidity', cells: ['high', 'high', 'high', 'high', 'normal', 'normal', 'normal', 'high', 'normal', 'normal', 'normal', 'high', 'normal', 'high'], gain: 0.1518 },
    { name: 'windy', cells: ['false', 'true', 'false', 'false', 'false', 'true', 'true', 'false', 'false', 'false', 'true', 'true', 'false', 'true'], gain: 0.0481 },
    { name: 'temperature', cells: ['hot', 'hot', 'hot', 'mild', 'cool', 'cool', 'cool', 'mild', 'cool', 'mild', 'mild', 'mild', 'hot', 'mild'], gain: 0.0292 },
  ],
} as const; // prettier-ignore

/**
 * The Bernoulli example of C. D. Manning, P. Raghavan and H. Schütze, Introduction to Information Retrieval (2008),
 * §13.3, example 13.2: the chance of each word in a document about China and in another, as estimated there; the document
 * "Chinese Chinese Chinese Tokyo Japan"; 0.005 and 0.022 before they are scaled to 1, which makes 0.1911 and 0.8089.
 */
export const CHINA = {
  priors: [3 / 4, 1 / 4],
  words: [
    { word: 'Chinese', chance: [4 / 5, 2 / 3], occurs: true },
    { word: 'Japan', chance: [1 / 5, 2 / 3], occurs: true },
    { word: 'Tokyo', chance: [1 / 5, 2 / 3], occurs: true },
    { word: 'Beijing', chance: [2 / 5, 1 / 3], occurs: false },
    { word: 'Macao', chance: [2 / 5, 1 / 3], occurs: false },
    { word: 'Shanghai', chance: [2 / 5, 1 / 3], occurs: false },
  ],
  posterior: [0.1911, 0.8089],
} as const;
