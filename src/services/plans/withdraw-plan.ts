import { failed, ok, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { checkNote } from "../drafts/check/check-note.js";
import { write } from "../write.js";

interface WithdrawInput {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number;
  /** Why, for readers. */
  readonly reason: string;
  readonly idempotencyKey?: string | null | undefined;
}

type WithdrawnPlan = { readonly publisher: string; readonly slug: string; readonly revision: number };

/**
 * Takes a revision out of force. It is still found by its number, with the reason; the plan's own address falls back to the
 * newest revision in force, or to nothing.
 */
export async function withdrawPlan(deps: Deps, caller: Caller, input: WithdrawInput): Promise<Result<WithdrawnPlan>> {
  const { publisher, slug, revision, reason, idempotencyKey } = input;
  return write(
    deps,
    {
      caller,
      scope: "PUBLISH",
      publisher,
      action: "WITHDRAW_PLAN",
      idempotencyKey,
      input: { slug, revision, reason },
    },
    async ({ data, clock }) => {
      const wrong = checkNote(reason, ["input", "reason"]);
      if (wrong.length > 0) return failed(wrong);
      await data.publishers.lock(publisher);
      const path = ["input", "revision"];
      const [found] = await data.revisions.summaries([{ publisher, slug, revision }]);
      if (!found) return failed([{ code: "UNKNOWN_PLAN", path, publisher, plan: slug, revision }]);
      if (!(await data.revisions.withdraw({ publisher, slug, revision }, clock(), reason))) {
        return failed([{ code: "ALREADY_WITHDRAWN", path, revision }]);
      }
      const [newest] = await data.revisions.summaries([{ publisher, slug, revision: null }]);
      return ok({
        value: { publisher, slug, revision },
        subject: { kind: "PLAN", name: slug, before: revision, after: newest?.revision ?? null },
      });
    },
  );
}
