import { utcDay } from "../domain/utc-day.js";
import DataLoader from "dataloader";
import type { PlanBundle } from "../domain/model/plan.js";
import { titlesOfPlan, type TranslatedTitle } from "../domain/plan/translate/in-language.js";
import type { Food } from "../domain/model/food.js";
import type {
  Deps,
  DraftRef,
  OwnedSlug,
  Publisher,
  RevisionRef,
  RevisionSummary,
  RuleSetSummary,
  TitleAsked,
} from "../services/deps.js";
import type { Household } from "../domain/model/household.js";
import type { FoodsToday } from "../domain/plan/review/foods-today.js";
import { findSynonyms, foodsToday, type FoodReader } from "../services/foods/foods-today.js";
import { findCatalogueFoods, type CatalogueFood } from "../services/foods/find-catalogue-foods.js";
import { findComponents } from "../services/plans/find-components.js";
import { findFoods } from "../services/foods/find-foods.js";
import { findPlans, findPlansById } from "../services/plans/find-plans.js";
import { findPublishers, findPublishersById } from "../services/access/find-publishers.js";
import { findRules, type KnownRules } from "../services/rules/find-rules.js";
import { findRuleSets } from "../services/rules/find-rule-sets.js";
import { keepingQuestion, type RuleReader } from "../services/answers/guide-storage.js";
import type { Actor } from "../services/access/actor.js";
import { readDrafts, type DraftRead } from "../services/drafts/read-drafts.js";
import type { PublisherReader } from "../services/answers/resolve-region.js";
import { loadDocuments } from "../services/drafts/load-documents.js";
import { frozenPlan, type FrozenPlan } from "./frozen-plan.js";

/** Every nested read, put together into one statement a level. Lives for one request. */
export interface Loaders {
  readonly publishers: DataLoader<string, Publisher | null>;
  readonly publishersById: DataLoader<string, Publisher | null>;
  readonly readPublishers: PublisherReader;
  /** The publisher that a row of the database belongs to; it is a fault if it is gone. */
  publisherOf(slug: string): Promise<Publisher>;
  readonly plans: DataLoader<RevisionRef, RevisionSummary | null, string>;
  readonly plansById: DataLoader<string, RevisionSummary | null>;
  /** The revision that a row of the database is about; it is a fault if it is gone. */
  revisionOf(id: string): Promise<RevisionSummary>;
  readonly componentHomes: DataLoader<OwnedSlug, RevisionSummary | null, string>;
  readonly foods: DataLoader<string, Food | null>;
  /** Drafts with their texts; it fails for those the caller may not read. */
  readonly drafts: DataLoader<DraftRef, DraftRead | null, string>;
  /** Rows of the open food table by their number. */
  readonly catalogueFoods: DataLoader<string, CatalogueFood | null>;
  /** Several foods as known today, in the order asked for. */
  readonly readFoods: FoodReader;
  /** What is known today of the plans' foods and of what is on hand. */
  today(bundles: readonly PlanBundle[], household: Household): Promise<FoodsToday>;
  /** The published rules of today. */
  rulesToday(): Promise<KnownRules>;
  /** The published keeping rules of an ISO date. */
  readonly readRules: RuleReader;
  readonly ruleSets: DataLoader<string, RuleSetSummary | null>;
  /** The document of a revision that was found; it is a fault if the document is gone. */
  frozen(published: RevisionSummary): Promise<FrozenPlan>;
  /** What a revision is called in a language that it was translated into. */
  titleIn(published: RevisionSummary, language: string): Promise<TranslatedTitle | null>;
  /** From now on that revision is found, which no database has: a draft as it would be published. */
  hold(plan: FrozenPlan): void;
}

export function createLoaders(deps: Deps, actor: Actor): Loaders {
  const documents = new DataLoader<string, PlanBundle | null>((ids) => loadDocuments(deps, ids));
  const foods = new DataLoader<string, Food | null>((slugs) => findFoods(deps, slugs));
  const rules = new DataLoader((dates: readonly string[]) => Promise.all(dates.map((date) => findRules(deps, date))));
  const rulesToday = (): Promise<KnownRules> => rules.load(utcDay(deps.clock()));
  const dietsToday = async () => (await rulesToday()).allergens.diets;
  const synonyms = listLoader((slugs) => findSynonyms(deps, slugs));
  const foodLists = listLoader((slugs) => findFoods(deps, slugs));
  const readFoods: FoodReader = (slugs) => foodLists.load(slugs);
  const readRules: RuleReader = async (date) => (await rules.load(date)).safety;
  const frozen = new Map<string, Promise<FrozenPlan>>();
  const publishers = new DataLoader<string, Publisher | null>((slugs) => findPublishers(deps, slugs));
  const titles = new DataLoader<TitleAsked, TranslatedTitle | null, string>(
    (asked) => deps.data.revisions.titles(asked),
    { cacheKeyFn: ({ id, language }) => `${id} ${language}` },
  );
  const plansById = new DataLoader<string, RevisionSummary | null>((ids) => findPlansById(deps, ids));
  return {
    publishers,
    readPublishers: (slugs) => Promise.all(slugs.map((slug) => publishers.load(slug))),
    publisherOf: async (slug) => {
      const publisher = await publishers.load(slug);
      if (publisher === null) throw new Error(`the publisher ${slug} is gone`);
      return publisher;
    },
    publishersById: new DataLoader((ids) => findPublishersById(deps, ids)),
    plans: new DataLoader((refs) => findPlans(deps, refs), {
      cacheKeyFn: (ref) => JSON.stringify([ref.publisher, ref.slug, ref.revision]),
    }),
    plansById,
    revisionOf: async (id) => {
      const revision = await plansById.load(id);
      if (revision === null) throw new Error(`the revision ${id} is gone`);
      return revision;
    },
    componentHomes: new DataLoader((names) => findComponents(deps, names), {
      cacheKeyFn: (name) => JSON.stringify([name.publisher, name.slug]),
    }),
    foods,
    catalogueFoods: new DataLoader((numbers) => findCatalogueFoods(deps, numbers)),
    rulesToday,
    readRules,
    ruleSets: new DataLoader((ids) => findRuleSets(deps, ids)),
    drafts: new DataLoader((refs) => readDrafts(deps, actor, refs), {
      cacheKeyFn: ({ kind, publisher, slug }) => JSON.stringify([kind, publisher, slug]),
    }),
    readFoods,
    today: async (bundles, household) =>
      foodsToday(bundles, household, await dietsToday(), deps.clock, {
        readFoods,
        readSynonyms: (slugs) => synonyms.load(slugs),
        readQuestion: () => keepingQuestion(household, deps.clock, readRules),
      }),
    // A draft is in no table.
    titleIn: async (published, language) => {
      const held = frozen.get(published.id);
      if (held === undefined) return titles.load({ id: published.id, language });
      return titlesOfPlan((await held).bundle).get(language) ?? null;
    },
    hold: (plan) => void frozen.set(plan.published.id, Promise.resolve(plan)),
    frozen: (published) => {
      const known = frozen.get(published.id) ?? documents.load(published.id).then((found) => opened(published, found));
      frozen.set(published.id, known);
      return known;
    },
  };
}

function opened(published: RevisionSummary, bundle: PlanBundle | null): FrozenPlan {
  if (bundle === null) throw new Error(`revision ${published.id} has no document`);
  return frozenPlan(published, bundle);
}

/** Loads lists of slugs, each as a whole: a promise for each of a plan's foods costs more than what it brings. */
function listLoader<Found>(
  read: (slugs: readonly string[]) => Promise<readonly Found[]>,
): DataLoader<readonly string[], readonly Found[], string> {
  return new DataLoader(
    async (lists: readonly (readonly string[])[]) => {
      const slugs = [...new Set(lists.flat())];
      const found = await read(slugs);
      const bySlug = new Map(slugs.map((slug, at) => [slug, found[at]!]));
      return lists.map((list) => list.map((slug) => bySlug.get(slug)!));
    },
    { cacheKeyFn: (list) => JSON.stringify(list) },
  );
}
