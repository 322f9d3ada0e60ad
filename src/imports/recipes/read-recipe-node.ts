import type { Path, Problem } from "../../domain/problem.js";
import type { RecipeNode } from "./find-recipe-nodes.js";
import { isoDurationMinutes } from "./iso-duration.js";
import { isNode, listOf, textOf } from "./node-text.js";
import { readSteps, readTexts } from "./read-steps.js";
import { readRecipeYield } from "./recipe-yield.js";
import type { WebRecipe } from "./web-recipe.js";
import { readOrNull } from "../../domain/read-or-null.js";

/** The most ingredients, and the most steps, of one recipe that are read. */
const mostLines = 500;

function urlOf(value: unknown): string | null {
  for (const each of listOf(value)) {
    const text: unknown = isNode(each) ? each["@id"] : each;
    if (typeof text !== "string" || !URL.canParse(text)) continue;
    const { protocol } = new URL(text);
    if (protocol === "https:" || protocol === "http:") return text;
  }
  return null;
}

/** Reads one recipe. null, with the reason, where it has no name or nothing in it: then there is nothing to keep. */
export function readRecipeNode({ node, path }: RecipeNode): {
  readonly recipe: WebRecipe | null;
  readonly faults: readonly Problem[];
} {
  const faults: Problem[] = [];
  const bad = (field: string, expected: string, got: string): void =>
    void faults.push({ code: "BAD_SHAPE", path: [...path, field], expected, got: got.slice(0, 60) });
  const unread = (inside: Path, got: string): void =>
    void faults.push({ code: "BAD_SHAPE", path: [...path, ...inside], expected: "words, or a list of them", got });
  const minutes = (field: string): number | null => {
    const written = textOf(node[field]);
    if (written === null) return null;
    const read = isoDurationMinutes(written);
    if (read === null) bad(field, "an ISO 8601 duration such as PT1H30M", `"${written}"`);
    return read;
  };
  const name = textOf(node["name"]) ?? textOf(node["headline"]);
  const fields = ["recipeIngredient", "ingredients"] as const;
  const ingredients = fields.flatMap((field) => readTexts(node[field], [field], unread));
  const steps = readSteps(node["recipeInstructions"], ["recipeInstructions"], unread);
  if (name === null) bad("name", "the recipe's name", "nothing");
  if (ingredients.length === 0) bad("recipeIngredient", "a list of ingredients", "nothing");
  for (const [field, size] of [
    ["recipeIngredient", ingredients.length],
    ["recipeInstructions", steps.length],
  ] as const) {
    if (size > mostLines)
      faults.push({ code: "TOO_LARGE", path: [...path, field], what: "entries", size, limit: mostLines });
  }
  if (name === null || ingredients.length === 0 || faults.some(({ code }) => code === "TOO_LARGE")) {
    return { recipe: null, faults };
  }
  const given = readRecipeYield(node["recipeYield"] ?? node["yield"]);
  for (const unread of given.unread) bad("recipeYield", "one number and what it counts", `"${unread}"`);
  const recipe: WebRecipe = {
    name,
    description: textOf(node["description"]),
    author: textOf(node["author"]),
    url: urlOf(node["url"]) ?? urlOf(node["mainEntityOfPage"]) ?? urlOf(node["@id"]),
    language: languageOf(node["inLanguage"]),
    prepMinutes: minutes("prepTime"),
    cookMinutes: minutes("cookTime"),
    totalMinutes: minutes("totalTime"),
    yield: given,
    ingredients,
    steps,
    path,
    faults,
  };
  return { recipe, faults };
}

function languageOf(value: unknown): string | null {
  const written = textOf(value);
  return written === null ? null : (readOrNull(() => Intl.getCanonicalLocales(written))?.[0] ?? null);
}
