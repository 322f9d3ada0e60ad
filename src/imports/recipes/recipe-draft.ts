import { stringify } from "yaml";
import type { MeasureSystem } from "../../domain/model/amount.js";
import type { FoodMatch, FoodNames } from "../../domain/quantity/food-name.js";
import type { LineReason } from "../../domain/quantity/parse.js";
import { readLine } from "../../domain/quantity/read-line.js";
import type { PlainDocument } from "../documents/plain-document.js";
import { measureSystemWords } from "../documents/schemas/shared-schemas.js";
import { lineDocument } from "../documents/lines/line-document.js";
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

interface RecipeDraft {
  /** A plan document of one meal, with every line that was understood. */
  readonly document: PlainDocument;
  readonly open: readonly OpenPoint[];
}

export interface DraftOptions {
  /** Slug of the publisher who will own it. */
  readonly publisher: string;
  /** Slug of the plan. */
  readonly slug: string;
  /** Where another recipe beside it has the same name; left out: its name. */
  readonly title?: string;
  /** BCP 47 tag where the recipe does not name its own. */
  readonly locale: string;
  readonly measures: MeasureSystem;
  readonly region: string | null;
  readonly foods: FoodNames;
}

/** The most characters of one step of a document. */
const longestStep = 4000;

/**
 * Turns a recipe of the web into a draft: every ingredient goes through the line reader and the names of the catalogue.
 * What is not certain is not guessed: it becomes an open point, and is left out of the document.
 */
export function recipeDraft(recipe: WebRecipe, options: DraftOptions): RecipeDraft {
  const locale = recipe.language ?? options.locale;
  const { measures, region, foods } = options;
  const read = recipe.ingredients.map((written) => ({
    written,
    ...readLine(written, { locale, measures, region, foods }),
  }));
  const lines = read.flatMap(({ written, taken }) => (taken === null ? [] : [lineDocument(written, taken)]));
  const open = read.flatMap(({ written, taken, reasons, match }): readonly OpenPoint[] =>
    taken === null ? [{ kind: "LINE", written, reasons, match }] : [],
  );
  const { servings, yields } = recipe.yield;
  const serves = servings !== null && servings.from === servings.to ? servings.from : null;
  const minutes = recipe.totalMinutes ?? sum(recipe.prepMinutes, recipe.cookMinutes);
  const title = options.title ?? recipeTitle(recipe.name);
  const document: PlainDocument = {
    kind: "plan",
    publisher: options.publisher,
    slug: options.slug,
    title,
    ...(recipe.description === null ? {} : { summary: shortened(recipe.description, longestStep) }),
    locale: documentLocale(locale) ?? options.locale,
    "measured-in": measureSystemWords[options.measures],
    ...(serves === null ? {} : { serves }),
    meals: [
      {
        slug: options.slug,
        title,
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

/** The most characters of a title, and room for a number behind it. */
const longestTitle = 200;
const roomForNumber = 10;

/** What the plan of a recipe is called; of several of that name with a number from 2. */
export const recipeTitle = (name: string, number = 1): string =>
  number === 1 ? shortened(name, longestTitle) : `${recipeTitleStem(name)} (${String(number)})`;

/** What stands before the number. */
export const recipeTitleStem = (name: string): string => shortened(name, longestTitle - roomForNumber);

/** A text of so many characters at most, which ends with a whole word; never half a character. */
function shortened(text: string, longest: number): string {
  if (text.length <= longest) return text;
  const cut = text.slice(0, longest - 1).replace(/[\ud800-\udbff]$/, "");
  const words = cut.replace(/\s+\S*$/u, "");
  return `${words === "" ? cut : words}…`;
}

/** A long step goes on in a next one: whatever were cut off might be the boiling. */
function* partsOf(text: string): Generator<string> {
  for (let rest = text; rest !== "";) {
    const end = rest.length <= longestStep ? rest.length : rest.lastIndexOf(" ", longestStep);
    const at = end > 0 ? end : longestStep - Number(/[\ud800-\udbff]/.test(rest[longestStep - 1] ?? ""));
    yield rest.slice(0, at);
    rest = rest.slice(at).trimStart();
  }
}

/** A page says how long the whole takes and nothing of its steps: the first carries it all, the others none of their own. */
const stepsOf = (steps: readonly WebStep[], minutes: number | null): readonly PlainDocument[] =>
  steps
    .flatMap(({ section, text }) => [...partsOf(section === null ? text : `${section}: ${text}`)])
    .map((text, at) => ({
      do: text,
      ...(at > 0 ? { time: "0 min" } : minutes === null ? {} : { time: `${String(minutes)} min` }),
    }));

const sum = (one: number | null, other: number | null): number | null =>
  one === null && other === null ? null : (one ?? 0) + (other ?? 0);

const documentLocale = (locale: string): string | null => /^[a-z]{2,3}(-[A-Z]{2})?/.exec(locale)?.[0] ?? null;
