import type { MeasureSystem } from "../../domain/model/amount.js";
import { foodSlug } from "../../domain/model/open-table-slug.js";
import type { Household, OnHand, RouteMode } from "../../domain/model/household.js";
import { usualSpelling } from "../../domain/model/code-lists.js";
import { currencyCodes } from "../../domain/model/currency-codes.js";
import { isReadersLocale, languageCalled } from "../../domain/model/language-tags.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { DietRule } from "../../domain/nutrition/allergen-rules.js";
import { failed, gatherProblems, ok, type Path, type Problem, type Result } from "../../domain/problem.js";
import { parseAmount } from "../../domain/quantity/parse.js";
import { nearestCodes, nearestWords } from "../../domain/quantity/naming/nearest-words.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../domain/counted-work.js";
import { limits } from "../../domain/engine-limits.js";
import { checkNumber } from "../../domain/plan/check/check-text.js";
import { mergeDuplicates } from "./merge-duplicates.js";
import { readAvoidedAllergen } from "./read-avoided-allergen.js";
import { readRegion } from "./read-region.js";
import { foodCalled, noFoods, readOnHand, type GivenOnHand, type OnHandFoods } from "./read-on-hand.js";
import { readSessionStart, type GivenStart } from "./read-session-start.js";
import { readOrNull } from "../../domain/read-or-null.js";

type Maybe<T> = T | null | undefined;

/** A household as a caller writes it. Everything may be left out. */
export interface GivenHousehold {
  readonly measures?: Maybe<MeasureSystem>;
  readonly region?: Maybe<string>;
  readonly currency?: Maybe<string>;
  readonly locale?: Maybe<string>;
  readonly diets?: Maybe<readonly string[]>;
  readonly avoidAllergens?: Maybe<readonly string[]>;
  readonly dislikes?: Maybe<readonly string[]>;
  readonly eaters?: Maybe<readonly { readonly count: number; readonly portion: string }[]>;
  readonly swaps?: Maybe<readonly { readonly from: string; readonly to: string }[]>;
  readonly routes?: Maybe<{
    readonly mode?: Maybe<RouteMode>;
    readonly byName?: Maybe<readonly { readonly component: string; readonly route: string }[]>;
  }>;
  readonly onHand?: Maybe<readonly GivenOnHand[]>;
  readonly sessionStart?: Maybe<GivenStart>;
  readonly kitchen?: Maybe<GivenKitchen>;
}

/** What differs from the kitchen the plans assume. */
interface GivenKitchen {
  readonly cooks?: Maybe<number>;
  readonly appliances?: Maybe<readonly { readonly appliance: string; readonly count: number }[]>;
}

/** The most entries each list of a household may hold. */
export const longestHouseholdList = 200;

/** A household as far as it can be read: what is wrong is left out of it, and listed. */
interface HouseholdRead {
  readonly household: Household;
  readonly problems: readonly Problem[];
}

/** The same, whole or not at all. */
export function readHousehold(
  given: GivenHousehold,
  bundles: readonly PlanBundle[],
  diets: readonly Pick<DietRule, "code">[],
): Result<Household> {
  const { household, problems } = runToEnd(readHouseholdInSlices(given, bundles, diets, unlimitedWork));
  return problems.length > 0 ? failed(problems) : ok(household);
}

/**
 * Checks and completes a household. Units on hand are read as the plans' writers and the foods themselves name them.
 * Every problem is listed, each with its path under `household`. What is said twice is taken once (`mergeDuplicates`).
 *
 * @param diets those there is a rule for; another can never be known to be met, so asking for it is a mistake
 * @param foods what is on hand and what is not liked, as it was found by name; left out: by slug alone
 */
export function* readHouseholdInSlices(
  given: GivenHousehold,
  bundles: readonly PlanBundle[],
  diets: readonly Pick<DietRule, "code">[],
  work: Work,
  foods: OnHandFoods = noFoods,
): InSlices<HouseholdRead> {
  const { problems, note } = gatherProblems();
  const entries = <Name extends "diets" | "avoidAllergens" | "dislikes" | "eaters" | "swaps" | "onHand">(
    name: Name,
  ) => {
    const listed = given[name] ?? [];
    const path = ["household", name];
    return note(isTooLong(listed.length, path)) === null ? [] : (listed as NonNullable<GivenHousehold[Name]>);
  };
  const reader = {
    region: note(readRegion(given.region, ["household", "region"])),
    currency: note(readCurrency(given.currency)),
    locale: note(readLocale(given.locale ?? null, ["household", "locale"])),
  };
  const keptDiets: string[] = [];
  for (const [index, diet] of entries("diets").entries()) {
    const read = note(knownDiet(diet, index, diets));
    work.step(read === null ? stepsOfFault : stepsOfEntry);
    yield;
    if (read !== null) keptDiets.push(...read);
  }
  const avoidAllergens: string[] = [];
  for (const [index, allergen] of entries("avoidAllergens").entries()) {
    const read = note(readAvoidedAllergen(allergen, reader.locale, ["household", "avoidAllergens", index]));
    work.step(read === null ? stepsOfName : stepsOfEntry);
    yield;
    if (read !== null) avoidAllergens.push(...read);
  }
  const dislikes: string[] = [];
  for (const [index, food] of entries("dislikes").entries()) {
    const read = note(foodCalled(food, ["household", "dislikes", index], foods));
    work.step(stepsOfEntry);
    yield;
    if (read !== null) dislikes.push(read);
  }
  const eaters = entries("eaters").map((each, index) => note(readEaters(each, index)));
  const onHand: OnHand[] = [];
  const asWritten = bundles[0]?.plan;
  const context = {
    ...{ locale: reader.locale, measures: given.measures ?? asWritten?.measures ?? "METRIC" },
    ...{ region: reader.region ?? asWritten?.region ?? null, bundles, foods, work },
  };
  for (const [index, each] of entries("onHand").entries()) {
    const read = note(readOnHand(each, ["household", "onHand", index], context));
    work.step(isReadAtOnce(each, read, foods) ? stepsOfEntry : stepsOfWords);
    yield;
    if (read !== null) onHand.push({ ...read, place: index });
  }
  const household: Household = {
    measures: given.measures ?? null,
    ...reader,
    diets: keptDiets,
    avoidAllergens,
    dislikes,
    // Without one of them nobody knows how many eat.
    eaters: given.eaters && !eaters.includes(null) ? eaters.filter((each) => each !== null) : null,
    swaps: entries("swaps").map(({ from, to }) => ({ from: foodSlug(from), to: foodSlug(to) })),
    routes: { mode: given.routes?.mode ?? "AS_WRITTEN", byName: given.routes?.byName ?? [] },
    onHand,
    kitchen: given.kitchen ? note(readKitchen(given.kitchen, bundles)) : null,
    session: given.sessionStart ? note(readSessionStart(given.sessionStart, ["household", "sessionStart"])) : null,
  };
  if (problems.length > 0) return { household, problems };
  const asListed = onHand.map(({ place: _, ...each }) => each);
  return { household: mergeDuplicates({ ...household, onHand: asListed }), problems };
}

const stepsOfEntry = 4;
/** A number with a unit; or of a food that there is none of, so that its amount is not looked at. */
const isReadAtOnce = ({ food, unit }: GivenOnHand, read: unknown, { faults }: OnHandFoods): boolean =>
  (unit && read !== null) || faults.has(food ?? "");

/** Of an amount in words, held against the packs and measures of a food, or of one that is wrong. */
const stepsOfWords = 20;
/** Of one that is wrong: the codes near it are looked for. */
const stepsOfFault = 80;
/** The same of names in all languages. */
const stepsOfName = 300;

const isTooLong = (size: number, path: Path): Result<true> =>
  size > longestHouseholdList
    ? failed([{ code: "TOO_LARGE", path, what: "entries", size, limit: longestHouseholdList }])
    : ok(true);

function knownDiet(given: string, index: number, rules: readonly Pick<DietRule, "code">[]): Result<readonly [string]> {
  const diet = usualSpelling("diet", given);
  if (rules.some(({ code: known }) => known === diet)) return ok([diet]);
  const codes = rules.map(({ code: known }) => known);
  const near = nearestCodes(given, codes);
  const what = `one of ${codes.join(", ")}${near.length > 0 ? `; near it: ${near.join(", ")}` : ""}`;
  return failed([{ code: "BAD_HOUSEHOLD", path: ["household", "diets", index], what, value: shortened(given) }]);
}

function readCurrency(given: Maybe<string>): Result<string | null> {
  if (given === null || given === undefined) return ok(null);
  const upper = given.toUpperCase();
  if (currencyCodes.includes(upper)) return ok(upper);
  const near = nearestCodes(upper, currencyCodes);
  const what = `an ISO 4217 code${near.length > 0 ? `; near it: ${near.join(", ")}` : ", such as EUR"}`;
  return failed([{ code: "BAD_HOUSEHOLD", path: ["household", "currency"], what, value: shortened(given) }]);
}

/** A locale as a caller writes it, in its usual form; null: none was given. */
export function readLocale(given: string | null, path: Path): Result<string | null> {
  if (given === null) return ok(null);
  const tag = canonicalTag(given);
  if (tag !== null && isReadersLocale(tag)) return ok(tag);
  const meant = languageCalled(given.slice(0, 60));
  const what = `a BCP 47 language tag${meant === null ? ", such as en-GB" : `; near it: ${meant}`}`;
  return failed([{ code: "BAD_HOUSEHOLD", path, what, value: shortened(given) }]);
}

const canonicalTag = (given: string): string | null => readOrNull(() => Intl.getCanonicalLocales(given))?.[0] ?? null;

function readEaters(
  { count, portion }: NonNullable<GivenHousehold["eaters"]>[number],
  index: number,
): Result<NonNullable<Household["eaters"]>[number]> {
  const path = ["household", "eaters", index, "portion"];
  const read = parseAmount(portion, { locale: "en", measures: "METRIC", own: [], path });
  if (!read.ok) return read;
  if (read.value.low !== read.value.high || read.value.unit !== "piece") {
    return failed([{ code: "BAD_SHAPE", path, expected: "one number", got: shortened(portion) }]);
  }
  return ok({ count, portion: read.value.high });
}

/** An appliance that no plan asks for changes nothing, so naming one is a mistake: most often of spelling. */
function readKitchen(
  { cooks, appliances }: GivenKitchen,
  bundles: readonly PlanBundle[],
): Result<Household["kitchen"]> {
  const given = appliances ?? [];
  const path = ["household", "kitchen", "appliances"];
  const short = isTooLong(given.length, path);
  if (!short.ok) return short;
  const known = appliancesOf(bundles);
  const problems = given.flatMap(({ appliance, count }, index): readonly Problem[] => {
    const at = [...path, index, "appliance"];
    const before = given.find((each) => each.appliance === appliance);
    // Said twice it is said once; two counts are a mistake.
    if (before !== undefined && before.count !== count)
      return [{ code: "DUPLICATE", path: at, value: shortened(appliance) }];
    const few = checkNumber(count, [...path, index, "count"], { min: 0, max: limits.appliances });
    if (known.includes(appliance)) return few;
    const nearest = nearestWords(appliance, known);
    const expected = `one of ${(nearest.length > 0 ? nearest : known).join(", ")}`;
    return [{ code: "BAD_HOUSEHOLD", path: at, what: expected, value: shortened(appliance) }, ...few];
  });
  if (problems.length > 0) return failed(problems);
  return ok({
    cooks: cooks ?? null,
    appliances: Object.fromEntries(given.map(({ appliance, count }) => [appliance, count])),
  });
}

/** Every appliance that the plans list or that one of their steps uses. */
const appliancesOf = (bundles: readonly PlanBundle[]): readonly string[] => [
  ...new Set(
    bundles.flatMap(({ plan, components }) => [
      ...Object.keys(plan.kitchen.appliances),
      ...[...plan.meals, ...components, ...components.flatMap(({ routes }) => routes)].flatMap(({ steps }) =>
        steps.flatMap(({ appliance }) => appliance ?? []),
      ),
    ]),
  ),
];

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);
