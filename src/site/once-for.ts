/** The same work, done once for each thing it is asked of: pages ask for the same answer thousands of times. */
export function onceFor<Thing extends object, Answer>(work: (thing: Thing) => Answer): (thing: Thing) => Answer {
  const done = new WeakMap<Thing, { readonly answer: Answer }>();
  return (thing) => {
    const known = done.get(thing) ?? { answer: work(thing) };
    done.set(thing, known);
    return known.answer;
  };
}
