import { z } from "zod";
import { instant, list, named, slug, text } from "./named-schema.js";
import { pageSchema } from "./page-schema.js";

const shape = {
  id: text("Its id, to take it back by.", 60),
  publisher: slug("Slug of the publisher."),
  slug: slug("Slug of the plan."),
  createdAt: instant("When it was made."),
  expiresAt: instant("When it ends."),
  revokedAt: instant("When it was taken back. Null if it was not.").nullable(),
};

export const previewLinkSchema = named(
  "PreviewLink",
  "Shows the draft of a plan to whoever has its address.",
  z.object(shape),
);

export const madePreviewLinkSchema = named(
  "MadePreviewLink",
  "A preview link, with the address that is shown this once.",
  z.object({
    ...shape,
    address: text(
      "Address of the page; `/list` after it is the shopping list. Whoever has it sees the draft. Null if this answer is given again because of its idempotency key.",
    ).nullable(),
  }),
);

export const previewLinkPageSchema = pageSchema(
  "PreviewLinkPage",
  "A page of preview links, newest first.",
  list(previewLinkSchema, "Those that have ended too; never their addresses.").max(100),
);
