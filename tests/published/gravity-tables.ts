/**
 * Measured densities of alloys. They are compared with the fineness that the two-metal formula gives, within `within`: the
 * old tables were measured on gold of 19.26 and silver of 10.45, at 15 °C, and no table agrees with another to a thousandth.
 */
const ROSE = 'table of gold and silver in Rose, The Metallurgy of Gold (title from memory)';

export const measuredDensities = [
  { alloy: 'gold-silver', fineness: 0.917, density: 18.08, within: 0.01, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.879, density: 17.54, within: 0.01, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.843, density: 16.96, within: 0.01, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.75, density: 16.03, within: 0.02, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.667, density: 15.07, within: 0.01, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.5, density: 13.6, within: 0.01, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.25, density: 11.78, within: 0.02, source: ROSE },
  { alloy: 'gold-silver', fineness: 0.167, density: 11.28, within: 0.02, source: ROSE },
  {
    alloy: 'gold-copper',
    fineness: 11 / 12,
    density: 17.48,
    within: 0.01,
    source: 'density of standard gold in Rose, The Metallurgy of Gold (title from memory)',
  },
  { alloy: 'gold-copper', fineness: 0.9, density: 17.16, within: 0.01, source: 'gold 900, copper 100, in the same' },
  {
    alloy: 'gold-copper',
    fineness: 11 / 12,
    density: 17.62,
    within: 0.001,
    source: 'published tables of gold and copper',
  },
  { alloy: 'gold-copper', fineness: 0.9, density: 17.32, within: 0.001, source: 'published tables of gold and copper' },
  { alloy: 'gold-copper', fineness: 1, density: 19.32, within: 0, source: 'CRC Handbook of Chemistry and Physics' },
  { alloy: 'silver-copper', fineness: 1, density: 10.49, within: 0, source: 'CRC Handbook of Chemistry and Physics' },
  { alloy: 'silver-copper', fineness: 0, density: 8.96, within: 0, source: 'CRC Handbook of Chemistry and Physics' },
  {
    alloy: 'silver-copper',
    fineness: 0.925,
    density: 10.36,
    within: 0.01,
    source: 'density of sterling silver, common practice',
  },
] as const;
