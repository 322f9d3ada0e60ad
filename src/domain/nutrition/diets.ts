import { runToEnd, unlimitedWork, type InSlices, type Work } from "../counted-work.js";
import type { Food, FoodClaims, TracesPresence } from "../model/food.js";
import { regionCovers } from "../model/region.js";
import { usualSpelling } from "../model/code-lists.js";
import type { AllergenRules, DietBreak, DietClaim, DietRule } from "./allergen-rules.js";
import { claimsOf, type AllergenFood } from "./allergen-claims.js";
import { doubtsUnknownDiet } from "./derived-allergens.js";
import { anyIngredientInClaims, ingredientInClaims } from "./ingredient.js";
import { gravest, namesUnknownAllergen } from "./allergen-statements.js";
import { tracesInClaims, tracesOfAny } from "./allergen-traces.js";

export type DietFood = AllergenFood & Pick<Food, "diets">;

/**
 * What can be said about a dish and a diet, by what its foods are made of. `fits` null: not known, because of the foods in
 * `unknown`.
 */
export interface DietStatement {
  readonly diet: string;
  readonly name: string;
  readonly fits: boolean | null;
  /** Slugs of foods that break it. */
  readonly breaks: readonly string[];
  readonly unknown: readonly string[];
  /** Of what breaks it. Where they are not known, it fits by its ingredients alone. */
  readonly traces: TracesPresence;
  /** What the law of the region ties the claim to; the statement itself claims nothing. */
  readonly claims: readonly DietClaim[];
}

/** Whether a food fits a diet: true, false, or null where nobody knows. */
export interface DietJudge {
  (food: DietFood, diet: string): boolean | null;
  /** By which it judges. */
  readonly rules: readonly DietRule[];
}

/** Judges by what foods state of themselves, where no rules are at hand. */
export const asStated: DietJudge = Object.assign(
  (food: DietFood, diet: string): boolean | null =>
    strictest(claimsOf(food).map((claims) => statementOf(claims, diet) ?? null)),
  { rules: [] },
);

/** Judges by the rules of a region; a diet that no rule knows is never known to fit, whatever a food states. */
export function dietJudge(rules: readonly DietRule[], region: string | null): DietJudge {
  const byCode = new Map(rules.map((rule) => [rule.code, rule]));
  const judge = (food: DietFood, diet: string): boolean | null => {
    const rule = byCode.get(diet);
    return rule === undefined ? null : fitsDiet(food, rule, region, rules);
  };
  return Object.assign(judge, { rules });
}

/**
 * A dish of these foods held against a diet. A single food that is not known keeps the dish from fitting. No foods: not known.
 *
 * @param all every diet there is a rule for: what food keeps one may tell of another (vegan food has no egg), and a statement
 *   of a diet that is not among them leaves all of them open, unless it is that the food keeps it
 */
export function dietStatement(
  foods: readonly DietFood[],
  diet: DietRule,
  region: string | null,
  claims: readonly DietClaim[],
  all: readonly DietRule[],
): DietStatement {
  const codes = codesOf(breaksIn(diet, region));
  const breaking = new Set<string>();
  const open = new Set<string>();
  for (const food of foods) {
    const fits = fitsDiet(food, diet, region, all);
    if (fits !== true) (fits === false ? breaking : open).add(food.slug);
  }
  const [breaks, unknown] = [[...breaking], [...open]];
  return {
    diet: diet.code,
    name: diet.name,
    fits: breaks.length > 0 ? false : unknown.length > 0 || foods.length === 0 ? null : true,
    breaks,
    unknown,
    traces: gravest(
      foods.map((food) => tracesOfAny(food, codes)),
      "UNKNOWN",
    ),
    claims: claims.filter((claim) => claim.diet === diet.code && region !== null && regionCovers(claim.region, region)),
  };
}

/** Every diet of the rules, in their order. */
export const dietStatements = (
  foods: readonly DietFood[],
  rules: Pick<AllergenRules, "diets" | "claims">,
  region: string | null,
): readonly DietStatement[] => runToEnd(dietStatementsInSlices(foods, rules, region, unlimitedWork));

/** Steps in which one food is held against one diet. */
const stepsOfFood = 2;

/** The same turn by turn. */
export function* dietStatementsInSlices(
  foods: readonly DietFood[],
  rules: Pick<AllergenRules, "diets" | "claims">,
  region: string | null,
  work: Work,
): InSlices<readonly DietStatement[]> {
  const found: DietStatement[] = [];
  for (const diet of rules.diets) {
    yield;
    work.step(stepsOfFood * foods.length);
    found.push(dietStatement(foods, diet, region, rules.claims, rules.diets));
  }
  return found;
}

/**
 * Whether one food fits a diet by what it is made of; null: not known. The stricter of its own statement and its allergens
 * counts: a food that says it fits and contains what breaks the diet does not fit. So does the stricter of several that
 * speak of it. Traces keep a food from fitting where its data warn of them.
 */
const fitsDiet = (food: DietFood, diet: DietRule, region: string | null, all: readonly DietRule[]): boolean | null =>
  strictest(claimsOf(food).map((claims) => fitsInClaims(claims, diet, region, all)));

const strictest = (answers: readonly (boolean | null)[]): boolean | null =>
  answers.includes(false) ? false : answers.includes(null) || answers.length === 0 ? null : true;

function fitsInClaims(
  claims: FoodClaims,
  diet: DietRule,
  region: string | null,
  all: readonly DietRule[],
): boolean | null {
  const stated = statedOrImplied(claims, diet, all);
  if (stated === false) return false;
  const breaks = breaksIn(diet, region);
  const contained = breaks.filter(({ code }) => ingredientInClaims(claims, code, all).presence === "CONTAINS");
  if (contained.some(({ when }) => when === "ALWAYS" || (when === "UNLESS_STATED" && stated !== true))) return false;
  // What is in it and has no code may be what breaks the diet, and a diet of no code that is not kept may be this one.
  const doubted = (breaks.length > 0 && namesUnknownAllergen(claims)) || doubtsUnknownDiet(claims, all);
  const warned = diet.settledBy === "ABSENCE" && tracesInClaims(claims, codesOf(breaks)) === "MAY_CONTAIN";
  if (stated === true) return warned || doubted ? null : true;
  if (stated === null || diet.settledBy === "STATED" || contained.length > 0 || warned) return null;
  if (doubted) return null;
  return anyIngredientInClaims(claims, codesOf(breaks), all).presence === "DOES_NOT_CONTAIN" ? true : null;
}

/**
 * What is stated of the diet, or follows from what is stated of another: vegan food has no meat, and what has meat is not vegan. Of
 * what is stated and what follows the stricter counts.
 */
function statedOrImplied(claims: FoodClaims, { code, implies = [] }: DietRule, all: readonly DietRule[]) {
  const stated = statementOf(claims, code);
  if (stated === false || implies.some((wider) => statementOf(claims, wider) === false)) return false;
  if (stated !== undefined) return stated;
  const narrower = all.filter((each) => each.implies?.includes(code) === true);
  return narrower.some((each) => statementOf(claims, each.code) === true) ? true : undefined;
}

/** Of several statements the stricter: no, then not known. undefined: none. */
function statementOf({ diets }: Pick<FoodClaims, "diets">, code: string): boolean | null | undefined {
  let said: boolean | null | undefined;
  for (const { diet, fits } of diets) {
    if (usualSpelling("diet", diet) !== code) continue;
    if (fits === false) return false;
    if (said !== null) said = fits;
  }
  return said;
}

/** The same list for the same rule and region, which is asked for each food in turn. */
function breaksIn(diet: DietRule, region: string | null): readonly DietBreak[] {
  const known = lastBreaks.get(diet);
  if (known?.region === region) return known.breaks;
  const breaks = findBreaks(diet, region);
  lastBreaks.set(diet, { region, breaks });
  return breaks;
}

const lastBreaks = new WeakMap<DietRule, { readonly region: string | null; readonly breaks: readonly DietBreak[] }>();

const codes = new WeakMap<readonly DietBreak[], readonly string[]>();

function codesOf(breaks: readonly DietBreak[]): readonly string[] {
  const known = codes.get(breaks) ?? breaks.map(({ code }) => code);
  codes.set(breaks, known);
  return known;
}

/** The line of the region where it has one for a code, else the general one. */
function findBreaks({ breaks }: DietRule, region: string | null): readonly DietBreak[] {
  const here = breaks.filter((line) => line.region !== null && region !== null && regionCovers(line.region, region));
  const own = new Set(here.map(({ code }) => code));
  return [...here, ...breaks.filter((line) => line.region === null && !own.has(line.code))];
}
