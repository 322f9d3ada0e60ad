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

type Payload<Name extends string, Parent> = { readonly [N in Name]: Parent | null } & {
  readonly problems: readonly ProblemParent[];
};
