import { readLocale } from "../../services/answers/read-household.js";
import { findOwnFood } from "../../services/foods/find-own-food.js";
import type { Context } from "../context.js";
import { problemsError } from "../errors.js";
import { frozenInLanguage } from "../frozen-plan.js";
import { readGlobalId, type NodeRef } from "../global-id.js";
import type { NodeParent } from "../parent-types.js";
import { componentParent, foodOfPlan, foodParent, mealParent } from "./make-parents.js";

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
  const language = "language" in ref ? (ref.language ?? null) : null;
  // As it is given out; another spelling of a language is no object.
  const read = readLocale(language, ["id"]);
  if (!read.ok || read.value !== language) return null;
  if (ref.kind === "Food" && ref.revision === null) {
    const [publisher = "", own] = ref.slug.split("/");
    const food =
      own === undefined ? await loaders.foods.load(ref.slug) : await findOwnFood(deps, actor, { publisher, slug: own });
    const parent = food && foodParent(food, null, language);
    // Only an id of a food that is called otherwise in a language names the language.
    return parent?.locale === language ? { ...parent, __typename: ref.kind } : null;
  }
  const published = ref.revision === null ? null : await loaders.plansById.load(ref.revision);
  if (published === null) return null;
  if (ref.kind === "Plan") return { ...published, __typename: ref.kind };
  const written = await loaders.frozen(published);
  if (language === published.locale) return null;
  const frozen = frozenInLanguage(written, language);
  if (ref.kind === "Food")
    return frozen.foods.has(ref.slug) ? { ...foodOfPlan(frozen, ref.slug), __typename: ref.kind } : null;
  if (ref.kind === "Component") {
    const component = frozen.components.get(ref.slug);
    return component ? { ...componentParent(frozen, component), __typename: ref.kind } : null;
  }
  const meal = frozen.bundle.plan.meals.find(({ slug }) => slug === ref.slug);
  return meal ? { ...mealParent(frozen, meal), __typename: ref.kind } : null;
}
