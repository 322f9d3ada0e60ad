import type { RationalText } from "../../domain/model/amount.js";
import type { Component, Route, Step } from "../../domain/model/component.js";
import type { Food, FoodDensity, FoodName, NutrientCode, OwnMeasure, Pack } from "../../domain/model/food.js";
import type { Image } from "../../domain/model/image.js";
import type { KeepingRule } from "../../domain/model/keeping.js";
import type { Line } from "../../domain/model/line.js";
import type { Meal, Plan, PlanTime } from "../../domain/model/plan.js";
import type { PublisherFacts } from "../../domain/model/publisher.js";
import type { Translation } from "../../domain/model/translation.js";
import { textName } from "../../domain/plan/translate/texts-of.js";
import type { Source } from "../../domain/model/source.js";
import { toNumber } from "../../domain/quantity/rational.js";
import { wordsOf, type WordsOfPlan } from "../../domain/model/writers-words.js";
import { amountText } from "./amount-text.js";
import { routeKindWords } from "./schemas/component-schema.js";
import { dimensionWords, nutrientKeys, presenceWords } from "./schemas/food-schema.js";
import { growsWords, handsWords, measuredWords, ruleWords } from "./schemas/line-schema.js";
import { measureSystemWords, placeWords, purposeWords, sourceKindWords } from "./schemas/shared-schemas.js";

/** A document as plain data, ready for a YAML or JSON writer. */
export type PlainDocument = Readonly<Record<string, unknown>>;

const isEmpty = (value: unknown): boolean =>
  value === null || value === undefined || value === false || (Array.isArray(value) && value.length === 0);

/** Without what says nothing: null, empty lists and `no` all read back as if they were not there. */
const filled = (entries: PlainDocument): PlainDocument =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => !isEmpty(value)));

/** The document that reads back as this food. */
export const foodDocumentOf = (food: Food): PlainDocument =>
  filled({
    kind: "food",
    slug: food.slug,
    extends: food.extends?.food,
    "same-ingredients": food.extends?.sameIngredients === true ? "yes" : null,
    names: Object.fromEntries(food.names.map((name) => [tagOf(name), nameOf(name)])),
    aisle: food.leaves?.includes("aisle") ? null : food.aisle,
    "shopped-by": food.leaves?.includes("shoppedBy") ? null : dimensionWords[food.shoppedBy],
    usda: food.ndbNo,
    densities: food.densities.map(densityOf),
    measures: food.measures.map(measureOf),
    parts: food.parts.map(({ name, perPiece, after, keepsAs, keeping = [], nutrients, source }) =>
      filled({
        name,
        "per-piece": amountText(perPiece),
        after,
        "keeps-as": keepsAs,
        keeping: keeping.map(keepingOf),
        nutrients: nutrients === undefined ? null : nutrientsOf(nutrients),
        source: sourceOf(source),
      }),
    ),
    edible: food.edible.map(({ form, share, source }) => filled({ form, share, source: sourceOf(source) })),
    yields: food.yields.map((each) => ({
      food: each.food,
      "grams-per-gram": each.gramsPerGram,
      source: sourceOf(each.source),
    })),
    allergens: food.allergens.map(({ code, presence, traces, source }) =>
      filled({
        code,
        presence: presenceWords[presence],
        traces: traces === undefined ? null : presenceWords[traces],
        source: sourceOf(source),
      }),
    ),
    "single-ingredient": food.singleIngredient ? { source: sourceOf(food.singleIngredient.source) } : null,
    diets: food.diets.map(({ diet, fits, source }) => ({
      diet,
      fits: fits === null ? "unknown" : yesNo(fits),
      source: sourceOf(source),
    })),
    nutrients: food.nutrients === null ? null : nutrientsOf(food.nutrients),
    "keeps-as": food.keepsAs,
    keeping: food.keeping.map(keepingOf),
    "shelf-stable": food.shelfStable === true ? "yes" : null,
    packs: food.packs.map(packOf),
    "always-there": food.alwaysThere
      ? "yes"
      : food.leaves === undefined || food.leaves.includes("alwaysThere")
        ? null
        : "no",
  });

/** The document that reads back as these packs of a food. */
export const packsDocumentOf = ({ slug, packs }: Food): PlainDocument => ({
  ...{ kind: "packs", slug, packs: packs.map(packOf) },
});

/** The document that reads back as this component. */
export const componentDocumentOf = (component: Component): PlainDocument => ({
  ...filled({
    kind: "component",
    slug: component.slug,
    title: component.title,
    steps: component.steps.map(stepOf),
    yield: { amount: amountText(component.yield.amount), source: sourceOf(component.yield.source) },
    batches: filled({
      "at-least": component.batch.min,
      "at-most": component.batch.max,
      "in-steps-of": component.batch.increment,
    }),
    densities: component.densities.map(densityOf),
    measures: component.measures.map(measureOf),
    "keeps-as": component.keepsAs,
    keeping: component.keeping.map(keepingOf),
    routes: component.routes.map(routeOf),
    cautions: component.cautions,
    image: imageOf(component.image),
    ...wordsIn(component),
  }),
  // Asked for even where there are none.
  lines: component.lines.map(lineOf),
});

/** The document that reads back as this plan. */
export const planDocumentOf = (plan: Plan): PlainDocument =>
  filled({
    kind: "plan",
    publisher: plan.publisher,
    slug: plan.slug,
    title: plan.title,
    summary: plan.summary,
    locale: plan.locale,
    region: plan.region,
    currency: plan.currency,
    "measured-in": measureSystemWords[plan.measures],
    serves: plan.serves,
    meals: plan.meals.map(mealOf),
    kitchen: plan.kitchen,
    "promised-time": plan.promisedMinutes,
    claims: plan.claims,
    image: imageOf(plan.image),
    "publish-at": timeOf(plan.publishAt),
    "withdraw-at": timeOf(plan.withdrawAt),
    licence: plan.licence,
    ...wordsIn(plan),
  });

/** The document that reads back as this translation. */
export function translationDocumentOf({ of, language, texts, checked }: Translation): PlainDocument {
  const said: Record<string, unknown> = {};
  for (const { path, text } of texts) {
    let at: Record<string, unknown> = said;
    for (const key of path.slice(0, -1)) at = (Object.hasOwn(at, key) ? at[key] : (at[key] = {})) as typeof at;
    at[path.at(-1) ?? ""] = text;
  }
  return filled({
    kind: "translation",
    [of.kind === "PLAN" ? "plan" : "component"]: of.slug,
    ...{ language, checked, ...said },
    "numbers-differ": texts.flatMap(({ path, numbersDiffer }) => (numbersDiffer ? [textName(path)] : [])),
  });
}

/** The document that reads back as what this publisher says of itself. */
export const publisherDocumentOf = (slug: string, facts: PublisherFacts): PlainDocument =>
  filled({ kind: "publisher", slug, ...facts, image: imageOf(facts.image) });

const timeOf = (time: (PlanTime & { readonly reason?: string }) | undefined): PlainDocument | null =>
  time === undefined ? null : filled({ ...time });

/** As a writer names it: which picture its file was is not for documents to say. */
const imageOf = (image: Image | null | undefined): PlainDocument | null =>
  image ? filled({ file: image.file, alt: image.alt, credit: image.credit, licence: image.licence }) : null;

const wordsIn = (thing: WordsOfPlan): PlainDocument => {
  const { credits = [], ...words } = wordsOf(thing);
  return {
    ...words,
    credits: credits.map(({ adapted, ...credit }) => ({ ...credit, ...(adapted && { adapted: "yes" }) })),
  };
};

const yesNo = (value: boolean): string => (value ? "yes" : "no");

const sourceOf = ({ kind, title, section }: Source): PlainDocument =>
  filled({ kind: sourceKindWords[kind], title, section });

const tagOf = ({ language, region }: FoodName): string => (region === null ? language : `${language}-${region}`);

const nameOf = ({ one, many, counted, also }: FoodName): PlainDocument => filled({ one, many, counted, also });

const densityOf = ({ form, gramsPerMl, source }: FoodDensity): PlainDocument =>
  filled({ form, "grams-per-ml": gramsPerMl, source: sourceOf(source) });

const measureOf = ({ source, ...measure }: OwnMeasure): PlainDocument =>
  filled({ ...measure, source: sourceOf(source) });

const keepingOf = ({ place, purpose, source, ...rule }: KeepingRule): PlainDocument =>
  filled({
    place: placeWords[place],
    ...rule,
    purpose: purpose === undefined ? null : purposeWords[purpose],
    source: sourceOf(source),
  });

const nutrientsOf = ({ per100g, source }: NonNullable<Food["nutrients"]>): PlainDocument => ({
  "per-100g": Object.fromEntries(
    Object.entries(per100g).map(([code, value]) => [nutrientKeys[code as NutrientCode], value]),
  ),
  source: sourceOf(source),
});

const packOf = ({ id, name, content, price, region, seen, source, loose }: Pack): PlainDocument =>
  filled({
    id,
    name,
    content: amountText(content),
    price: price === null ? null : `${price.amount} ${price.currency}`,
    region,
    seen,
    source: sourceOf(source),
    loose: loose === undefined ? null : loose.step === null ? "yes" : { step: amountText(loose.step) },
  });

const lineOf = (line: Line): PlainDocument =>
  filled({
    id: line.id,
    ...(line.item.kind === "FOOD"
      ? { food: line.item.food, part: line.item.part }
      : { component: line.item.component }),
    amount: line.amount === null ? null : amountText(line.amount),
    each: line.each === undefined ? null : amountText(line.each),
    written: line.written,
    "plus-more": line.extra ? "yes" : null,
    measured: measuredWords[line.measured],
    form: line.form,
    preparation: line.preparation,
    rule: line.rule === "POWER" ? `power ${line.exponent}` : ruleWords[line.rule],
    optional: line.optional ? "yes" : null,
    eaten: line.eaten === undefined || line.eaten === "0" ? null : percentText(line.eaten),
    "thrown-away": line.eaten === "0" ? "yes" : null,
    mark: line.mark,
    swaps: line.swaps.map(({ food, ratio, diets, note, own = {} }) =>
      filled({
        ...{ food, ratio, diets, note, preparation: own.preparation, form: own.form, "keeps-as": own.keepsAs },
        yield: own.yield === undefined ? null : amountText(own.yield),
        steps: own.steps?.map(({ id, text, minutes }) => ({
          id,
          ...(text === undefined ? {} : { do: text }),
          ...(minutes === undefined ? {} : { time: minutes }),
        })),
      }),
    ),
  });

const percentText = (share: RationalText): string => `${toNumber(share) * 100} %`;

const stepOf = (step: Step): PlainDocument => ({
  ...filled({
    id: step.id,
    do: step.text,
    time: step.minutes,
    hands: handsWords[step.attention],
    appliance: step.appliance,
    celsius: step.temperatureC,
    grows: step.grows === "FIXED" && step.growthStated === undefined ? null : growsWords[step.grows],
    "load-batches": step.loadBatches,
    "wait-at-least": step.minWait,
    "wait-at-most": step.maxWait,
    "evening-before": step.eveningBefore ? "yes" : null,
    uses: step.lines,
    leaves: step.leaves ?? null,
    "wash-time": step.washMinutes ?? null,
    drains: step.drains === undefined ? null : yesNo(step.drains),
    "heat-up": step.heatUpMinutes ?? null,
    chills: step.chills === undefined ? null : yesNo(step.chills),
  }),
  after: step.after,
});

const routeOf = (route: Route): PlainDocument => ({
  ...filled({
    name: route.name,
    kind: routeKindWords[route.kind],
    steps: route.steps.map(stepOf),
    "keeps-as": route.keepsAs,
    keeping: route.keeping.map(keepingOf),
  }),
  lines: route.lines.map(lineOf),
});

const mealOf = (meal: Meal): PlainDocument => ({
  ...filled({
    slug: meal.slug,
    title: meal.title,
    day: meal.day,
    at: meal.at,
    serves: meal.serves,
    steps: meal.steps.map(stepOf),
    image: imageOf(meal.image),
    ...wordsIn(meal),
  }),
  lines: meal.lines.map(lineOf),
});
