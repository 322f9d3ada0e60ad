import { guideFood } from "../../../services/answers/guide-single-item.js";
import { foodNameFor } from "../../../exports/words/food-name.js";
import { packName } from "../../../exports/words/pack-names.js";
import { partIn } from "../../../exports/words/part-words.js";
import { codeName } from "../../../exports/words/rule-words.js";
import { wordsFor } from "../../../exports/words/words-for.js";
import { asWritten, showWritten, type Show } from "../../../exports/words/shown-amount.js";
import { valueOf } from "../../errors.js";
import type {
  FoodConnectionResolvers,
  FoodPartResolvers,
  FoodResolvers,
  KeepingRuleResolvers,
  PackResolvers,
} from "../../generated/resolver-types.js";
import { globalId } from "../../global-id.js";
import { openTableCandidates } from "../../../services/foods/open-table-candidates.js";
import type {
  FoodConnectionParent,
  FoodParent,
  FoodPartParent,
  KeepingRuleParent,
  PackParent,
} from "../../parent-types.js";
import { foodNutrients } from "./catalogue-food.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { anybodysSide } from "../plans/readers-side.js";
import { guidanceOfFood } from "../plans/storage-guidance.js";

export const foodResolvers: FieldsToResolve<FoodResolvers, FoodParent> = {
  id: (food) =>
    globalId({
      kind: "Food",
      revision: food.frozenIn?.id ?? null,
      slug: idSlug(food),
      ...(food.locale === null || food.locale === food.frozenIn?.locale ? {} : { language: food.locale }),
    }),
  owner: (food, _, { loaders }) => (food.owner === undefined ? null : loaders.publishers.load(food.owner)),
  extends: (food) => food.extends?.food ?? null,
  name: (food, { locale }) => foodNameFor(food, locale ?? food.locale),
  names: ({ names }) => names.map((each) => ({ ...each, counted: each.counted ?? null })),
  aisleName: (food, { locale }) => codeName("aisles", food.aisle, wordsFor(locale ?? food.locale ?? "en")),
  allergens: ({ allergens }) => allergens.map((each) => ({ ...each, traces: each.traces ?? null })),
  shelfStable: ({ shelfStable }) => shelfStable ?? null,
  singleIngredient: ({ singleIngredient }) => singleIngredient ?? null,
  storage: async (food, { region, boughtAt, kitchen }, { deps, loaders }) => {
    const bundles = food.frozenIn === null ? [] : [(await loaders.frozen(food.frozenIn)).bundle];
    const { household } = await anybodysSide(loaders, bundles);
    const given = { region, regions: household.regions ?? [], from: boughtAt, fromName: "boughtAt", audience: kitchen };
    return guidanceOfFood(valueOf(await guideFood(food, given, deps.clock, loaders.readRules)), food);
  },
  catalogueFood: (food, _, { loaders }) => (food.ndbNo === null ? null : loaders.catalogueFoods.load(food.ndbNo)),
  nutrients: (food) => foodNutrients(food.nutrients),
  parts: (food) => food.parts.map((part) => ({ ...part, food })),
  packs: (food) => food.packs.map((pack) => ({ ...pack, food, show: shownIn(food) })),
};

export const foodConnectionResolvers: FieldsToResolve<FoodConnectionResolvers, FoodConnectionParent> = {
  openTable: ({ edges, search }, _, { deps }) =>
    openTableCandidates(
      deps,
      search,
      edges.map(({ node }) => node),
    ),
};

export const keepingRuleResolvers: FieldsToResolve<KeepingRuleResolvers, KeepingRuleParent> = {
  purpose: ({ place, purpose }) => purpose ?? (place === "FREEZER" ? "QUALITY" : "SAFETY"),
  region: ({ region }) => region ?? null,
};
/** A publisher's own food of today is found by both names; inside a revision its slug is enough. */
const idSlug = ({ owner, slug, frozenIn }: FoodParent): string =>
  owner === undefined || frozenIn !== null ? slug : `${owner}/${slug}`;

export const foodPartResolvers: FieldsToResolve<FoodPartResolvers, FoodPartParent> = {
  title: ({ name, food }) => partIn(food.locale ?? "en", name),
  keepsAs: (part) => part.keepsAs ?? null,
  keeping: (part) => part.keeping ?? [],
  nutrients: (part) => foodNutrients(part.nutrients ?? null),
  perPiece: (part) => showWritten(part.perPiece, part.food, shownIn(part.food) ?? asWritten(part.food)),
};

export const packResolvers: FieldsToResolve<PackResolvers, PackParent> = {
  code: (pack) => pack.id,
  name: ({ name, show }) => (show === null ? name : packName(name, show.locale)),
  content: ({ content, food, show }) => showWritten(content, food, show ?? asWritten(food)),
  loose: ({ loose }) => loose !== undefined,
  step: ({ loose, food, show }) => (loose?.step ? showWritten(loose.step, food, show ?? asWritten(food)) : null),
};

/** For whoever reads a food: it belongs to no plan's measures. null: as it was written. */
const shownIn = (food: FoodParent): Show | null =>
  food.locale === null ? null : { ...asWritten(food), locale: food.locale };
