import { memoize } from "../memoize.js";
import type { KeepingClass } from "../model/keeping.js";

const byCode = memoize(
  (classes: readonly KeepingClass[]): ReadonlyMap<string, KeepingClass> =>
    new Map(classes.map((each) => [each.code, each])),
);

/** Whether a text is a code of the set in force. */
export const isKeepingClass = (code: string, classes: readonly KeepingClass[]): boolean => byCode(classes).has(code);

/** A class, and whether an analogy led to it. */
interface ClassAround extends KeepingClass {
  readonly throughAnalogy: boolean;
}

/** A class and those it lies within, narrowest first. Empty for a code that the set does not know. */
export function classesAround(code: string, classes: readonly KeepingClass[]): readonly ClassAround[] {
  const known = byCode(classes);
  const found: ClassAround[] = [];
  let throughAnalogy = false;
  for (let next = known.get(code); next !== undefined && found.length < classes.length;) {
    found.push({ ...next, throughAnalogy });
    throughAnalogy ||= next.byAnalogy;
    next = next.within === null ? undefined : known.get(next.within);
  }
  return found;
}

/** Whether food of a class needs the cold. What nobody knows may well need it. */
export const needsCold = (keepsAs: string | null, classes: readonly KeepingClass[]): boolean =>
  (keepsAs === null ? undefined : byCode(classes).get(keepsAs))?.perishable ?? true;
