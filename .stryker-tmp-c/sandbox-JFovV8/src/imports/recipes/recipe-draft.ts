// @ts-nocheck
import { stringify } from "yaml";
import type { MeasureSystem } from "../../domain/model/amount.js";
import { matchFood, type FoodMatch, type FoodNames } from "../../domain/quantity/food-name.js";
import { parseLine, type LineReason, type ParsedLine } from "../../domain/quantity/parse.js";
import { amountText } from "../documents/amount-text.js";
import type { PlainDocument } from "../documents/document-of.js";
import { measureSystemWords } from "../documents/shared-schemas.js";
import type { WebRecipe, WebStep } from "./web-recipe.js";

/** Something about a recipe that a person must say; until then the draft cannot be saved. */
export type OpenPoint =
  | {
      readonly kind: "LINE";
      readonly written: string;
      readonly reasons: readonly LineReason[];
      readonly match: FoodMatch;
    }
  | { readonly kind: "SERVINGS"; readonly written: string | null }
  | { readonly kind: "TIME" }
  | { readonly kind: "STEPS" };

export interface RecipeDraft {
  /** A plan document of one meal, with every line that was understood. */
  readonly document: PlainDocument;
  readonly open: readonly OpenPoint[];
}

export interface DraftOptions {
  /** Slug of the publisher who will own it. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
  /** BCP 47 tag where the recipe does not name its own. */
  readonly locale: string;
  readonly measures: MeasureSystem;
  readonly region: string | null;
  readonly foods: FoodNames;
}

/** Lines read with less than this share of certainty are left to a person. */
export const surestEnough = 0.8;

/** The most characters of one step of a document. */
const longestStep = 4000;

/**
 * Turns a recipe of the web into a draft: every ingredient goes through the line reader and the names of the catalogue.
 * What is not certain is not guessed: it becomes an open point, and is left out of the document.
 */
export function recipeDraft(recipe: WebRecipe, options: DraftOptions): RecipeDraft {
  const locale = recipe.language ?? options.locale;
  const language = locale.slice(0, 2).toLowerCase();
  const read = recipe.ingredients.map((written) => {
    const line = parseLine(written, { locale, measures: options.measures });
    const match = matchFood(options.foods, line.food, language, options.region);
    return { written, line, match };
  });
  const lines = read.flatMap(({ line, match }) =>
    isSure(line) && match.kind === "FOUND" ? [lineOf(line, match.slug)] : [],
  );
  const open = read
    .filter(({ line, match }) => !isSure(line) || match.kind !== "FOUND")
    .map(({ written, line, match }): OpenPoint => ({ kind: "LINE", written, reasons: line.reasons, match }));
  const { servings, yields } = recipe.yield;
  const serves = servings !== null && servings.from === servings.to ? servings.from : null;
  const minutes = recipe.totalMinutes ?? sum(recipe.prepMinutes, recipe.cookMinutes);
  const document: PlainDocument = {
    kind: "plan",
    publisher: options.publisher,
    slug: options.slug,
    title: recipe.name.slice(0, 200),
    ...(recipe.description === null ? {} : { summary: recipe.description.slice(0, longestStep) }),
    locale: documentLocale(locale) ?? options.locale,
    "measured-in": measureSystemWords[options.measures],
    ...(serves === null ? {} : { serves }),
    meals: [
      {
        slug: options.slug,
        title: recipe.name.slice(0, 200),
        day: 0,
        lines,
        ...(recipe.steps.length === 0 ? {} : { steps: stepsOf(recipe.steps, minutes) }),
      },
    ],
  };
  return {
    document,
    open: [
      ...open,
      ...(serves === null ? [{ kind: "SERVINGS", written: yields[0]?.written ?? null } as const] : []),
      ...(minutes === null && recipe.steps.length > 0 ? [{ kind: "TIME" } as const] : []),
      ...(recipe.steps.length === 0 ? [{ kind: "STEPS" } as const] : []),
    ],
  };
}

/** The draft as a text to mend: what is open stands in front as comments, in plain words given by the caller. */
export function recipeDraftText({ document, open }: RecipeDraft, words: (point: OpenPoint) => string): string {
  const notes = open.map((point) => `# - ${words(point).replace(/\s+/g, " ")}\n`).join("");
  const head = notes === "" ? "" : `# Still to be settled; then save this document:\n${notes}`;
  return head + stringify(document, { lineWidth: 120 });
}

const isSure = (line: ParsedLine): boolean =>
  line.confidence >= surestEnough && line.noAmount !== "UNCLEAR" && line.noAmount !== "UNSTATED";

function lineOf(line: ParsedLine, food: string): PlainDocument {
  // A pack of another shop has another size: what the recipe means is the whole content.
  const amount = line.pack?.net ?? line.amount;
  return {
    food,
    ...(line.part === null ? {} : { part: line.part }),
    ...(amount === null ? { rule: "to taste" } : { amount: amountText(amount) }),
    written: line.raw,
    ...(line.form === null ? {} : { form: line.form }),
    ...(line.preparation === null ? {} : { preparation: line.preparation }),
    ...(line.modifiers.includes("PLUS_MORE") && amount !== null ? { "plus-more": "yes" } : {}),
    ...(line.modifiers.includes("OPTIONAL") ? { optional: "yes" } : {}),
  };
}

/** A page says how long the whole takes and nothing of its steps: the first carries it all, the others none of their own. */
const stepsOf = (steps: readonly WebStep[], minutes: number | null): readonly PlainDocument[] =>
  steps.map(({ section, text }, at) => ({
    do: (section === null ? text : `${section}: ${text}`).slice(0, longestStep),
    ...(at > 0 ? { time: "0 min" } : minutes === null ? {} : { time: `${String(minutes)} min` }),
  }));

const sum = (one: number | null, other: number | null): number | null =>
  one === null && other === null ? null : (one ?? 0) + (other ?? 0);

const documentLocale = (locale: string): string | null => /^[a-z]{2,3}(-[A-Z]{2})?/.exec(locale)?.[0] ?? null;
