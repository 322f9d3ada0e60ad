import { firstProblems } from "../domain/first-problems.js";
import type { Result } from "../domain/problem.js";
import type { ProblemParent } from "./parent-types.js";

/** The answer of a mutation: the thing under its name, or null and the problems. */
export async function payload<Name extends string, T, Parent>(
  name: Name,
  result: Result<T>,
  parentOf: (value: T) => Parent | Promise<Parent>,
): Promise<Payload<Name, Parent>> {
  const thing = result.ok ? await parentOf(result.value) : null;
  return { [name]: thing, problems: result.ok ? [] : firstProblems(result.problems) } as Payload<Name, Parent>;
}

/** The answer for a reader, with problems in the reader's language as far as that can be read. */
export function readersPayload<Name extends string, T>(
  name: Name,
  result: Result<T>,
  household: { readonly locale?: string | null | undefined } | null | undefined,
): Payload<Name, T> {
  const locale = household?.locale ?? null;
  const problems = result.ok ? [] : firstProblems(result.problems).map((problem) => ({ ...problem, locale }));
  return { [name]: result.ok ? result.value : null, problems } as Payload<Name, T>;
}

type Payload<Name extends string, Parent> = { readonly [N in Name]: Parent | null } & {
  readonly problems: readonly ProblemParent[];
};
