import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import type { PageRequest } from "../deps.js";

const smallestPage = 1;
export const largestPage = 100;
const defaultPage = 20;

/** Each may be left out. */
export interface WantedPage {
  readonly first?: number | null | undefined;
  readonly after?: string | null | undefined;
  readonly last?: number | null | undefined;
  readonly before?: string | null | undefined;
}

/** Fills in the default size and refuses sizes out of range, and `first` together with `last`. */
export function readPageRequest(wanted: WantedPage): Result<PageRequest> {
  const first = wanted.first ?? null;
  const last = wanted.last ?? null;
  const problems: Problem[] = [...sizeProblems("first", first), ...sizeProblems("last", last)];
  if (first !== null && last !== null) {
    problems.push({ code: "BAD_SHAPE", path: ["last"], expected: "`first` or `last`, not both", got: "both" });
  }
  if (problems.length > 0) return failed(problems);
  const size = first ?? (last === null ? defaultPage : null);
  return ok({ first: size, after: wanted.after ?? null, last, before: wanted.before ?? null });
}

function sizeProblems(name: string, size: number | null): readonly Problem[] {
  if (size === null || (size >= smallestPage && size <= largestPage)) return [];
  return [{ code: "AMOUNT_OUT_OF_RANGE", path: [name], value: String(size), min: smallestPage, max: largestPage }];
}
