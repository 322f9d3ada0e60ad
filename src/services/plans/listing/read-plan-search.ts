import type { NutrientCode } from "../../../domain/model/food.js";
import { namesOfAppliance } from "../../../domain/model/appliances.js";
import { usualSpelling } from "../../../domain/model/code-lists.js";
import { codeListsOf } from "../../../domain/plan/check/code-lists-of.js";
import {
  applianceFact,
  dietFact,
  everywhere,
  freeFact,
  labelsIn,
  languageFact,
  tagFact,
  type FactLabel,
} from "../../../domain/plan/listing/fact-labels.js";
import { factRegionOf, elsewhere, ownRegion, regionsOver } from "../../../domain/plan/listing/fact-regions.js";
import { listedNutrients } from "../../../domain/plan/listing/listed-facts.js";
import { languageFor } from "../../../domain/plan/translate/in-language.js";
import type { RuleSet } from "../../../domain/plan/compile/rule-set.js";
import { countryOf } from "../../../domain/model/region-codes.js";
import { failed, gatherProblems, ok, type Path, type Problem, type Result } from "../../../domain/problem.js";
import { unknownCode } from "../../../imports/documents/checks/check-codes.js";
import { foldText } from "../../../persistence/sql/fold-words.js";
import type { Deps, FactFilter } from "../../deps.js";
import { readRegion } from "../../answers/read-region.js";
import { rulesToday } from "../../rules/find-rules.js";
import { readSearch } from "../../foods/search-text.js";
import { isStorable } from "../../storable-text.js";
import { readFoodsLookedFor, type FoodsLookedFor } from "./read-foods-looked-for.js";
import { namedNutrientLimits, nutrientLimitNames } from "./named-nutrients.js";
import type { Maybe, WantedPlans } from "./wanted-plans.js";
import { readWordsLookedFor } from "./read-words-looked-for.js";

/** A filter as the database reads it. */
export interface PlanSearch {
  readonly filter: FactFilter;
  /** Groups of its labels that are held against what is known today, too. */
  readonly safety: FactFilter["labels"];
  /** Where hits are shown for: a key of the facts. */
  readonly region: string;
  /** Markets of the region, the one that counts first. */
  readonly markets: readonly string[];
}

/** The most entries of each list, and of foods at hand. */
const longestList = 50;
const longestAtHand = 200;

/** Plans that are ranked by what is at hand: the newest that have any of it. */
const mostCandidates = 5_000;

const listLengths = {
  diets: longestList,
  withoutAllergens: longestList,
  usesAnyOf: longestList,
  usesAllOf: longestList,
  tags: longestList,
  withoutAppliances: longestList,
  nutrients: longestList,
  foodsAtHand: longestAtHand,
} as const;

/** Every problem of a filter, each with its path; or the filter with all that its names stand for. */
export async function readPlanSearch(
  deps: Deps,
  wanted: WantedPlans,
  path: Path = ["filter"],
): Promise<Result<PlanSearch>> {
  const shape = [...tooLong(wanted, path), ...textProblems(wanted, path), ...figureProblems(wanted, path)];
  if (shape.length > 0) return failed(shape);
  const { problems, note } = gatherProblems();
  const rules = await rulesToday(deps);
  const asked = note(asShape(readRegion(wanted.region, [...path, "region"])));
  const region = factRegionOf(rules.allergens, asked);
  const markets = marketsOver(asked);
  const safety = [
    ...codes(wanted.diets, "diet", [...path, "diets"], rules, problems).map(dietFact),
    ...codes(wanted.withoutAllergens, "allergen", [...path, "withoutAllergens"], rules, problems).map(freeFact),
  ].map((fact) => labelsIn(fact, region));
  const language = codes(listed(wanted.language), "language", [...path, "language"], rules, problems);
  const currency = codes(
    listed(wanted.maxCostPerServing?.currency),
    "currency",
    [...path, "maxCostPerServing", "currency"],
    rules,
    problems,
  );
  const appliances = codes(wanted.withoutAppliances, "appliance", [...path, "withoutAppliances"], rules, problems)
    .flatMap(namesOfAppliance)
    .map(applianceFact);
  const foods: FoodsLookedFor | null = note(await readFoodsLookedFor(deps, wanted, path));
  const words = note(await readWordsLookedFor(deps, wanted, path));
  if (problems.length > 0) return failed(problems);
  const tags = (wanted.tags ?? []).map((tag) => [everywhere(tagFact(foldText(tag)))]);
  const amount = wanted.maxCostPerServing?.amount;
  return ok({
    region,
    markets,
    safety,
    filter: {
      ...{ publisher: wanted.publisher ?? null, usesFood: wanted.usesFood ?? null },
      usesComponent: wanted.usesComponent ?? null,
      labels: [...safety, ...language.map(readIn), ...tags],
      without: appliances.map(everywhere),
      maxSessionMinutes: wanted.maxSessionMinutes ?? null,
      maxHandsOnMinutes: wanted.maxHandsOnMinutes ?? null,
      maxBought: wanted.maxFoodsToBuy ?? null,
      maxCost: amount === undefined ? null : { markets: markets.map((market) => `${market} ${currency[0]}`), amount },
      nutrients: nutrientLimits(wanted),
      uses: foods?.uses ?? [],
      atHand: foods?.atHand ? { foods: foods.atHand, candidates: mostCandidates } : null,
      publishedAfter: storableTime(wanted.publishedAfter ?? null),
      words: words ?? [],
    },
  });
}

/** Years that the database knows; before and after them there are no plans. */
function storableTime(time: Date | null): Date | null {
  if (time === null || time.getUTCFullYear() < 1) return null;
  return time.getUTCFullYear() > 9_999 ? new Date("9999-12-31T23:59:59.999Z") : time;
}

/** Where a reader of a region shops: in it, in what it is part of, or where every pack is sold. */
function marketsOver(asked: string | null): readonly string[] {
  if (asked === null) return [ownRegion];
  return [...new Set(regionsOver([asked, countryOf(asked), "EU", "ANZ"], asked)), elsewhere];
}

/** Labels of which a plan has one if a reader of a locale is shown it in that language: who reads `de-AT` is shown what is in `de`. */
function readIn(locale: string): readonly FactLabel[] {
  const [spoken = locale] = locale.split("-");
  return [...new Set([locale, ...(languageFor([spoken], locale) === null ? [] : [spoken])])].map((tag) =>
    everywhere(languageFact(tag)),
  );
}

const listed = (value: Maybe<string>): readonly string[] => (value === null || value === undefined ? [] : [value]);

/** A region that is none, in the words of a filter. */
const asShape = <T>(result: Result<T>): Result<T> =>
  result.ok
    ? result
    : failed(
        result.problems.map((problem) =>
          problem.code === "BAD_HOUSEHOLD"
            ? { code: "BAD_SHAPE", path: problem.path, expected: problem.what, got: problem.value }
            : problem,
        ),
      );

/** Codes in their usual spelling; what is none is noted with the nearest. */
function codes(
  given: Maybe<readonly string[]>,
  list: "allergen" | "appliance" | "currency" | "diet" | "language",
  path: Path,
  rules: RuleSet,
  problems: Problem[],
): readonly string[] {
  const isList = list === "allergen" || list === "appliance" || list === "diet";
  return [
    ...new Set(
      (given ?? []).map((written, at) => {
        const trimmed = written.trim();
        const cased =
          list === "currency" ? trimmed.toUpperCase() : list === "language" ? trimmed : trimmed.toLowerCase();
        const problem = unknownCode({ list, written: cased, path: isList ? [...path, at] : path }, codeListsOf(rules));
        if (problem !== null) problems.push(problem);
        return usualSpelling(list, cased);
      }),
    ),
  ];
}

function tooLong(wanted: WantedPlans, path: Path): readonly Problem[] {
  return Object.entries(listLengths).flatMap(([name, limit]): readonly Problem[] => {
    const size = wanted[name as keyof typeof listLengths]?.length ?? 0;
    return size > limit ? [{ code: "TOO_LARGE", path: [...path, name], what: "entries", size, limit }] : [];
  });
}

function textProblems(wanted: WantedPlans, path: Path): readonly Problem[] {
  const {
    publisher = null,
    search = null,
    usesFood = null,
    usesComponent = null,
    region = null,
    language = null,
  } = wanted;
  const currency = wanted.maxCostPerServing?.currency ?? null;
  const lists = [
    ...(["diets", "withoutAllergens", "withoutAppliances", "usesAnyOf", "usesAllOf", "foodsAtHand", "tags"] as const),
  ];
  return [
    ...readSearch({ publisher, search, usesFood, usesComponent, region, language }, path),
    ...readSearch({ currency }, [...path, "maxCostPerServing"]),
    ...lists.flatMap((list) =>
      (wanted[list] ?? []).flatMap((text, at) =>
        readSearch({ [list]: text }, path).map((problem) => ({ ...problem, path: [...path, list, at] })),
      ),
    ),
  ];
}

/** Figures beyond this are a slip of the finger, and no plan has them. */
const largestFigure = 1_000_000;

function figureProblems(wanted: WantedPlans, path: Path): readonly Problem[] {
  const figures: readonly (readonly [Path, Maybe<number>])[] = [
    ...(["maxSessionMinutes", "maxHandsOnMinutes", "maxFoodsToBuy", ...nutrientLimitNames] as const).map(
      (name) => [[...path, name], wanted[name]] as const,
    ),
    ...(wanted.nutrients ?? []).flatMap(({ min, max }, at) => [
      [[...path, "nutrients", at, "min"], min] as const,
      [[...path, "nutrients", at, "max"], max] as const,
    ]),
  ];
  const problems = figures.flatMap(([place, value]): readonly Problem[] =>
    value === null || value === undefined || (value >= 0 && value <= largestFigure)
      ? []
      : [{ code: "AMOUNT_OUT_OF_RANGE", path: place, value: String(value), min: 0, max: largestFigure }],
  );
  const amount = wanted.maxCostPerServing?.amount;
  if (amount === undefined || /^\d{1,7}(\.\d{1,4})?$/.test(amount)) return problems;
  const got = isStorable(amount) ? amount.slice(0, 60) : "something else";
  const place = [...path, "maxCostPerServing", "amount"];
  return [...problems, { code: "BAD_SHAPE", path: place, expected: 'an amount of money, such as "4.50"', got }];
}

const nutrientLimits = (wanted: WantedPlans): FactFilter["nutrients"] => [
  ...nutrientLimitNames.flatMap((name) => {
    const value = wanted[name] ?? null;
    const { nutrient, end } = namedNutrientLimits[name];
    return value === null ? [] : [limitOf(nutrient, end === "min" ? value : null, end === "max" ? value : null)];
  }),
  ...(wanted.nutrients ?? []).map(({ nutrient, min = null, max = null }) => limitOf(nutrient, min, max)),
];

/** Arrays of the database count from 1. */
const limitOf = (nutrient: NutrientCode, min: number | null, max: number | null) => ({
  ...{ place: listedNutrients.indexOf(nutrient) + 1, min, max },
});
