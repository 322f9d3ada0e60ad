import { SecondChance } from "./second-chance.js";
import type { InSlices, Work } from "./work.js";

/** The same function, which works out each thing once and keeps what it found as long as the thing lives. Nobody may change either. */
export function memoize<Thing extends object, Found>(find: (thing: Thing) => Found): (thing: Thing) => Found {
  const known = new WeakMap<Thing, { readonly found: Found }>();
  return (thing) => {
    const before = known.get(thing);
    if (before !== undefined) return before.found;
    const found = find(thing);
    known.set(thing, { found });
    return found;
  };
}

/** The same for what is found turn by turn. What was stopped is not kept. */
export function memoizeInSlices<Thing extends object, Found>(
  find: (thing: Thing, work: Work) => InSlices<Found>,
): (thing: Thing, work: Work) => InSlices<Found> {
  const known = new WeakMap<Thing, { readonly found: Found }>();
  return function* (thing, work) {
    const before = known.get(thing);
    if (before !== undefined) return before.found;
    const found = yield* find(thing, work);
    known.set(thing, { found });
    return found;
  };
}

/**
 * The same function, which keeps what it found for the questions asked last.
 *
 * @param name what is kept, in the table of caches
 * @param most how many are kept
 * @param keyOf equal for questions with equal answers
 * @param isWorthKeeping whether the same question is to be answered the same the next time; left out: always
 */
export function memoizeLatest<Question, Found>(
  name: string,
  most: number,
  keyOf: (question: Question) => string,
  find: (question: Question) => Found,
  isWorthKeeping: (found: Found) => boolean = () => true,
): (question: Question) => Found {
  const known = new SecondChance<{ readonly found: Found }>(name, { count: most, weight: most });
  return (question) => {
    const key = keyOf(question);
    const before = known.get(key);
    if (before !== undefined) return before.found;
    const found = find(question);
    if (isWorthKeeping(found)) known.set(key, { found }, 1);
    return found;
  };
}

/** The same for what is found turn by turn. What was stopped is not kept. */
export function memoizeLatestInSlices<Question, Found>(
  name: string,
  most: number,
  keyOf: (question: Question) => string,
  find: (question: Question) => InSlices<Found>,
): (question: Question) => InSlices<Found> {
  const known = new SecondChance<{ readonly found: Found }>(name, { count: most, weight: most });
  return function* (question) {
    const key = keyOf(question);
    const before = known.get(key);
    if (before !== undefined) return before.found;
    const found = yield* find(question);
    known.set(key, { found }, 1);
    return found;
  };
}
