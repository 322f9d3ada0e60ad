import { failed, ok, type Result } from "../../../domain/problem.js";
import type { Caller } from "../../access/actor.js";
import type { Deps } from "../../deps.js";
import type { FeedName } from "./save-feed.js";
import { write } from "../../write.js";

/**
 * Removes a feed with its files, its runs and what they put aside; of a price list also the packs it lists. Drafts and foods that
 * it brought stay.
 * @throws NotAllowed
 */
export async function removeFeed(
  deps: Deps,
  caller: Caller,
  { publisher, slug, idempotencyKey }: FeedName & { readonly idempotencyKey?: string | null | undefined },
): Promise<Result<FeedName>> {
  return write(
    deps,
    { caller, scope: "IMPORT", publisher, action: "REMOVE_FEED", idempotencyKey, input: { slug } },
    async ({ data }) => {
      const feed = await data.feeds.find(publisher, slug);
      if (feed === null) return failed([{ code: "UNKNOWN_FEED", path: ["input", "slug"], feed: slug }]);
      if (await data.importRuns.isActive(feed.id)) {
        return failed([{ code: "IMPORT_GOING_ON", path: ["input", "slug"], feed: slug }]);
      }
      await data.feeds.remove(feed.id);
      return ok({ value: { publisher, slug }, subject: { kind: "FEED", name: slug, before: null, after: null } });
    },
  );
}
