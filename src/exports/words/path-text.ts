import type { Path } from "../../domain/problem.js";
import { capital } from "./capital.js";

/** What a place in one of these lists is called. */
const entries: ReadonlyMap<string | number, string> = new Map([
  ["lines", "ingredient"],
  ["meals", "meal"],
  ["routes", "route"],
  ["steps", "step"],
  ["swaps", "swap"],
]);

/** `components > dal > lines > l2`; where places are counted, `meal 2, ingredient 1`, as a writer counts. */
export function pathText(path: Path): string {
  const counted = path.some((part, at) => typeof part === "number" && entries.has(path[at - 1] ?? ""));
  if (!counted) return path.join(" > ");
  const words = path.flatMap((part, at): readonly (string | number)[] => {
    const entry = typeof part === "number" ? entries.get(path[at - 1] ?? "") : undefined;
    if (entry !== undefined) return [`${entry} ${Number(part) + 1}`];
    return entries.has(part) && typeof path[at + 1] === "number" ? [] : [part];
  });
  return capital(words.join(", "));
}
