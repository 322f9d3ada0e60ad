import { z } from "zod";
import { mostRows } from "../../domain/plan/servings-table.js";
import type { Problem } from "../../domain/problem.js";
import type { StorageAnswer } from "../../domain/storage/guidance.js";
import { answerList, answerServings, answerSession, answerStorage } from "../../services/answers/answer-part.js";
import type { ListsAnswer } from "../../services/answers/answer-lists.js";
import { listAnswerJsonInSlices, listAnswerSchema } from "../../exports/json/shopping-list.js";
import { servingsTableJson, servingsTableSchema } from "../../exports/json/plan-parts.js";
import { sessionAnswerJson, sessionAnswerSchema } from "../../exports/json/session-answer.js";
import { storageJsonInSlices, storageSchema } from "../../exports/json/storage.js";
import { thingsOf } from "../../exports/json/named-thing.js";
import { shoppingCsvInSlices } from "../../exports/csv/shopping-csv.js";
import { shoppingMarkdownInSlices } from "../../exports/document/shopping-markdown.js";
import { householdCost } from "../../services/answers/household-cost.js";
import type { ScaledForReader } from "../../services/answers/scale-for-reader.js";
import { asJson, asText, endpoint, found, refused } from "../endpoint.js";
import { householdParameters, readHouseholdQuery } from "../household-query.js";
import { pointsBeyond, pointsOfRow } from "../endpoint-cost.js";
import { noSession } from "../no-session.js";
import { inQuery, wholeNumber, type Query } from "../parameter.js";
import {
  aboutPlan,
  allWrong,
  answered,
  planName,
  planParameters,
  planInPath,
  revisionParameter,
  pointsOfPlans,
} from "../plan-request.js";
import { storageIn } from "../../exports/sentences/rules-in-language.js";
import { wordsFor } from "../../exports/words/words-for.js";

const planTag = { method: "GET", tag: "plans", refusals: ["not-found", "withdrawn"], caching: "LIVE" } as const;

const listInput = ({ plans, list, reader }: ListsAnswer) => ({
  list,
  plans: plans.map(({ bundle }) => bundle),
  reader,
  servings: plans.length === 1 ? (plans[0]?.servings ?? null) : null,
});

/** A list in each of its forms; the same for one plan and for several. */
export const listWriters = [
  asJson(listAnswerSchema, "The list.", listAnswerJsonInSlices),
  asText("markdown", "As Markdown, with boxes to tick.", (answer: ListsAnswer) =>
    shoppingMarkdownInSlices(listInput(answer)),
  ),
  asText("csv", "As a table (RFC 4180).", ({ plans, list, reader }: ListsAnswer) =>
    shoppingCsvInSlices(list, reader, plans.length > 1, "STANDARD"),
  ),
];

export const listEndpoint = endpoint(
  {
    ...planTag,
    path: "/v1/plans/{publisher}/{slug}/list",
    operationId: "getShoppingList",
    summary: "What to buy for a plan",
    description:
      "One line for each food, with the packs that cost least where prices are known, and what is left over.",
    points: ({ query }) => pointsOfPlans(1, query),
    parameters: planParameters,
  },
  (question) => aboutPlan(question, answerList),
  listWriters,
);

export const sessionEndpoint = endpoint(
  {
    ...planTag,
    path: "/v1/plans/{publisher}/{slug}/session",
    operationId: "getSession",
    summary: "The order of the prep session",
    description:
      "Tasks in the least time for the hands and the places of the household, and how sure it is that none is shorter." +
      " Where all of it is more than a day's work or fits no order, `sessions` divides it over several days; where nothing does," +
      " the answer is a problem of the kind `no-session`, which says what stands in the way.",
    points: ({ query }) => pointsOfPlans(1, query),
    parameters: planParameters,
    refusals: ["not-found", "withdrawn", "no-session"],
  },
  async (question) => {
    const answer = await aboutPlan(question, answerSession);
    if (!answer.ok) return answer;
    const { scaled, household, reader, whole, days } = answer.value;
    const [first, ...later] = days;
    if (first === undefined) return refused(noSession(whole.ok ? [] : whole.problems, scaled));
    return found({ scaled, household, reader, whole, days: [first, ...later] as const });
  },
  [asJson(sessionAnswerSchema, "The session, or several.", sessionAnswerJson)],
);

export const storageEndpoint = endpoint(
  {
    ...planTag,
    path: "/v1/plans/{publisher}/{slug}/storage",
    operationId: "getStorage",
    summary: "How long everything keeps, and on whose authority",
    description: "The writer's word and the published rule side by side; the stricter stands.",
    points: ({ query }) => pointsOfPlans(1, query),
    parameters: planParameters,
  },
  (question) => aboutPlan(question, answerStorage),
  [
    asJson(
      storageSchema,
      "How long everything keeps.",
      ({ storage, scaled, reader }: ScaledForReader & { readonly storage: StorageAnswer }) =>
        storageJsonInSlices(storageIn(storage, wordsFor(reader.locale)), thingsOf(scaled.bundle, reader)),
    ),
  ],
);

const rowsAsked = (query: Query, problems: Problem[]) => ({
  from: wholeNumber(query, "from", problems) ?? 1,
  to: wholeNumber(query, "to", problems) ?? 12,
});

const servings = z.number().int().min(1).max(1_000_000);

export const servingsTableEndpoint = endpoint(
  {
    ...planTag,
    path: "/v1/plans/{publisher}/{slug}/servings-table",
    operationId: "getServingsTable",
    summary: "What a plan costs and leaves over at each number of servings",
    description: "To find a number at which packs and batches come out even.",
    points: ({ query }) => {
      const { from, to } = rowsAsked(query, []);
      const rows = Math.max(1, Math.min(to - from + 1, mostRows));
      return pointsBeyond(rows, pointsOfRow + householdCost(readHouseholdQuery(query).household));
    },
    parameters: [
      ...planInPath,
      inQuery("from", "The first number of servings. 1 if left out.", servings),
      inQuery("to", `The last; at most ${mostRows} rows. 12 if left out.`, servings),
      revisionParameter,
      // Who eats adds up to one number of servings, and a table has many.
      ...householdParameters.filter(({ name }) => name !== "eaters"),
    ],
  },
  async (question) => {
    const { deps, query } = question;
    const problems: Problem[] = [];
    const ref = { ...planName(question), revision: wholeNumber(query, "revision", problems) };
    const { from, to } = rowsAsked(query, problems);
    const read = readHouseholdQuery(query);
    problems.push(...read.problems);
    if (problems.length > 0)
      return refused(await allWrong(deps, ref, { servings: null, household: read.household }, problems));
    return answered(deps, ref, await answerServings(deps, ref, { from, to, household: read.household }));
  },
  [asJson(servingsTableSchema, "The table.", servingsTableJson)],
);
