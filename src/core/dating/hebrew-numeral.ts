/** Letters in the order of their values: 1–9, 10–90, 100–400. */
const LETTERS = 'אבגדהוזחטיכלמנסעפצקרשת';
const FINAL_FORMS = new Map(Object.entries({ ך: 'כ', ם: 'מ', ן: 'נ', ף: 'פ', ץ: 'צ' }));

function valueOf(letter: string): number {
  const place = LETTERS.indexOf(FINAL_FORMS.get(letter) ?? letter);
  if (place < 9) return place + 1;
  return place < 18 ? 10 * (place - 8) : 100 * (place - 17);
}

/**
 * The Hebrew year that letters stand for: תש״ח and התש״ח are both 5708, since the thousands are left out as a rule.
 * Undefined when they are not a year: letters must fall in value, save for 15 and 16, which are written 9+6 and 9+7.
 */
export function readHebrewNumber(text: string): number | undefined {
  const letters = Array.from(text.replace(/["'״׳]/g, '')).map((letter) => FINAL_FORMS.get(letter) ?? letter);
  if (letters.length < 2 || letters.some((letter) => !LETTERS.includes(letter))) return undefined;
  const [first, second] = letters;
  const thousands = first === 'ה' && second !== undefined && valueOf(second) >= 100 ? letters.shift() : undefined;
  const values = letters.map(valueOf);
  const falling = values.every((value, index) => index === 0 || value <= (values[index - 1] ?? 0));
  const total = values.reduce((sum, value) => sum + value, 0);
  if (!falling || total < 300) return undefined;
  return (thousands === undefined ? 5000 : valueOf('ה') * 1000) + total;
}
