import { failed, ok, type Result } from "../../domain/problem.js";
import { StaleDraft } from "../../persistence/errors.js";
import type { Caller } from "../access/actor.js";
import type { Deps, DraftKind, DraftRef } from "../deps.js";
import { write } from "../write.js";

interface DiscardInput {
  readonly publisher: string;
  readonly kind: DraftKind;
  readonly slug: string;
  readonly expectedVersion: number;
  readonly idempotencyKey?: string | null | undefined;
}

type Discarded = DraftRef & {
  readonly version: number;
  /** Drafts that go on naming it. Answers that were kept for a repeated call before this was told have none. */
  readonly namedBy?: readonly { readonly kind: DraftKind; readonly slug: string }[];
};

/** The most drafts that are named as naming a discarded one. */
const mostNaming = 100;

/** Throws a draft away, with its text, and says which drafts named it. What was published stays. */
export async function discardDraft(deps: Deps, caller: Caller, input: DiscardInput): Promise<Result<Discarded>> {
  const { publisher, kind, slug, expectedVersion, idempotencyKey } = input;
  return write(
    deps,
    {
      caller,
      scope: "WRITE",
      publisher,
      action: "DISCARD_DRAFT",
      idempotencyKey,
      input: { kind, slug, expectedVersion },
    },
    async ({ data }) => {
      await data.publishers.lock(publisher);
      try {
        await data.drafts.discard({ kind, publisher, slug }, expectedVersion);
      } catch (error) {
        if (!(error instanceof StaleDraft)) throw error;
        const { expected, actual } = error;
        return failed([
          { code: "STALE_DRAFT", path: ["input", "expectedVersion"], draft: kind, slug, expected, actual },
        ]);
      }
      const namedBy = await data.drafts.naming({ kind, publisher, slug }, mostNaming);
      return ok({
        value: { publisher, kind, slug, version: expectedVersion, namedBy },
        subject: { kind: `${kind}_DRAFT`, name: slug, before: expectedVersion, after: null },
      });
    },
  );
}
