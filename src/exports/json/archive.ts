import { z } from "zod";
import { count, named, slug, text } from "./named-schema.js";

export const importedPublisherSchema = named(
  "ImportedPublisher",
  "What came in with an archive, or would in a dry run.",
  z.object({
    publisher: slug("Slug of the publisher."),
    drafts: count("Drafts of plans, components, foods and packs."),
    plans: count("Plans that were published at least once."),
    revisions: count("Revisions of these plans."),
    images: count("Pictures, without removed ones."),
    webhooks: count(
      "Webhooks. They are disabled and have new secrets: rotate the secret, hand it on, and enable them.",
    ),
    feeds: count(
      "Feeds. They are disabled, and an address that files come from has no query: complete it, and enable them.",
    ),
    scheduled: count("Publications and withdrawals that wait for their time."),
    scheduledPassed: z
      .array(
        z.object({
          slug: slug("Slug of the plan."),
          kind: z.enum(["PUBLISH", "WITHDRAW"]).describe("What was to be done."),
          localTime: text("Date and time on the clock of the zone."),
          zone: text("IANA time zone."),
        }),
      )
      .max(1_000)
      .describe("Publications and withdrawals whose time has passed. They are not done and not imported."),
    ruleSetsMissing: z
      .array(text("Code of a rule set."))
      .max(1_000)
      .describe("Rule sets that revisions were checked against and that this installation does not have."),
  }),
);
