import { z } from "zod";
import { instant, list, named, slug, text } from "./named-schema.js";
import { pageSchema } from "./page-schema.js";

const changeSchema = named(
  "Change",
  "Something that happened to a plan.",
  z.object({
    id: text("Unique; the same in a webhook that tells of it.", 100),
    kind: z
      .enum(["PLAN_PUBLISHED", "PLAN_CORRECTED", "PLAN_WITHDRAWN", "PLAN_ANSWER_CHANGED", "PLAN_LESS_SAFE"])
      .describe(
        "A revision was published, published with a note of what it changes, or withdrawn. `PLAN_ANSWER_CHANGED`: today's rules or facts change what its readers are told. `PLAN_LESS_SAFE`: and what they were told before is less safe.",
      ),
    at: instant("When, by the clock of the service. The order of the list is that of commits."),
    plan: z
      .object({
        publisher: slug("Slug of its publisher."),
        slug: slug("Slug of the plan."),
        title: text("Its title in that revision, in the language asked for where it was translated."),
        language: text("BCP 47 tag of the language of the title.", 60),
        revision: z.number().int().min(1),
        changeNote: text("What the revision changed, in its publisher's words.").nullable(),
        withdrawnBecause: text("Why it was withdrawn, in its publisher's words.").nullable(),
        address: text("Where that revision is computed."),
      })
      .describe("The plan, in the revision it is about."),
  }),
);

export const changePageSchema = pageSchema(
  "ChangePage",
  "A page of changes, the oldest first.",
  list(changeSchema, "In the order in which they were committed."),
  {
    next: text("Address of the next page. Null if there is nothing newer yet.", 20_000).nullable(),
    end: text(
      "Keep it, and ask `after` it for what comes later. Null on an empty page: keep the one you have.",
      1_000,
    ).nullable(),
  },
);
