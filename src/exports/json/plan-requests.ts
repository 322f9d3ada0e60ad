import { z } from "zod";
import { day, list, named, slug } from "./named-schema.js";
import { pageSchema } from "./page-schema.js";

const planRequestsSchema = named(
  "PlanRequests",
  "How often readers asked for one plan on one day.",
  z.object({
    day: day("The day, in UTC."),
    slug: slug("Slug of the plan."),
    requests: z.number().int().min(0).describe("The number of requests."),
  }),
);

export const planRequestsPageSchema = pageSchema(
  "PlanRequestsPage",
  "A page of counted requests, the newest day first.",
  list(planRequestsSchema, "A row for each plan and day with requests.").max(100),
);
