import { z } from "zod";
import { allergenCodes } from "../domain/nutrition/allergen-codes.js";
import { listedNutrients } from "../domain/plan/listing/listed-facts.js";
import type { Problem } from "../domain/problem.js";
import { nutrientLimitNames, namedNutrientLimits } from "../services/plans/listing/named-nutrients.js";
import { planFilterCost } from "../services/plans/listing/plan-filter-cost.js";
import type { WantedPlans } from "../services/plans/listing/wanted-plans.js";
import type { PlanOrder } from "../services/deps.js";
import { badParameter, inQuery, listed, one, type Parameter, type Query } from "./parameter.js";

/** `minProteinGrams` is `min-protein-grams`. */
const kebab = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Parts of a filter whose parameter is called otherwise: one that repeats is named for one of its values. */
const singular: Readonly<Record<string, string>> = {
  diets: "diet",
  withoutAllergens: "without-allergen",
  foodsAtHand: "food-at-hand",
  tags: "tag",
  withoutAppliances: "without-appliance",
  nutrients: "min-nutrient",
  orderBy: "order",
};

/** The parameter of a part of the filter. */
export const parameterOf = (name: string): string => singular[name] ?? kebab(name);

const orders: Readonly<Record<string, PlanOrder>> = {
  newest: "NEWEST",
  "first-published": "FIRST_PUBLISHED",
  "shortest-session": "SHORTEST_SESSION",
  "least-hands-on": "LEAST_HANDS_ON",
};

const parts = ["facts", "count", "facets"] as const;
type ListPart = (typeof parts)[number];

const figure = z.number().min(0).max(1_000_000);
const word = z.string().min(1).max(200);
const repeats = { repeats: true } as const;
const limitText = z
  .string()
  .regex(/^[a-zA-Z]+:\d+(\.\d+)?$/)
  .max(60);

/** Those of 0.1.0. */
export const releasedParameters: readonly Parameter[] = [
  inQuery("publisher", "Slug of a publisher."),
  inQuery("search", "Words of the title, in any case. Also of introductions, meals, components, tags and foods."),
  inQuery("uses-food", "Slug of a food that the plan uses."),
  inQuery("uses-component", "Slug of a component that the plan uses."),
];

export const planSearchParameters: readonly Parameter[] = [
  inQuery("diet", "A diet that the plan is known to keep.", word, { ...repeats, example: "vegan" }),
  inQuery(
    "without-allergen",
    "An allergen that no ingredient has and of which no food may have traces. Only where every food says so of its ingredients; `include=facts` shows what is known of traces.",
    z.enum(allergenCodes),
    { ...repeats, example: "milk" },
  ),
  inQuery("region", "ISO 3166 code of where the reader is. Default: where each plan is for.", word, { example: "DE" }),
  inQuery("max-session-minutes", "Minutes of the longest session, at most.", figure),
  inQuery("max-hands-on-minutes", "Minutes of hands in all sessions, at most.", figure),
  inQuery("max-foods-to-buy", "The shopping list has at most so many foods.", figure),
  inQuery("without-appliance", "An appliance that no step of the plan needs.", word, {
    ...repeats,
    example: "oven-shelf",
  }),
  inQuery(
    "max-cost-per-serving",
    "What a serving costs at most: an amount and an ISO 4217 code. Only where the price of every food is known.",
    z.string().max(40),
    { example: "4.50 EUR" },
  ),
  ...nutrientLimitNames.map((name) => {
    const { nutrient, end } = namedNutrientLimits[name];
    const most = end === "min" ? "at least, where that is certain" : "at most, where it is known of every food";
    return inQuery(kebab(name), `\`${nutrient}\` of a serving, in all meals together: ${most}.`, figure);
  }),
  inQuery("min-nutrient", "A nutrient and how much of it a serving has at least.", limitText, {
    ...repeats,
    example: "calciumMg:300",
  }),
  inQuery("max-nutrient", "A nutrient and how much of it a serving has at most.", limitText, {
    ...repeats,
    example: "fatG:40",
  }),
  inQuery("uses-any-of", "A food of which the plan uses at least one: slug or name.", word, {
    ...repeats,
    example: "chickpeas",
  }),
  inQuery("uses-all-of", "A food that the plan uses: slug or name.", word, { ...repeats, example: "lemon" }),
  inQuery("food-at-hand", "A food that is at hand: slug or name. Plans that need the least beside come first.", word, {
    ...repeats,
    example: "carrot",
  }),
  inQuery("language", "BCP 47 tag of a language that the plan can be read in.", word, { example: "de" }),
  inQuery("tag", "A tag of the plan, in any case.", word, repeats),
  inQuery(
    "published-after",
    "Its newest revision was published after this instant.",
    z.string().max(40).meta({ format: "date-time" }),
    {
      example: "2026-01-01T00:00:00Z",
    },
  ),
  inQuery(
    "order",
    "The order of the list; newest unless told, or by what is at hand.",
    z.enum(Object.keys(orders) as [string, ...string[]]),
  ),
  inQuery(
    "include",
    `What is told beside, with commas between: ${parts.join(", ")}. Facts of each plan, how many there are, and of how many kinds.`,
    z.string().max(200),
    { ...repeats, example: "facts,count" },
  ),
];

const partsIn = (query: Query): readonly string[] => [...new Set(listed(query, "include", parts.length))];

interface PlanListQuery {
  readonly filter: WantedPlans;
  readonly orderBy: PlanOrder | null;
  readonly include: ReadonlySet<ListPart>;
}

/** Reads the filter; what is no number, instant or word of a list is noted. */
export function planListQuery(query: Query, problems: Problem[]): PlanListQuery {
  const number = (name: string): number | null => {
    const value = one(query, name);
    if (value === null) return null;
    if (/^\d{1,7}(\.\d{1,6})?$/.test(value)) return Number(value);
    problems.push(badParameter(name, "a number, such as 45", value));
    return null;
  };
  const order = one(query, "order");
  if (order !== null && !Object.hasOwn(orders, order))
    problems.push(badParameter("order", `one of ${Object.keys(orders).join(", ")}`, order));
  const include = partsIn(query);
  for (const each of include)
    if (!(parts as readonly string[]).includes(each))
      problems.push(badParameter("include", `one of ${parts.join(", ")}`, each));
  const filter: WantedPlans = {
    ...Object.fromEntries(
      ["publisher", "search", "usesFood", "usesComponent", "region", "language"].map((name) => [
        name,
        one(query, kebab(name)),
      ]),
    ),
    ...Object.fromEntries(
      (
        ["diets", "withoutAllergens", "withoutAppliances", "usesAnyOf", "usesAllOf", "foodsAtHand", "tags"] as const
      ).map((name) => [name, query.get(parameterOf(name)) ?? []]),
    ),
    ...Object.fromEntries(
      ["maxSessionMinutes", "maxHandsOnMinutes", "maxFoodsToBuy", ...nutrientLimitNames].map((name) => [
        name,
        number(kebab(name)),
      ]),
    ),
    maxCostPerServing: cost(query, problems),
    nutrients: [...nutrients(query, "min", problems), ...nutrients(query, "max", problems)],
    publishedAfter: instant(query, problems),
  };
  return { filter, orderBy: orders[order ?? ""] ?? null, include: new Set(include as readonly ListPart[]) };
}

function cost(query: Query, problems: Problem[]): WantedPlans["maxCostPerServing"] {
  const value = one(query, "max-cost-per-serving");
  if (value === null) return null;
  const [, amount, currency] = /^(\S{1,20}) +(\S{1,20})$/.exec(value) ?? [];
  if (amount !== undefined && currency !== undefined) return { amount, currency };
  problems.push(badParameter("max-cost-per-serving", "an amount and a currency, such as 4.50 EUR", value));
  return null;
}

function nutrients(query: Query, end: "min" | "max", problems: Problem[]): NonNullable<WantedPlans["nutrients"]> {
  const name = `${end}-nutrient`;
  return (query.get(name) ?? []).flatMap((value) => {
    const [, code = "", amount] = /^([a-zA-Z]{1,30}):(\d{1,7}(?:\.\d{1,6})?)$/.exec(value) ?? [];
    const nutrient = listedNutrients.find((each) => each === code);
    if (nutrient !== undefined) return [{ nutrient, [end]: Number(amount) }];
    problems.push(
      badParameter(
        name,
        `a nutrient and an amount, such as calciumMg:300; nutrients are ${listedNutrients.join(", ")}`,
        value,
      ),
    );
    return [];
  });
}

function instant(query: Query, problems: Problem[]): Date | null {
  const value = one(query, "published-after");
  if (value === null) return null;
  const read = z.iso.datetime({ offset: true }).safeParse(value);
  if (read.success && !Number.isNaN(Date.parse(value))) return new Date(value);
  problems.push(badParameter("published-after", "an instant such as 2026-01-01T00:00:00Z", value));
  return null;
}

/** Points of what is told beside the page. */
const pointsOfPart: Readonly<Record<string, number>> = { facets: 300, count: 50 };

/** What a filter and what is told beside the page cost, as over GraphQL. */
export const pointsOfPlanList = (query: Query): number =>
  planFilterCost(planListQuery(query, []).filter) +
  partsIn(query).reduce((sum, part) => sum + (pointsOfPart[part] ?? 0), 0);
