import { z } from "zod";
import { answerLists } from "../../services/answers/answer-lists.js";
import { mostPortions } from "../../services/answers/check-portion-count.js";
import { householdCost } from "../../services/answers/household-cost.js";
import { named } from "../../exports/json/named-schema.js";
import { parseWithSchema } from "../../services/drafts/parse-with-schema.js";
import { endpoint, found, refused } from "../endpoint.js";
import { householdBody, readHouseholdBody } from "../household-body.js";
import { pointsBeyond, pointsOfPlan } from "../endpoint-cost.js";
import { notProcessable } from "../refusal.js";
import { listWriters } from "./plan-parts.js";

const slug = (description: string) => z.string().min(1).max(200).describe(description);

const questionOf = <Household extends z.ZodType>(household: Household, servings: z.ZodNumber) =>
  z.strictObject({
    plans: z
      .array(
        z.strictObject({
          publisher: slug("Slug of its publisher."),
          slug: slug("Slug of the plan."),
          revision: z
            .number()
            .int()
            .min(1)
            .max(1_000_000_000)
            .describe("Default: the newest that is not withdrawn.")
            .optional(),
          servings: servings
            .describe(
              "The number of people who eat. Default: as many as the eaters, or else as the plan is written for.",
            )
            .optional(),
        }),
      )
      .min(1)
      .max(50)
      .describe("The plans, each at its own servings."),
    household: household.optional(),
  });

const listQuestion = named(
  "ShoppingListQuestion",
  "The plans that a list is for, and the household.",
  questionOf(householdBody, z.number().int().min(1).max(1_000_000)),
);

/** How many people may eat, and what a household may hold, is said by whoever reads it, as over GraphQL. */
const readQuestion = questionOf(readHouseholdBody, z.number().int());

/** Of a body that may be anything. */
const localeOf = (body: unknown): string | undefined => {
  const asked = z.object({ household: z.object({ locale: z.string().max(60) }) }).safeParse(body);
  return asked.success ? asked.data.household.locale : undefined;
};

export const shoppingListEndpoint = endpoint(
  {
    method: "POST",
    path: "/v1/shopping-list",
    operationId: "makeShoppingList",
    tag: "shopping",
    summary: "One list for several plans",
    description: "Each plan at its own servings. Nothing of the question is stored.",
    parameters: [],
    body: listQuestion,
    refusals: [],
    caching: "NEVER",
    points: ({ body }) => {
      const { plans, household } = (body ?? {}) as { readonly plans?: unknown; readonly household?: unknown };
      const times = Array.isArray(plans) ? Math.min(plans.length, mostPortions) : 1;
      return pointsBeyond(times, pointsOfPlan + householdCost(household));
    },
  },
  async ({ deps, body }) => {
    const read = parseWithSchema(readQuestion, body);
    if (!read.ok) {
      // Nobody can read it further, so what is out of bounds is listed here too.
      const described = parseWithSchema(listQuestion, body);
      return refused(notProcessable(described.ok ? read.problems : described.problems, localeOf(body)));
    }
    const plans = read.value.plans.map(({ revision = null, servings = null, ...plan }) => ({
      ...plan,
      ...{ revision, servings },
    }));
    const answer = await answerLists(deps, plans, read.value.household ?? {});
    return answer.ok ? found(answer.value) : refused(notProcessable(answer.problems, read.value.household?.locale));
  },
  listWriters,
);
