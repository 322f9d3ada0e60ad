// @ts-nocheck
import { failed, ok } from "../../domain/problem.js";
import type { Problem, Result } from "../../domain/problem.js";

type Results = Readonly<Record<string, Result<unknown>>>;
type Values<R extends Results> = { readonly [K in keyof R]: R[K] extends Result<infer T> ? T : never };

const problemsOf = (result: Result<unknown>): readonly Problem[] => (result.ok ? [] : result.problems);

/** One result of a record of results: all values, or every problem of every part. */
export function combine<R extends Results>(parts: R): Result<Values<R>> {
  const problems = Object.values(parts).flatMap(problemsOf);
  if (problems.length > 0) return failed(problems);
  const values = Object.entries(parts).map(([key, part]) => [key, part.ok ? part.value : undefined]);
  return ok(Object.fromEntries(values) as Values<R>);
}

/** One result of a list of results: all values in order, or every problem. */
export function every<T>(parts: readonly Result<T>[]): Result<readonly T[]> {
  const problems = parts.flatMap(problemsOf);
  return problems.length > 0 ? failed(problems) : ok(parts.flatMap((part) => (part.ok ? [part.value] : [])));
}

/** The value changed, or the problems kept. */
export const mapResult = <A, B>(result: Result<A>, change: (value: A) => B): Result<B> =>
  result.ok ? ok(change(result.value)) : result;
