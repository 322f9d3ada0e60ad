import { failed, type Result } from "../../domain/problem.js";
import type { Caller } from "../access/actor.js";
import type { Deps } from "../deps.js";
import { checkNote } from "../drafts/check/check-note.js";
import { freezeDraft, type PublishedDraft, type PublishInput } from "./publish-draft.js";
import { write } from "../write.js";

interface CorrectInput extends PublishInput {
  /** What readers of the revision before should know: what was wrong, and what is right. */
  readonly changeNote: string;
}

/** Publishes the draft of a plan that is published already, with a note that readers see as long as the revision stands. */
export async function correctPlan(deps: Deps, caller: Caller, input: CorrectInput): Promise<Result<PublishedDraft>> {
  const { publisher, slug, expectedVersion, changeNote, idempotencyKey } = input;
  return write(
    deps,
    {
      caller,
      scope: "PUBLISH",
      publisher,
      action: "CORRECT_PLAN",
      idempotencyKey,
      input: { slug, expectedVersion, changeNote },
    },
    async (inside) => {
      const wrong = checkNote(changeNote, ["input", "changeNote"]);
      if (wrong.length > 0) return failed(wrong);
      const { items } = await inside.data.revisions.ofPlan({ publisher, slug }, onlyTheNewest);
      if (items.length === 0) {
        return failed([{ code: "UNKNOWN_PLAN", path: ["input", "slug"], publisher, plan: slug, revision: null }]);
      }
      const frozen = await freezeDraft(inside, caller.actor, input, changeNote, "REFUSED");
      if (!frozen.ok || frozen.value.value.created) return frozen;
      const { revision } = frozen.value.value;
      return failed([{ code: "NOTHING_CHANGED", path: ["input", "slug"], revision }]);
    },
  );
}

const onlyTheNewest = { first: 1, after: null, last: null, before: null };
