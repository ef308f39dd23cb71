import { expect, test } from 'vitest';
import { formatGrade } from '../../../src/core/grade/grade.ts';
import type { Grade } from '../../../src/core/grade/grade.ts';
import { parseGrade } from '../../../src/core/grade/parse-grade.ts';

function gradeOf(text: string): Grade {
  const outcome = parseGrade(text);
  return outcome.ok ? outcome.value : expect.fail(`${text}: ${outcome.problem}`);
}

/** What stands after a grade and is no part of it: all common practice. */
test.for([
  ['MS-64 RD', { words: 'MS-64', colour: 'red' }],
  ['MS-65 RB', { words: 'MS-65', colour: 'red and brown' }],
  ['PR-65 cameo', { words: 'PR-65', remarks: ['cameo'] }],
  ['PR-65 deep cameo', { words: 'PR-65', remarks: ['deep cameo'] }],
  ['MS-63 prooflike', { words: 'MS-63', remarks: ['prooflike'] }],
  ['VF 5/5 4/5', { strike: 5, surface: 4 }],
  ['Ch XF 5/5 - 3/5', { words: 'choice EF', strike: 5, surface: 3 }],
  ['XF, 4/5, 2/5, scratches', { strike: 4, surface: 2, problem: 'scratches' }],
] as const)('%s', ([text, expected]) => {
  expect(gradeOf(text)).toMatchObject(expected);
});

/** A fault is a fault whatever else is said in the same breath, and what is denied is none. Common practice. */
test.for([
  ['VF, cleaned but attractive', 'cleaned but attractive'],
  ['VF, cleaned and toned', 'cleaned and toned'],
  ['VF, well scratched', 'well scratched'],
  ['VF, artificially toned', 'artificially toned'],
  ['VF, edge knock', 'edge knock'],
  ['VF, gilt', 'gilt'],
  ['ZF, gaatje', 'gaatje'],
  ['EF, lustrous with hairlines', 'hairlines'],
  ['VF, weak strike at the edge', undefined],
  ['UNC, boxed', undefined],
  ['VF, in case', undefined],
  ['vz, Originaletui', undefined],
  ['VF, ribbon', undefined],
  ['VF, in a broken case', 'in a broken case'],
  ['VF, uncleaned', undefined],
  ['VF, no scratches', undefined],
  ['TTB, sans rayures', undefined],
  ['VF, struck from rusty dies', undefined],
  ['VF, die crack', undefined],
  ['VF, flan crack as made', undefined],
  ['VF, whole flan, lustrous', undefined],
  ['VF, flat rim', undefined],
  ['VF, not cleaned but scratched', 'not cleaned but scratched'],
  ['VF, die crack and scratches', 'die crack and scratches'],
  ['VF, without solder marks but pierced', 'without solder marks but pierced'],
  ['VF, uncleaned with scratches', 'scratches'],
  ['VF, free from scratches and hairlines', undefined],
] as const)('%s: problem %s', ([text, problem]) => {
  expect(gradeOf(text).problem).toBe(problem);
});

/** What is said not to be there is no problem, in the languages of lists. Common practice. */
test.for([
  ...'corrosion-free, free of corrosion, neither cleaned nor bent, non-porous, cleaning nil, uncleaned, never cleaned, no holes'.split(
    ', ',
  ),
  ...'unscratched, undamaged, lacking scratches, no sign of cleaning, no trace of mounting, corrosion: none, cleaned: no'.split(
    ', ',
  ),
  ...'nicht gereinigt, ungereinigt, rostfrei, korrosionsfrei, frei von Kratzern, kratzerfrei, keine Kratzer, unpoliert'.split(
    ', ',
  ),
  ...'weder gereinigt noch geknickt, niemals gereinigt, ohne Lötspur'.split(', '),
  ...'non nettoyée, jamais nettoyé, sans rayures, ni nettoyé ni percé, exempt de corrosion, aucune rayure, pas nettoyé'.split(
    ', ',
  ),
  ...'non pulita, mai pulita, senza graffi, priva di graffi, nessun graffio, né pulita né forata'.split(', '),
  ...'niet gereinigd, geen krassen, vrij van krassen, noch gepoetst noch gebogen, nooit gepoetst, onbeschadigd'.split(
    ', ',
  ),
  ...'no limpiada, nunca limpiada, sin rayas, libre de corrosión, ni limpiada ni doblada, ningún golpe'.split(', '),
  'no scratches, hairlines or knocks',
  'without solder, mounts or repairs',
])('%s is no problem', (said) => {
  const { problem, remarks } = gradeOf(`VF, ${said}`);
  expect([problem, remarks]).toEqual([undefined, [said]]);
});

/** Words of damage that speak of the design, its letters, or the die. Heraldry and common practice. */
test.for([
  ...'bent sceptre, broken A in legend, pierced mullet, cracked die, holed cross, plugged punch, clipped Z, pierced cross'.split(
    ', ',
  ),
  ...'pierced cinquefoil, broken sword, mounted horseman, spotted lion, cracked reverse die, chipped die, broken tail to R'.split(
    ', ',
  ),
  ...'die cracks on reverse, engraved by a pupil, rostiger Stempel, conio rotto, cassure de coin'.split(', '),
])('%s is no problem of the piece', (said) => {
  expect(gradeOf(`VF, ${said}`).problem).toBeUndefined();
});

/** A denial taken back, or of something else, leaves the problem; half a denial is asked about. */
test.for([
  ['not only cleaned but bent', 'problem'],
  ['no doubt cleaned', 'problem'],
  ['nothing but scratches', 'problem'],
  ['no scratches but cleaned', 'problem'],
  ['free of corrosion but scratched', 'problem'],
  ['scratched initials', 'problem'],
  ['bent flan', 'problem'],
  ['cracked flan', 'problem'],
  ["pierced at 12 o'clock", 'problem'],
  ['cleaned, no scratches', 'problem'],
  ['hardly cleaned', 'asked'],
  ['not badly scratched', 'asked'],
  ['no serious scratches', 'asked'],
  ['no longer corroded', 'asked'],
  ['no patina and cleaned', 'asked'],
  ['kaum gereinigt', 'asked'],
  ['pas trop rayée', 'asked'],
  ['no holes, cleaned or polished', 'problem'],
  ['not uncleaned', 'asked'],
  ['not free of scratches', 'asked'],
  ['nicht frei von Kratzern', 'asked'],
  ['almost scratch-free', 'asked'],
  ['nearly free of corrosion', 'asked'],
  ['fast ohne Kratzer', 'asked'],
  ['nahezu kratzerfrei', 'asked'],
  ['ohne nennenswerte Kratzer', 'asked'],
  ['presque sans rayures', 'asked'],
  ['quasi senza graffi', 'asked'],
  ['casi sin rayas', 'asked'],
  ['bijna zonder krassen', 'asked'],
  ['no corrosion apart from the edge', 'asked'],
  ['horseman mounted', 'asked'],
  ['mullet pierced', 'asked'],
  ['initials', 'asked'],
] as const)('%s: %s', ([said, what]) => {
  const outcome = parseGrade(`VF, ${said}`);
  expect(outcome.ok ? outcome.value.problem !== undefined && 'problem' : 'asked').toBe(what);
});

/** What is not there, of the design, of the die, or made so: no problem. Common practice; countermarks are put on by authority. */
test.for([
  'scratches absent', 'rayures absentes', 'graffi assenti', 'rayas ausentes', 'krassen afwezig', 'Kratzer fehlen', 'Henkelspur nicht vorhanden', 'corrosion not present',
  'heart pierced by arrows', 'heart pierced by a sword', 'pierced heart on rev.', 'holed shield', 'cœur percé', 'coeur percé', 'étoile percée', 'stella forata', 'croix percée',
  'spots on leopard', 'spots of the leopard', 'brushed hair', 'clipped beard', 'cropped mane', 'finely engraved', 'beautifully engraved dies', 'well engraved portrait', 'broken wing',
  'hole as issued', 'holed as issued', 'pierced as made', 'plugged as issued', 'die scratch', 'die scratches', 'die gouge', 'die file marks', 'scratch in die', 'scratches on the die',
  'scratches in the die not the coin', 'lines of die polishing', 'countermarked', 'countermark on obverse',
])('%s is no problem of the piece itself', (said) => {
  expect(gradeOf(`VF, ${said}`).problem).toBeUndefined();
}); // prettier-ignore

/** A denial behind the word, the word of others, and holes that may be of the design: asked about. Common practice. */
test.for([
  'appears holed but is not', 'cleaning not suspected', 'said to be tooled, not so', 'wrongly described as holed', 'falsely called cleaned', 'other specimens are holed', 'others are holed',
  'usually holed', 'often cleaned', 'anything but cleaned', 'far from cleaned', 'alles andere als gereinigt', 'angeblich gereinigt', 'prétendument nettoyée', 'à tort décrite percée',
  'tutt’altro che pulita', 'zogenaamd gepoetst', 'square hole', 'center hole', 'centre hole', 'central hole', 'trou central', 'foro centrale', 'agujero cuadrado', 'hole in design',
  'hole in the centre', 'as made with square hole', 'not so cleaned', 'cleaned and holed as issued', 'cleaned and scratches: none', 'scratches not', 'not so',
])('%s asks', (said) => {
  expect(parseGrade(`VF, ${said}`).ok).toBe(false);
}); // prettier-ignore

/** Words near these that leave the problem. */
test.for([
  'other scratches', 'hole at 12', 'holed for suspension', 'large hole', 'scratches on the bust', 'engraved initials', 'scratched shield and cleaned', 'spots', 'red spots',
  'scratched as usual', 'pierced above the heart', 'cleaned but not bent', 'scratches and die crack',
])('%s is a problem', (said) => {
  expect(gradeOf(`VF, ${said}`).problem).toBeDefined();
}); // prettier-ignore

test('choice and gem before a number say nothing more than the number', () => {
  expect(gradeOf('Choice AU-58')).toMatchObject({ low: 58, high: 58 });
  expect(gradeOf('Superb Gem MS-67')).toMatchObject({ low: 67, high: 67 });
});

test('it reads back from print', () => {
  for (const text of ['VF 5/5 4/5', 'PR-65 cameo', 'MS-64 RD']) {
    const grade = gradeOf(text);
    expect({ ...gradeOf(formatGrade(grade)), text }).toEqual(grade);
  }
});

test('six is no number out of five, and one number says neither strike nor surface', () => {
  for (const text of ['VF 6/5 4/5', 'VF 5/5']) expect(parseGrade(text).ok).toBe(false);
});
