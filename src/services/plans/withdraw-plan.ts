import { failed, ok, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps, WithdrawThen } from "../deps.js";
import { checkNote } from "../drafts/check/check-note.js";
import { missingPlan } from "./missing-plan.js";
import { write } from "../write.js";

interface UnpublishInput {
  readonly publisher: string;
  readonly slug: string;
  /** Why, for readers. */
  readonly reason: string;
  readonly idempotencyKey?: string | null | undefined;
}

interface WithdrawInput extends UnpublishInput {
  readonly revision: number;
  /** What readers find at the plan's own address then; left out: PREVIOUS. */
  readonly then?: WithdrawThen | null | undefined;
}

type WithdrawnPlan = { readonly publisher: string; readonly slug: string; readonly revision: number };

/**
 * Takes a revision out of force. It is still found by its number, with the reason; the plan's own address falls back to the
 * newest revision in force, or, where there is none or `then` says NOTHING, says that the plan was withdrawn, and why.
 */
export async function withdrawPlan(deps: Deps, caller: Caller, input: WithdrawInput): Promise<Result<WithdrawnPlan>> {
  const { publisher, slug, revision, reason, idempotencyKey } = input;
  const then = input.then ?? "PREVIOUS";
  return write(
    deps,
    {
      caller,
      scope: "PUBLISH",
      publisher,
      action: "WITHDRAW_PLAN",
      idempotencyKey,
      // A key of before `then` was there stands for the same write.
      input: { slug, revision, reason, ...(then === "PREVIOUS" ? {} : { then }) },
    },
    async ({ data, clock }) => {
      const wrong = checkNote(reason, ["input", "reason"]);
      if (wrong.length > 0) return failed(wrong);
      await data.publishers.lock(publisher);
      const path = ["input", "revision"];
      const [found] = await data.revisions.summaries([{ publisher, slug, revision }]);
      if (!found) return failed([{ code: "UNKNOWN_PLAN", path, publisher, plan: slug, revision }]);
      if (!(await data.revisions.withdraw({ publisher, slug, revision }, clock(), reason, then))) {
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

/**
 * Takes a plan back as a whole: every revision of it that is in force is withdrawn, and its own address says so, and why. Each is
 * still found by its number. Publishing it again puts it in force again.
 */
export async function unpublishPlan(deps: Deps, caller: Caller, input: UnpublishInput): Promise<Result<WithdrawnPlan>> {
  const { publisher, slug, reason, idempotencyKey } = input;
  return write(
    deps,
    { caller, scope: "PUBLISH", publisher, action: "WITHDRAW_PLAN", idempotencyKey, input: { slug, reason } },
    async (inside) => {
      const { data, clock } = inside;
      const wrong = checkNote(reason, ["input", "reason"]);
      if (wrong.length > 0) return failed(wrong);
      await data.publishers.lock(publisher);
      const ref = { publisher, slug, revision: null };
      const [newest] = await data.revisions.summaries([ref]);
      if (!newest) return failed([await missingPlan(inside, ref, ["input", "slug"])]);
      const { revision } = newest;
      if (!(await data.revisions.withdraw({ publisher, slug, revision }, clock(), reason, "NOTHING")))
        throw new Error(`revision ${newest.id} was in force and is not`);
      return ok({
        value: { publisher, slug, revision },
        subject: { kind: "PLAN", name: slug, before: revision, after: null },
      });
    },
  );
}
