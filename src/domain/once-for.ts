/** The same function, which works out each thing once and keeps what it found as long as the thing lives. Nobody may change either. */
export function onceFor<Thing extends object, Found>(find: (thing: Thing) => Found): (thing: Thing) => Found {
  const known = new WeakMap<Thing, { readonly found: Found }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.found;
    const found = find(thing);
    known.set(thing, { found });
    return found;
  };
}

/**
 * The same function, which keeps what it found for the questions asked last.
 *
 * @param most how many are kept; 1: the last one
 * @param keyOf equal for questions with equal answers
 */
export function latest<Question, Found>(
  most: number,
  keyOf: (question: Question) => string,
  find: (question: Question) => Found,
): (question: Question) => Found {
  const known = new Map<string, { readonly found: Found }>();
  return (question) => {
    const key = keyOf(question);
    const kept = known.get(key) ?? { found: find(question) };
    known.delete(key);
    known.set(key, kept);
    if (known.size > most) known.delete(known.keys().next().value ?? key);
    return kept.found;
  };
}
