import { failed, ok, type Problem, type Result } from "../../domain/problem.js";
import { slugSchema } from "../../imports/documents/schemas/scalar-schemas.js";
import type { Caller } from "./actor.js";
import type { Deps } from "../deps.js";
import { checkName } from "../drafts/check/check-name.js";
import { write } from "../write.js";

interface PublisherInput {
  readonly slug: string;
  readonly name: string;
  readonly idempotencyKey?: string | null | undefined;
}

/** Makes a new publisher; only the operator may. Answers with its slug. */
export async function createPublisher(deps: Deps, caller: Caller, input: PublisherInput): Promise<Result<string>> {
  const { slug, name, idempotencyKey } = input;
  return write(
    deps,
    { caller, scope: "ADMIN", publisher: null, action: "CREATE_PUBLISHER", idempotencyKey, input: { slug, name } },
    async ({ data }) => {
      const problems = [...slugProblems(slug), ...checkName(name, ["input", "name"])];
      if (problems.length > 0) return failed(problems);
      if (!(await data.publishers.create({ slug, name }))) {
        return failed([{ code: "SLUG_TAKEN", path: ["input", "slug"], slug }]);
      }
      return ok({ value: slug, subject: { kind: "PUBLISHER", name: slug, before: null, after: null } });
    },
  );
}

/** Gives a publisher another name; its slug never changes. Only the operator may. Answers with the slug. */
export async function updatePublisher(deps: Deps, caller: Caller, input: PublisherInput): Promise<Result<string>> {
  const { slug, name, idempotencyKey } = input;
  return write(
    deps,
    { caller, scope: "ADMIN", publisher: null, action: "UPDATE_PUBLISHER", idempotencyKey, input: { slug, name } },
    async ({ data }) => {
      const problems = checkName(name, ["input", "name"]);
      if (problems.length > 0) return failed(problems);
      if (!(await data.publishers.rename(slug, name))) {
        return failed([{ code: "UNKNOWN_PUBLISHER", path: ["input", "slug"], publisher: slug }]);
      }
      return ok({ value: slug, subject: { kind: "PUBLISHER", name: slug, before: null, after: null } });
    },
  );
}

function slugProblems(slug: string): readonly Problem[] {
  if (slugSchema.safeParse(slug).success) return [];
  const expected = "lower-case letters and digits, words joined by hyphens, 80 characters at most";
  return [{ code: "BAD_SHAPE", path: ["input", "slug"], expected, got: "something else" }];
}
