import { panFactor, panTolerance, type Pan } from "../../domain/quantity/pan.js";
import { failed, ok, type Path, type Problem, type Result } from "../../domain/problem.js";

interface GivenPan {
  readonly diameter?: number | null | undefined;
  readonly length?: number | null | undefined;
  readonly width?: number | null | undefined;
}

interface PanChange {
  readonly factor: number;
  readonly leaveAsIs: boolean;
}

/** Sides a pan may have, in whatever unit of length. Far below any pan the ratio of two areas is no number any more. */
const shortest = 0.01;
const longest = 10_000;

function readPan({ diameter = null, length = null, width = null }: GivenPan, path: Path): Result<Pan> {
  const sizes = [diameter, length, width].filter((size) => size !== null);
  const wrong = sizes.find((size) => !(size >= shortest && size <= longest));
  if (wrong !== undefined) {
    return failed([{ code: "AMOUNT_OUT_OF_RANGE", path, value: String(wrong), min: shortest, max: longest }]);
  }
  if (diameter !== null && length === null && width === null) return ok({ kind: "ROUND", diameter });
  if (diameter === null && length !== null && width !== null) return ok({ kind: "RECTANGULAR", length, width });
  return failed([
    { code: "BAD_SHAPE", path, expected: "`diameter`, or `length` and `width`", got: `${sizes.length} sizes` },
  ]);
}

/** What to multiply a recipe by for another pan at the same depth. Both pans in one unit of length. */
export function changePan(from: GivenPan, to: GivenPan): Result<PanChange> {
  const [old, next] = [readPan(from, ["from"]), readPan(to, ["to"])];
  if (old.ok && next.ok) {
    const factor = panFactor(old.value, next.value);
    return ok({ factor, leaveAsIs: Math.abs(factor - 1) <= panTolerance });
  }
  const problems = [old, next].flatMap((read): readonly Problem[] => (read.ok ? [] : read.problems));
  return failed(problems);
}
