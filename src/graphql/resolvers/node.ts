import { findOwnFood } from "../../services/foods/find-own-food.js";
import type { Context } from "../context.js";
import { problemsError } from "../errors.js";
import { frozenInLanguage } from "../frozen-plan.js";
import { readGlobalId, type NodeRef } from "../global-id.js";
import type { NodeParent } from "../parent-types.js";
import { componentParent, foodParent, mealParent } from "./make-parents.js";

/** What an id points at; null if it is gone. An id that this service never gave out is the caller's error. */
export async function loadNode(id: string, context: Context): Promise<NodeParent | null> {
  const ref = readGlobalId(id);
  if (ref === null) {
    throw problemsError([
      { code: "BAD_SHAPE", path: ["id"], expected: "an id this service gave out", got: "something else" },
    ]);
  }
  return find(ref, context);
}

async function find(ref: NodeRef, { loaders, deps, actor }: Context): Promise<NodeParent | null> {
  if (ref.kind === "Publisher") {
    const publisher = await loaders.publishersById.load(ref.id);
    return publisher && { ...publisher, __typename: ref.kind };
  }
  if (ref.kind === "Food" && ref.revision === null) {
    const [publisher = "", own] = ref.slug.split("/");
    const food =
      own === undefined ? await loaders.foods.load(ref.slug) : await findOwnFood(deps, actor, { publisher, slug: own });
    return food && { ...foodParent(food, null), __typename: ref.kind };
  }
  const published = ref.revision === null ? null : await loaders.plansById.load(ref.revision);
  if (published === null) return null;
  if (ref.kind === "Plan") return { ...published, __typename: ref.kind };
  const written = await loaders.frozen(published);
  const language = "language" in ref ? (ref.language ?? null) : null;
  const frozen = frozenInLanguage(written, language);
  // A language that the revision does not have is no object of it.
  if (language !== null && frozen.bundle.plan.locale !== language) return null;
  if (ref.kind === "Food") {
    const food = frozen.foods.get(ref.slug);
    return food ? { ...foodParent(food, published), __typename: ref.kind } : null;
  }
  if (ref.kind === "Component") {
    const component = frozen.components.get(ref.slug);
    return component ? { ...componentParent(frozen, component), __typename: ref.kind } : null;
  }
  const meal = frozen.bundle.plan.meals.find(({ slug }) => slug === ref.slug);
  return meal ? { ...mealParent(frozen, meal), __typename: ref.kind } : null;
}
