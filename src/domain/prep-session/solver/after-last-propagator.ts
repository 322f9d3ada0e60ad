import type { BoundTrail } from "./bound-trail.js";
import type { AfterLast } from "./rcpsp-problem.js";

/** `start(to) <= max over i of finish(of[i]) + max`: a greatest wait that counts from whichever of several ends last. */
export function propagateAfterLast(trail: BoundTrail, durations: Int32Array, wait: AfterLast): boolean {
  let latest = Number.NEGATIVE_INFINITY;
  for (const task of wait.of) latest = Math.max(latest, trail.upper(task) + durations[task]!);
  const limit = latest + wait.max;
  if (limit < trail.upper(wait.to)) {
    trail.beginList();
    for (const task of wait.of) trail.addToList(2 * task + 1, durations[task]! - latest);
    if (!trail.raise(2 * wait.to + 1, -limit, trail.endList())) return false;
  }
  const needed = trail.lower(wait.to) - wait.max;
  const able = wait.of.filter((task) => trail.upper(task) + durations[task]! >= needed);
  const [only] = able;
  if (able.length !== 1 || only === undefined || trail.lower(only) + durations[only]! >= needed) return true;
  trail.beginList();
  trail.addToList(2 * wait.to, needed + wait.max);
  for (const task of wait.of) if (task !== only) trail.addToList(2 * task + 1, durations[task]! - needed + 1);
  return trail.raise(2 * only, needed - durations[only]!, trail.endList());
}
