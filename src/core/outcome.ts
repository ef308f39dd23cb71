/** What a `parse…` answers: the value, or one sentence that says what is wrong and what to write instead. */
export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

export function good<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function refuse<T = never>(problem: string): Outcome<T> {
  return { ok: false, problem };
}
