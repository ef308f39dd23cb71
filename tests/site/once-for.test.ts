import { expect, test } from 'vitest';
import { onceFor } from '../../src/site/once-for.ts';

test('is worked out once for each thing, also when there is no answer', () => {
  const asked: string[] = [];
  const first = onceFor((thing: { readonly name: string }) => {
    asked.push(thing.name);
    return thing.name === 'none' ? undefined : thing.name;
  });
  const [penny, none] = [{ name: 'penny' }, { name: 'none' }];
  expect([first(penny), first(none), first(penny), first(none)]).toEqual(['penny', undefined, 'penny', undefined]);
  expect(first({ name: 'penny' })).toBe('penny');
  expect(asked).toEqual(['penny', 'none', 'penny']);
});
