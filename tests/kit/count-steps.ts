import { Session, type Profiler } from "node:inspector";
import { setFlagsFromString } from "node:v8";

// Calls that the engine puts into their callers while it optimises would no longer be counted, from some moment on.
setFlagsFromString("--no-opt");
setFlagsFromString("--no-maglev");

// From here on: what the engine compiled before is counted by whole functions only. Import this file before what is counted.
const session = new Session();
session.connect();
session.post("Profiler.enable");
session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });

/**
 * How often functions and the blocks of their loops are entered while something runs, ours and those of libraries: work that
 * does not depend on the machine or on what else it does. What the engine does by itself (regular expressions, JSON, sorting)
 * counts as the calls that lead there.
 */
export function countSteps(run: () => unknown): number {
  taken();
  run();
  return taken();
}

/** Since it was taken last. */
function taken(): number {
  let steps = 0;
  session.post("Profiler.takePreciseCoverage", (error: Error | null, found: Profiler.TakePreciseCoverageReturnType) => {
    if (error !== null) throw error;
    for (const { functions } of found.result)
      for (const { ranges } of functions) for (const { count } of ranges) steps += count;
  });
  return steps;
}
