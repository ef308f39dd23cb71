import type { EraScheme } from '../../src/core/eras/era-scheme.ts';

/**
 * Period definitions as published, from the PeriodO snapshot of 2014 (public domain, Unlicense): names, bounds and titles of
 * sources as they stand there. Whether ends are shared or inclusive is read off the bounds: 1540 twice is shared, 1539 and 1540
 * is not. Only the rows that the tests need are copied; the last column is the row's identifier there.
 */
const rows: readonly (readonly [
  scheme: string,
  name: string,
  from: number,
  to: number | 'open',
  identifier: string,
])[] = [
  ['finds-database', 'Early Medieval', 410, 1066, 'p0gjgrshhcw'],
  ['finds-database', 'Medieval', 1066, 1539, 'p0gjgrsxwzx'],
  ['finds-database', 'Post-Medieval', 1500, 1900, 'p0gjgrs6sgx'],
  ['finds-database', 'Modern', 1901, 2050, 'p0gjgrsgn96'],
  ['heritage-ages', 'Roman', 43, 410, 'p0kh9ds9nsj'],
  ['heritage-ages', 'Early Medieval', 410, 1066, 'p0kh9dsmf3f'],
  ['heritage-ages', 'Medieval', 1066, 1540, 'p0kh9dscbkd'],
  ['heritage-ages', 'Post Medieval', 1540, 1901, 'p0kh9dsctsj'],
  ['heritage-ages', '20th Century', 1901, 2000, 'p0kh9dstg2x'],
  ['heritage-dynasties', 'Tudor', 1485, 1603, 'p0kh9ds7jvs'],
  ['heritage-dynasties', 'Elizabethan', 1558, 1603, 'p0kh9dstr3n'],
  ['heritage-dynasties', 'Jacobean', 1603, 1625, 'p0kh9ds3whd'],
  ['heritage-dynasties', 'Stuart', 1603, 1714, 'p0kh9ds6f4n'],
  ['arena-denmark', 'Iron Age', -500, 1050, 'p0zj6g8rr45'],
  ['arena-denmark', 'Medieval', 1050, 1536, 'p0zj6g83hwg'],
  ['arena-denmark', 'Post Medieval', 1536, 1660, 'p0zj6g87fd8'],
  ['arena-denmark', 'Modern', 1660, 'open', 'p0zj6g88v93'],
  ['arena-norway', 'Medieval', 1050, 1537, 'p0zj6g8qpxx'],
  ['arena-norway', 'Post Medieval', 1537, 'open', 'p0zj6g8tddc'],
  ['arena-iceland', 'Medieval', 1100, 1600, 'p0zj6g8m7nn'],
  ['arena-iceland', 'Post Medieval', 1600, 1900, 'p0zj6g8wbgx'],
  ['netherlands', 'Middeleeuwen laat B', 1250, 1500, 'p0pqptc4xpx'],
  ['netherlands', 'Nieuwe tijd A', 1500, 1650, 'p0pqptcdgk6'],
  ['netherlands', 'Nieuwe tijd B', 1650, 1850, 'p0pqptc5rvd'],
  ['sweden', 'Vikingatid', 800, 1100, 'p0vn2fr8n53'],
  ['sweden', 'Medeltid', 1100, 1500, 'p0vn2frpf43'],
  ['sweden', 'Nyare tid', 1500, 2100, 'p0vn2frwpp2'],
];

const schemes: readonly Omit<EraScheme, 'periods'>[] = [
  { id: 'finds-database', title: 'Periods used on the database', source: 'Periods used on the database (United Kingdom)', region: 'United Kingdom', ends: 'inclusive' },
  { id: 'heritage-ages', title: 'Heritage Data, ages', source: 'Heritage Data, Linked Data Vocabularies for Cultural Heritage', region: 'United Kingdom', ends: 'shared' },
  { id: 'heritage-dynasties', title: 'Heritage Data, dynasties', source: 'Heritage Data, Linked Data Vocabularies for Cultural Heritage', region: 'United Kingdom', ends: 'shared' },
  { id: 'arena-denmark', title: 'ARENA, Denmark', source: 'ARENA - The ARENA Portal', region: 'Denmark', ends: 'shared' },
  { id: 'arena-norway', title: 'ARENA, Norway', source: 'ARENA - The ARENA Portal', region: 'Norway', ends: 'shared' },
  { id: 'arena-iceland', title: 'ARENA, Iceland', source: 'ARENA - The ARENA Portal', region: 'Iceland', ends: 'shared' },
  { id: 'netherlands', title: 'Archeologisch Basisregister', source: 'Het Archeologisch Basisregister (ABR)', region: 'Netherlands', ends: 'shared' },
  { id: 'sweden', title: 'Sök i samlingarna', source: 'Sök i samlingarna (beta)', region: 'Sweden', ends: 'shared' },
]; // prettier-ignore

export const ERA_SCHEMES: readonly EraScheme[] = schemes.map((scheme) => ({
  ...scheme,
  periods: rows
    .filter(([of]) => of === scheme.id)
    .map(([, name, from, to]) => ({ id: name.toLowerCase().replaceAll(' ', '-'), name, from, to })),
}));

export function eraScheme(id: string): EraScheme {
  const scheme = ERA_SCHEMES.find((each) => each.id === id);
  if (scheme === undefined) throw new Error(`No published scheme is called ${id}.`);
  return scheme;
}
