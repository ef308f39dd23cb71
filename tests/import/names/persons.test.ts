import { describe, expect, test } from 'vitest';
import { byPerson } from '../../../src/import/names/persons.ts';
import { draft } from '../plan/bring.ts';

// Joint reigns and portraits are facts of history: Diocletian and Maximian 286 to 305, Ferdinand and Isabella 1474 to 1504, William
// III and Mary II 1689 to 1694, Philip and Mary I 1554 to 1558; coins of Caracalla and of Antoninus Pius show Julia Domna and Faustina. Common practice.
const KNOWN = [{ id: 'caracalla', names: ['Caracalla', 'Antoninus'], reigns: [] }];
const FEW = ['Diocletian', 'Maximian', 'Octavian'];

function rulersOf(cell: string, others: readonly string[] = []) {
  const drafts = [cell, ...others].map((name, at) => draft(at + 2, {}, { names: { ruler: [{ name }] } }));
  const [first] = byPerson(drafts, KNOWN, { gotha: ['Saxe-Coburg and Gotha'] });
  return { names: (first?.names.ruler ?? []).map(({ name }) => name), asked: (first?.unread ?? []).length };
}

describe('a cell in a column of rulers', () => {
  test.for([
    ['Diocletian and Maximian', ['Diocletian', 'Maximian'], 0],
    ['Diocletian & Maximian', ['Diocletian', 'Maximian'], 0],
    ['Ferdinand und Isabella', ['Ferdinand', 'Isabella'], 0],
    ['Ferdinand V et Isabelle', ['Ferdinand V', 'Isabelle'], 0],
    ['Fernando y Isabel', ['Fernando', 'Isabel'], 0],
    ['WILLIAM AND MARY', ['William III', 'Mary II'], 0],
    ['Wm. & Mary', ['William III', 'Mary II'], 0],
    ['Philip & Mary', ['Philip', 'Mary I'], 0],
    ['William III & Mary II', ['William III', 'Mary II'], 0],
    ['Antoninus Pius for Marcus Aurelius', [], 1],
    ['Maximian/Galerius', [], 1],
    ['Caracalla and Diocletian', ['Caracalla', 'Diocletian'], 0],
    ['Diocletian, Maximian and Caracalla', ['Diocletian', 'Maximian', 'Caracalla'], 0],
    ['Saxe-Coburg and Gotha', ['Saxe-Coburg and Gotha'], 0],
    ['Trinidad and Tobago', [], 1],
    ['Pupienus and Balbinus', ['Pupienus', 'Balbinus'], 0],
    ['Antigua and Barbuda', [], 1],
    ['James VI and I', [], 1],
    ['Henry II or Henry III', [], 1],
    ['Edward I/II', [], 1],
    ['Edward I-III', [], 1],
    ['Caracalla (Julia Domna)', ['Caracalla'], 1],
    ['Gallienus (for Salonina)', ['Gallienus'], 1],
    ['Octavian (Caracalla)', ['Octavian'], 1],
    ['Caracalla (Antoninus)', ['Caracalla'], 1],
    ['Frederick II (Prussia)', ['Frederick II (Prussia)'], 0],
    ['Octavian (Augustus)', ['Octavian'], 1],
    ['Philip of Spain', ['Philip of Spain'], 0],
    ['Edward the Confessor', ['Edward the Confessor'], 0],
    ['Turlough O Conor', ['Turlough O Conor'], 0],
  ] as const)('%s', ([cell, names, asked]) => {
    expect(rulersOf(cell, FEW)).toEqual({ names, asked });
  });
});
