import type { Component } from "../../domain/model/component.js";
import type { Food, OwnMeasure } from "../../domain/model/food.js";
import type { Plan } from "../../domain/model/plan.js";
import { translationSlug, type Translation } from "../../domain/model/translation.js";
import type { PublisherFacts } from "../../domain/model/publisher.js";
import { failed, type Problem, type Result } from "../../domain/problem.js";
import { runToEnd, unlimitedWork, type InSlices, type Work } from "../../domain/counted-work.js";
import { compileFoodNames, namesBefore, type FoodNames } from "../../domain/quantity/food-name.js";
import { languageOf } from "../../domain/quantity/reader-locale.js";
import type { AnyDocument } from "./document-kinds.js";
import type { NamedComponent } from "./lines/line-names.js";
import { foodOffers, type RowsByWords } from "./lines/offer-foods.js";
import { mostLooks, resolveTextLines, type LineThings } from "./lines/resolve-text-lines.js";
import type { ComponentDocument } from "./schemas/component-schema.js";
import type { FoodDocument } from "./schemas/food-schema.js";
import type { PacksDocument } from "./schemas/packs-schema.js";
import type { PlanDocument } from "./schemas/plan-schema.js";
import type { PublisherDocument } from "./schemas/publisher-schema.js";
import { componentMeasures, readComponent } from "./read-component.js";
import type { DocumentProblem, ReadDocument } from "./read-documents.js";
import { readFood, readPacks } from "./read-food.js";
import type { KnownItems } from "./lines/read-lines.js";
import { readPlan } from "./read-plan.js";
import { readTranslation, type Translatable } from "./read-translation.js";
import type { TranslationDocument } from "./schemas/translation-schema.js";

/** What lines may name beside the documents themselves. A document of the same slug goes before it. */
export interface KnownThings {
  readonly foods: readonly Food[];
  readonly components: readonly Component[];
  /** All foods there are by their names, for lines that are written as text; left out: `foods`. */
  readonly named?: FoodNames;
  /** Rows of the open table that are offered for names of no food. */
  readonly rows?: RowsByWords;
  /** What a document's food inherits from the open table; its lines may then name inherited measures. Values stay as written. */
  readonly inherit?: (food: Food) => Food;
  /** Plans that documents may translate, and what was saved of their translations before; left out: none. */
  readonly plans?: readonly Plan[];
  readonly translations?: readonly Translation[];
  /** Foods that documents' foods may build on, by slug. */
  readonly bases?: ReadonlyMap<string, Food>;
}

export interface Resolved<T> {
  readonly value: T;
  readonly read: ReadDocument;
}

/** Its slug, and what its document says. */
type DescribedPublisher = PublisherFacts & { readonly slug: string };

export interface DocumentsResolved {
  readonly foods: readonly Resolved<Food>[];
  /** Packs alone, each as a food that builds on the one of its slug. */
  readonly packs: readonly Resolved<Food>[];
  readonly components: readonly Resolved<Component>[];
  readonly plans: readonly Resolved<Plan>[];
  readonly publishers: readonly Resolved<DescribedPublisher>[];
  readonly translations: readonly Resolved<Translation>[];
  readonly problems: readonly DocumentProblem[];
  /** As they were given, with the lines that are written as text read. */
  readonly documents: readonly ReadDocument[];
}

type OfKind<D> = Omit<ReadDocument, "document"> & { readonly document: D };

/**
 * Documents to values of the model: foods first, since a line's clove or tin is a measure of the food it names.
 * Whether everything that is referred to fits together is `checkBundle`'s to say.
 */
export const resolveDocuments = (documents: readonly ReadDocument[], known: KnownThings): DocumentsResolved =>
  runToEnd(resolveInSlices(documents, known, unlimitedWork));

/** The same turn by turn. */
export function* resolveInSlices(
  given: readonly ReadDocument[],
  known: KnownThings,
  work: Work,
): InSlices<DocumentsResolved> {
  const { inherit = (food: Food) => food, bases = new Map<string, Food>() } = known;
  const foodDocuments = ofKind<FoodDocument>(given, "food");
  const foods = yield* each(foodDocuments, work, (read) => resolved(read, readOnBase(read.document, bases)));
  const ownFoods = foods.flatMap(({ values }) => values.map(({ value }) => inherit(value)));
  const described = new Map([...known.foods, ...ownFoods].map((food) => [food.slug, food]));
  const packs = yield* each(ofKind<PacksDocument>(given, "packs"), work, (read) =>
    resolved(read, readPacksOf(read.document, described)),
  );
  const called = foods.flatMap(({ values }) => values.map(({ value }) => calledAs(value, inherit(value))));
  const things = lineThings(given, called, known);
  const documents = yield* resolveTextLines(given, things, work);
  const componentDocuments = ofKind<ComponentDocument>(documents, "component");
  const planDocuments = ofKind<PlanDocument>(documents, "plan");

  const items = knownItems(
    [...known.foods, ...ownFoods],
    new Set(foodDocuments.map(({ document }) => document.slug)),
    known.components,
    componentDocuments.map(({ document }) => document),
  );
  const components = yield* each(componentDocuments, work, (read) =>
    resolved(read, readComponent(read.document, items)),
  );
  const plans = yield* each(planDocuments, work, (read) => resolved(read, readPlan(read.document, items)));
  const translatable = translatableOf(known, documents, valuesOf(components), valuesOf(plans));
  const translations = yield* each(ofKind<TranslationDocument>(documents, "translation"), work, (read) =>
    resolved(read, readTranslation(read.document, translatable)),
  );
  const parts = [...foods, ...packs, ...components, ...plans, ...translations];
  const offer = foodOffers(things.foods, known.rows ?? new Map(), mostLooks);
  const languages = new Map(
    documents.map(({ file, document }) => [file, "locale" in document ? languageOf(document.locale) : "en"]),
  );
  return {
    foods: foods.flatMap(({ values }) => values),
    packs: packs.flatMap(({ values }) => values),
    components: components.flatMap(({ values }) => values),
    plans: plans.flatMap(({ values }) => values),
    translations: translations.flatMap(({ values }) => values),
    publishers: ofKind<PublisherDocument>(documents, "publisher").map((read) => ({ value: read.document, read })),
    problems: [
      ...repeated(documents),
      ...parts.flatMap(({ problems }) =>
        problems.map((each) => ({ ...each, problem: offer(each.problem, languages.get(each.file) ?? "en") })),
      ),
    ],
    documents,
  };
}

const valuesOf = <T>(parts: readonly { readonly values: readonly Resolved<T>[] }[]): readonly T[] =>
  parts.flatMap(({ values }) => values.map(({ value }) => value));

/** What there is to translate: a document goes before what is known of its name. */
function translatableOf(
  known: KnownThings,
  documents: readonly ReadDocument[],
  components: readonly Component[],
  plans: readonly Plan[],
): Translatable {
  const bySlug = <T extends { readonly slug: string }>(things: readonly T[]): ReadonlyMap<string, T> =>
    new Map(things.map((each) => [each.slug, each]));
  const locales = new Map(
    documents.flatMap(({ document }) => (document.kind === "component" ? [[document.slug, document.locale]] : [])),
  );
  return {
    plans: bySlug([...(known.plans ?? []), ...plans]),
    components: bySlug([...known.components, ...components]),
    localeOf: (component) => locales.get(component) ?? null,
    before: new Map((known.translations ?? []).map((each) => [translationSlug(each), each])),
  };
}

/** What builds on another food and has names of its own is called by these alone. */
const calledAs = (written: Food, whole: Food): Food =>
  written.names.length > 0 ? { ...whole, names: written.names } : whole;

/** What text lines may name: a document goes before what is known of its name. */
function lineThings(documents: readonly ReadDocument[], ownFoods: readonly Food[], known: KnownThings): LineThings {
  const written = (kind: AnyDocument["kind"]): ReadonlySet<string> =>
    new Set(documents.flatMap(({ document }) => (document.kind === kind ? [document.slug] : [])));
  const components = written("component");
  const ownComponents = ofKind<ComponentDocument>(documents, "component").map(({ document }): NamedComponent => {
    const measures = componentMeasures(document);
    return { slug: document.slug, title: document.title, measures: measures.ok ? measures.value : [], densities: [] };
  });
  return {
    foods: namesBefore(
      compileFoodNames(ownFoods.map((food) => ({ ...food, own: true }))),
      known.named ?? compileFoodNames(known.foods),
    ),
    components: [...known.components.filter(({ slug }) => !components.has(slug)), ...ownComponents],
  };
}

/** Characters of a document that are turned into a value in one step. */
const charactersInStep = 10;

/** What comes of each document, a turn for each. */
function* each<D extends { readonly text: string }, T>(
  documents: readonly D[],
  work: Work,
  find: (document: D) => T,
): InSlices<readonly T[]> {
  const found: T[] = [];
  for (const document of documents) {
    yield;
    work.step(document.text.length / charactersInStep);
    found.push(find(document));
  }
  return found;
}

function readOnBase(document: FoodDocument, bases: ReadonlyMap<string, Food>): Result<Food> {
  if (document.extends === null) return readFood(document);
  const base = bases.get(document.extends);
  if (base === undefined) return failed([{ code: "UNKNOWN_FOOD", path: ["extends"], food: document.extends }]);
  return readFood(document, base);
}

function readPacksOf(document: PacksDocument, foods: ReadonlyMap<string, Food>): Result<Food> {
  const base = foods.get(document.slug);
  if (base === undefined) return failed([{ code: "UNKNOWN_FOOD", path: ["slug"], food: document.slug }]);
  return readPacks(document, base);
}

const ofKind = <D extends ReadDocument["document"]>(
  documents: readonly ReadDocument[],
  kind: D["kind"],
): readonly OfKind<D>[] => documents.filter((read): read is OfKind<D> & ReadDocument => read.document.kind === kind);

function resolved<T>(read: ReadDocument, result: Result<T>) {
  return result.ok
    ? { values: [{ value: result.value, read }], problems: [] }
    : { values: [], problems: result.problems.map((problem) => problemAt(read, problem)) };
}

/** A problem at its place in the document it is about. */
export const problemAt = (read: ReadDocument, problem: Problem): DocumentProblem => {
  const path = read.writtenAt?.(problem.path) ?? problem.path;
  return { file: read.file, ...read.place(path, "VALUE"), path, problem };
};

function repeated(documents: readonly ReadDocument[]): readonly DocumentProblem[] {
  const name = ({ document }: ReadDocument): string =>
    document.kind === "plan" ? `plan ${document.publisher}/${document.slug}` : `${document.kind} ${document.slug}`;
  const first = new Map(documents.toReversed().map((read) => [name(read), read]));
  return documents
    .filter((read) => first.get(name(read)) !== read)
    .map((read) => problemAt(read, { code: "DUPLICATE", path: ["slug"], value: read.document.slug }));
}

/**
 * A food whose own document has a fault is known without its measures: its lines are then not reported as naming
 * an unknown food as well.
 */
function knownItems(
  foods: readonly Food[],
  written: ReadonlySet<string>,
  components: readonly Component[],
  componentDocuments: readonly ComponentDocument[],
): KnownItems {
  const byFood = new Map<string, readonly OwnMeasure[]>(foods.map((food) => [food.slug, food.measures]));
  const ofDocuments = componentDocuments.map((document): [string, readonly OwnMeasure[]] => {
    const measures = componentMeasures(document);
    return [document.slug, measures.ok ? measures.value : []];
  });
  const byComponent = new Map<string, readonly OwnMeasure[]>([
    ...components.map((component): [string, readonly OwnMeasure[]] => [component.slug, component.measures]),
    ...ofDocuments,
  ]);
  return {
    foodMeasures: (food) => byFood.get(food) ?? (written.has(food) ? [] : null),
    componentMeasures: (component) => byComponent.get(component) ?? null,
  };
}
