import { guideFood } from "../../../services/answers/guide-single-item.js";
import { foodNameFor } from "../../../exports/words/food-name.js";
import { showWritten, type Show } from "../../../exports/words/shown-amount.js";
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
  id: (food) => globalId({ kind: "Food", revision: food.frozenIn?.id ?? null, slug: idSlug(food) }),
  owner: (food, _, { loaders }) => (food.owner === undefined ? null : loaders.publishers.load(food.owner)),
  extends: (food) => food.extends?.food ?? null,
  name: (food, { locale }) => foodNameFor(food, locale ?? null),
  names: ({ names }) => names.map((each) => ({ ...each, counted: each.counted ?? null })),
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
  packs: (food) => food.packs.map((pack) => ({ ...pack, food })),
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
  keepsAs: (part) => part.keepsAs ?? null,
  keeping: (part) => part.keeping ?? [],
  nutrients: (part) => foodNutrients(part.nutrients ?? null),
  perPiece: (part) => showWritten(part.perPiece, part.food, asWritten(part.food)),
};

export const packResolvers: FieldsToResolve<PackResolvers, PackParent> = {
  code: (pack) => pack.id,
  content: (pack) => showWritten(pack.content, pack.food, asWritten(pack.food)),
  loose: ({ loose }) => loose !== undefined,
  step: ({ loose, food }) => (loose?.step ? showWritten(loose.step, food, asWritten(food)) : null),
};

/** A food belongs to no plan's measures; packs and parts are shown in the units they were written in. */
const asWritten = (food: { readonly names: FoodParent["names"] }): Show => ({
  measures: "METRIC",
  locale: food.names[0]?.language ?? "en",
  converts: false,
});
