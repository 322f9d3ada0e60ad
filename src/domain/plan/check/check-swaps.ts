import type { Step } from "../../model/component.js";
import type { Line } from "../../model/line.js";
import type { Measured } from "../../model/amount.js";
import type { Path, Problem } from "../../problem.js";
import { standardUnit } from "../../quantity/unit.js";
import { checkMeasured } from "./check-text.js";

interface Owner {
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  /** null: it has no yield of its own, so a swap cannot bring one. */
  readonly yield: Measured | null;
  /** Whether it is kept as a class. */
  readonly isKept: boolean;
}

/** What swaps bring along has to be something that their component, route or meal has: a step of that id, a yield of that kind, a class. */
export const checkSwaps = (owner: Owner, path: Path): readonly Problem[] =>
  owner.lines.flatMap((line) =>
    line.swaps.flatMap(({ food, own }): readonly Problem[] => {
      if (own === undefined) return [];
      const at = [...path, "lines", line.id, "swaps", food];
      const shape = (field: string, expected: string, got: string): Problem => ({
        ...{ code: "BAD_SHAPE", path: [...at, field], expected, got },
      });
      const known = owner.steps.map(({ id }) => id);
      return [
        ...(own.steps ?? []).flatMap(({ id, minutes = 0 }) => [
          ...(known.includes(id) ? [] : [shape("steps", `one of its steps: ${known.join(" | ")}`, id)]),
          ...(Number.isFinite(minutes) && minutes >= 0 ? [] : [shape("steps", "minutes", String(minutes))]),
        ]),
        ...(own.keepsAs === undefined || owner.isKept
          ? []
          : [shape("keeps-as", "no class on a line of a meal", own.keepsAs)]),
        ...(own.yield === undefined ? [] : yieldProblems(own.yield, owner.yield, shape, at)),
      ];
    }),
  );

function yieldProblems(
  given: Measured,
  written: Measured | null,
  shape: (field: string, expected: string, got: string) => Problem,
  at: Path,
): readonly Problem[] {
  if (written === null) return [shape("yield", "no yield, which only a component as written has", given.unit)];
  const wrong = checkMeasured(given, [...at, "yield"], Number.MIN_VALUE);
  if (wrong.length > 0) return wrong;
  const isSame =
    given.unit === written.unit || standardUnit(given.unit)?.dimension === standardUnit(written.unit)?.dimension;
  return isSame ? [] : [shape("yield", `an amount that compares with its ${written.unit}`, given.unit)];
}
