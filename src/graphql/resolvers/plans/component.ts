import { guideComponent } from "../../../services/answers/guide-single-item.js";
import { toNumber } from "../../../domain/quantity/rational.js";
import { showWritten } from "../../../exports/words/shown-amount.js";
import { valueOf } from "../../errors.js";
import type { ComponentResolvers, RouteResolvers } from "../../generated/resolver-types.js";
import { globalId } from "../../global-id.js";
import type { ComponentParent, RouteParent } from "../../parent-types.js";
import { imageParent } from "../image.js";
import { languageShown, showOf } from "../../frozen-plan.js";
import { planIdOf } from "./plan-over-time.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";
import { mealParent } from "../make-parents.js";
import { textResolvers } from "./words.js";
import { anybodysSide } from "./readers-side.js";
import { guidanceOfComponent } from "./storage-guidance.js";

export const componentResolvers: FieldsToResolve<ComponentResolvers, ComponentParent> = {
  id: ({ frozen, slug }) =>
    globalId({ kind: "Component", revision: frozen.published.id, slug, ...languageShown(frozen) }),
  componentId: async ({ frozen, slug }, _, { loaders }) =>
    `${await planIdOf(frozen.published, loaders)}#component-${slug}`,
  image: ({ frozen, image }) => imageParent(frozen.published.publisher, image),
  ...textResolvers,
  equipment: ({ equipment = [] }) => equipment,
  credits: ({ credits = [] }) => credits,
  plan: ({ frozen }) => frozen.published,
  lines: ({ frozen, lines }) => lines.map((line) => ({ ...line, frozen })),
  yield: (component) => showWritten(component.yield.amount, component, showOf(component.frozen)),
  yieldSource: (component) => component.yield.source,
  batch: ({ batch }) => ({
    min: toNumber(batch.min),
    max: batch.max === null ? null : toNumber(batch.max),
    increment: batch.increment === null ? null : toNumber(batch.increment),
  }),
  routes: ({ frozen, routes }) => routes.map((route) => ({ ...route, frozen })),
  storage: async (component, { region, madeAt, kitchen }, { deps, loaders }) => {
    const { frozen } = component;
    const { household } = await anybodysSide(loaders, [frozen.bundle]);
    const given = { region, regions: household.regions ?? [], from: madeAt, fromName: "madeAt", audience: kitchen };
    const kept = guideComponent(component, frozen.bundle.components, given, deps.clock, loaders.readRules);
    return guidanceOfComponent(valueOf(await kept), frozen);
  },
  meals: ({ frozen, slug }) =>
    frozen.bundle.plan.meals
      .filter((meal) => meal.lines.some(({ item }) => item.kind === "COMPONENT" && item.component === slug))
      .map((meal) => mealParent(frozen, meal)),
};

export const routeResolvers: FieldsToResolve<RouteResolvers, RouteParent> = {
  lines: ({ frozen, lines }) => lines.map((line) => ({ ...line, frozen })),
};
