import { describe, expect, test } from 'vitest';
import { shortScopes } from '../../src/site/short-scopes.ts';

describe('the names by which styles are kept to their components are shortened', () => {
  const { transform } = shortScopes();

  test('alike in a component and in its style', () => {
    const component = transform('<p data-astro-cid-gk2y4x2r>', '/src/Header.astro');
    const style = transform('p[data-astro-cid-gk2y4x2r]{}', '/src/Header.astro?astro&type=style&index=0&lang.css');
    expect(component?.code).toBe('<p data-0gk2y>');
    expect(style?.code).toBe('p[data-0gk2y]{}');
  });

  test('nowhere but in components', () => {
    expect(transform('const scope = "data-astro-cid-gk2y4x2r";', '/src/script.ts')).toBeNull();
    expect(transform('<p class="line">', '/src/Header.astro')).toBeNull();
  });

  test('and two components never share one', () => {
    expect(() => transform('<p data-astro-cid-gk2yzzzz>', '/src/Other.astro')).toThrow('data-0gk2y');
  });
});
