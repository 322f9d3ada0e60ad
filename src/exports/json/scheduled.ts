import { z } from "zod";
import { instant, list, named, slug, text } from "./named-schema.js";
import { pageSchema } from "./page-schema.js";
import { warningSchema } from "./warning.js";

const scheduledSchema = named(
  "ScheduledChange",
  "A publication or a withdrawal of a plan at a time.",
  z.object({
    id: text("Its id.", 60),
    publisher: slug("Slug of the publisher."),
    slug: slug("Slug of the plan."),
    kind: z.enum(["PUBLISH", "WITHDRAW"]).describe("What is to be done."),
    state: z.enum(["WAITING", "DONE", "KEPT_BACK", "CANCELLED"]).describe("How it stands."),
    dueAt: instant("When it is due."),
    localTime: text("The same on the clock of `zone`.", 100),
    zone: text("IANA name of the time zone.", 100),
    version: z
      .number()
      .int()
      .nullable()
      .describe("Version of the draft that is published. Null if it is a withdrawal."),
    revision: z
      .number()
      .int()
      .nullable()
      .describe("Number of the revision that was published or withdrawn. Null if it was not carried out."),
    problems: list(warningSchema, "Why it was kept back."),
    notice: text("What to know about it, in a sentence."),
  }),
);

export const scheduledPageSchema = pageSchema(
  "ScheduledPage",
  "A page of what is scheduled, the next first.",
  list(scheduledSchema, "Publications and withdrawals.").max(100),
);
