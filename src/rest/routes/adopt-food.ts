import { z } from "zod";
import { named, text } from "../../exports/json/named-schema.js";
import { parseWithSchema } from "../../services/drafts/parse-with-schema.js";
import type { OneSaved } from "../../services/drafts/save-draft.js";
import { requireScope } from "../../services/access/actor.js";
import { adoptFood } from "../../services/foods/adopt-food.js";
import { asJson, endpoint, found, refused } from "../endpoint.js";
import { inPath } from "../parameter.js";
import { notProcessable } from "../refusal.js";

const question = named(
  "FoodToAdopt",
  "A row of the open food table, and what its food is to be called.",
  z.strictObject({
    ndbNo: z.string().max(200).describe("Its number in the open food table, five digits."),
    slug: z.string().max(200).optional().describe("Slug of the new food. Default: made from the name."),
    name: z.string().max(400).optional().describe("Its name in English. Default: the description of the table."),
    idempotencyKey: z
      .string()
      .max(400)
      .optional()
      .describe("The same key with the same body gives the first answer again, and changes nothing."),
  }),
);

const savedDraft = named(
  "SavedDraft",
  "A draft that was saved.",
  z.object({
    kind: z.enum(["COMPONENT", "FOOD", "PACKS", "PLAN", "TRANSLATION"]).describe("What it is a draft of."),
    slug: text("Its slug.", 200),
    version: z.number().int().min(1).describe("Its version, to be sent with the next change."),
    publisher: text("Slug of its publisher.", 200),
  }),
);

export const adoptFoodEndpoint = endpoint(
  {
    method: "POST",
    path: "/v1/publishers/{publisher}/foods/adopt",
    operationId: "adoptFood",
    tag: "catalogue",
    summary: "Adopt a row of the open food table",
    description:
      "Saves the row as a draft of the publisher's own food, to be completed. It inherits its nutrients and measures from the row, which says nothing of allergens: the food counts as free from none.",
    parameters: [inPath("publisher", "Slug of the publisher.")],
    body: question,
    scope: "WRITE",
    refusals: ["not-processable"],
    caching: "NEVER",
  },
  async ({ deps, caller, path: { publisher = "" }, body }) => {
    // Before the body is looked at: whoever may not write is not told what is wrong with it.
    requireScope(caller.actor, "WRITE", publisher);
    const read = parseWithSchema(question, body);
    if (!read.ok) return refused(notProcessable(read.problems));
    const saved = await adoptFood(deps, caller, { publisher, ...read.value });
    if (saved.ok) return found(saved.value);
    // What GraphQL calls its input is the body here.
    const problems = saved.problems.map((problem) => ({
      ...problem,
      path: problem.path[0] === "input" ? problem.path.slice(1) : problem.path,
    }));
    return refused(notProcessable(problems));
  },
  [
    asJson(savedDraft, "The draft.", ({ kind, slug, version, publisher }: OneSaved) => ({
      ...{ kind, slug, version, publisher },
    })),
  ],
);
