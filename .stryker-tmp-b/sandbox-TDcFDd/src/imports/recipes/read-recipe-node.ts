// @ts-nocheck
import type { Problem } from "../../domain/problem.js";
import type { RecipeNode } from "./find-recipe-nodes.js";
import { isoDurationMinutes } from "./iso-duration.js";
import { plainWords } from "./plain-words.js";
import { readRecipeYield } from "./recipe-yield.js";
import type { WebRecipe, WebStep } from "./web-recipe.js";

/** The most ingredients, and the most steps, of one recipe that are read. */
export const mostLines = 500;

type Node = Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null && !Array.isArray(value);

const listOf = (value: unknown): readonly unknown[] =>
  value === undefined || value === null ? [] : Array.isArray(value) ? value : [value];

/** The first text a property holds: itself, its `@value`, its `name`, or the first of several. */
function textOf(value: unknown): string | null {
  for (const each of listOf(value)) {
    if (typeof each === "string" || typeof each === "number") {
      const words = plainWords(String(each));
      if (words !== "") return words;
    }
    if (isNode(each)) {
      const inner: unknown = each["@value"] ?? each["name"] ?? each["text"];
      const words = typeof inner === "string" ? plainWords(inner) : "";
      if (words !== "") return words;
    }
  }
  return null;
}

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
  const minutes = (field: string): number | null => {
    const written = textOf(node[field]);
    if (written === null) return null;
    const read = isoDurationMinutes(written);
    if (read === null) bad(field, "an ISO 8601 duration such as PT1H30M", `"${written}"`);
    return read;
  };
  const name = textOf(node["name"]) ?? textOf(node["headline"]);
  const ingredients = (["recipeIngredient", "ingredients"] as const)
    .flatMap((field) => listOf(node[field]))
    .flatMap((each) => textOf(each) ?? []);
  const steps = stepsOf(node["recipeInstructions"]);
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
  if (written === null) return null;
  try {
    return Intl.getCanonicalLocales(written)[0] ?? null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Steps in order, through sections and lists, at most four levels deep. A text of several lines is several steps. */
function stepsOf(value: unknown, section: string | null = null, depth = 0): readonly WebStep[] {
  if (depth > 4) return [];
  return listOf(value).flatMap((each): readonly WebStep[] => {
    if (typeof each === "string") {
      return each
        .split(/(?:\r?\n)+|<\/(?:p|li)>/i)
        .map(plainWords)
        .filter((text) => text !== "")
        .map((text) => ({ section, text }));
    }
    if (!isNode(each)) return [];
    const inside: unknown = each["itemListElement"] ?? each["steps"];
    if (inside !== undefined) {
      const title = isSection(each) ? textOf(each["name"]) : null;
      return stepsOf(inside, title ?? section, depth + 1);
    }
    const item: unknown = each["item"];
    if (isNode(item)) return stepsOf(item, section, depth + 1);
    const text = textOf(each["text"]) ?? textOf(each["name"]) ?? textOf(each["description"]);
    return text === null ? [] : [{ section, text }];
  });
}

const isSection = (node: Node): boolean => listOf(node["@type"]).some((type) => String(type).endsWith("HowToSection"));
