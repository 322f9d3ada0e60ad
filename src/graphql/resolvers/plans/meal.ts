import { mealTime } from "../../../services/answers/meal-time.js";
import type { MealResolvers } from "../../generated/resolver-types.js";
import { componentIn, languageShown } from "../../frozen-plan.js";
import { planIdOf } from "./plan-over-time.js";
import { globalId } from "../../global-id.js";
import type { MealParent } from "../../parent-types.js";
import { imageParent } from "../image.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { textResolvers } from "./words.js";
import { componentParent } from "../make-parents.js";

export const mealResolvers: FieldsToResolve<MealResolvers, MealParent> = {
  id: ({ frozen, slug }) => globalId({ kind: "Meal", revision: frozen.published.id, slug, ...languageShown(frozen) }),
  mealId: async ({ frozen, slug }, _, { loaders }) => `${await planIdOf(frozen.published, loaders)}#meal-${slug}`,
  at: mealTime,
  image: ({ frozen, image }) => imageParent(frozen.published.publisher, image),
  ...textResolvers,
  plan: ({ frozen }) => frozen.published,
  lines: ({ frozen, lines }) => lines.map((line) => ({ ...line, frozen })),
  components: ({ frozen, lines }) => {
    const named = lines.flatMap(({ item }) => (item.kind === "COMPONENT" ? [item.component] : []));
    return [...new Set(named)].map((slug) => componentParent(frozen, componentIn(frozen, slug)));
  },
};
