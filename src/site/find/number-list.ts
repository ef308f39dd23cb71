// Rising whole numbers as a text: each by how much it is more than the last, five bits a sign, the sixth when more follow.
// Packed as a host sends it, a text takes hardly more than the numbers themselves tell.

const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES = new Uint8Array(128);
for (let value = 0; value < SIGNS.length; value += 1) VALUES[SIGNS.charCodeAt(value)] = value;

/** Rising whole numbers from 0 up as a text. */
export function writeNumbers(numbers: readonly number[]): string {
  let text = '';
  let last = -1;
  for (const number of numbers) {
    for (let left = number - last - 1, more = true; more; left >>>= 5) {
      more = left > 31;
      text += SIGNS.charAt((left & 31) | (more ? 32 : 0));
    }
    last = number;
  }
  return text;
}

/** The numbers that such a text holds. */
export function readNumbers(text: string): Uint32Array {
  const numbers = new Uint32Array(text.length);
  let [count, last, value, bits] = [0, -1, 0, 0];
  for (let at = 0; at < text.length; at += 1) {
    const sign = VALUES[text.charCodeAt(at)] ?? 0;
    value |= (sign & 31) << bits;
    bits += 5;
    if (sign > 31) continue;
    last += value + 1;
    numbers[count] = last;
    count += 1;
    [value, bits] = [0, 0];
  }
  return numbers.subarray(0, count);
}
