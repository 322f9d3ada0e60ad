import { z } from "zod";
import type { Problem, Result } from "../domain/problem.js";
import { failed, ok } from "../domain/problem.js";
import { nearestWords } from "../domain/quantity/naming/nearest-words.js";
import type { Selection } from "../exports/json/brief-plan.js";
import { planSchema } from "../exports/json/plan.js";
import { badParameter, inQuery, listed, type Query } from "./parameter.js";

/** Parts of a meal that are large, and said of the whole plan too. */
const ofMeals = ["allergens", "diets", "nutrition"] as const;
/** Parts that `include` names; what else a plan has is small, and always there. */
const parts = [
  "meals",
  "components",
  "shoppingList",
  "session",
  "sessions",
  "storage",
  "allergens",
  "diets",
  "nutrition",
  "cautions",
] as const;
const included: readonly string[] = [...parts, ...ofMeals.map((part) => `meals.${part}`)];

/** Names that both may hold together. */
const mostNames = 200;

const names = z.string().max(2_000);

export const selectionParameters = [
  inQuery(
    "include",
    `Parts to answer with, with commas between them, beside what is short: ${included.join(", ")}. \`meals\` has neither allergens, diets nor nutrition of each meal; \`meals.allergens\` and the like have them, with the slug, title and day of each meal. The answer is then a \`BriefPlan\`.`,
    names,
    { repeats: true, example: "meals,shoppingList" },
  ),
  inQuery(
    "fields",
    "Members to answer with and nothing else, with dots before what is inside others and commas between them. The answer is then a `BriefPlan`. Beside `include`, both are answered.",
    names,
    { repeats: true, example: "title,meals.title,shoppingList.lines.toTake" },
  ),
];

export const selectionNames: readonly string[] = selectionParameters.map(({ name }) => name);

/** Members of what a shape holds, whether it is one or a list of them; null: it has none of its own. */
function shapeOf(schema: unknown): Readonly<Record<string, unknown>> | null {
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return shapeOf(schema.unwrap());
  if (schema instanceof z.ZodArray) return shapeOf(schema.element);
  return schema instanceof z.ZodObject ? schema.shape : null;
}

const ofPlan = shapeOf(planSchema) ?? {};
const short = Object.keys(ofPlan).filter((name) => !(parts as readonly string[]).includes(name));
const ofMeal = Object.keys(shapeOf(ofPlan["meals"]) ?? {}).filter(
  (name) => !(ofMeals as readonly string[]).includes(name),
);

/** Tells which meal it is. */
const headOfMeal = ["slug", "title", "day"] as const;

type Tree = Map<string, Tree | null>;

/** All of a member stays all of it, whatever is named inside. */
function add(tree: Tree, path: readonly string[]): void {
  const [first, ...rest] = path;
  if (first === undefined) return;
  const known = tree.get(first);
  if (known === null) return;
  if (rest.length === 0) tree.set(first, null);
  else {
    const below: Tree = known ?? new Map();
    tree.set(first, below);
    add(below, rest);
  }
}

/** Near ones are named, or all where none is near. */
const unknown = (parameter: string, written: string, known: readonly string[], before = ""): Problem => {
  const near = nearestWords(written.slice(before.length), known);
  const named = (near.length > 0 ? near : known).map((each) => before + each);
  return badParameter(parameter, near.length > 0 ? named.join(" or ") : `one of ${named.join(", ")}`, written);
};

function fieldProblem(field: string): Problem | null {
  let schema: unknown = planSchema;
  let before = "";
  for (const name of field.split(".", 20)) {
    const shape = shapeOf(schema);
    if (shape === null) return badParameter("fields", `${before.slice(0, -1)}, which has no members to name`, field);
    if (!Object.hasOwn(shape, name)) return unknown("fields", before + name, Object.keys(shape), before);
    schema = shape[name];
    before += `${name}.`;
  }
  return null;
}

/** What the address asks for of a plan; without either parameter, what is short. */
export function readSelection(query: Query): Result<Selection> {
  const [asked, fields] = [listed(query, "include", mostNames), listed(query, "fields", mostNames)];
  if (asked.length + fields.length > mostNames)
    return failed([
      badParameter("fields", `at most ${String(mostNames)} names`, `${String(asked.length + fields.length)} names`),
    ]);
  const problems = [
    ...asked.filter((part) => !included.includes(part)).map((part) => unknown("include", part, included)),
    ...fields.flatMap((field) => fieldProblem(field) ?? []),
  ];
  if (problems.length > 0) return failed(problems);
  const tree: Tree = new Map();
  if (asked.length > 0 || fields.length === 0) for (const name of short) add(tree, [name]);
  for (const part of asked) {
    if (part === "meals") for (const name of ofMeal) add(tree, ["meals", name]);
    if (part.startsWith("meals.")) for (const name of headOfMeal) add(tree, ["meals", name]);
    if (part !== "meals") add(tree, part.split("."));
  }
  for (const field of fields) add(tree, field.split("."));
  return ok(tree);
}
