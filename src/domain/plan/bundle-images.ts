import type { Component } from "../model/component.js";
import type { Image } from "../model/image.js";
import type { Meal, PlanBundle } from "../model/plan.js";
import type { Path } from "../problem.js";

interface ImageInPlan {
  readonly path: Path;
  readonly image: Image;
}

/** The pictures of a plan, its meals and its components, each with the way to it. */
export function imagesOf({ plan, components }: PlanBundle): readonly ImageInPlan[] {
  const of = (path: Path, image: Image | undefined): readonly ImageInPlan[] =>
    image === undefined ? [] : [{ path: [...path, "image"], image }];
  return [
    ...of([], plan.image),
    ...plan.meals.flatMap((meal) => of(["meals", meal.slug], meal.image)),
    ...components.flatMap((component) => of(["components", component.slug], component.image)),
  ];
}

/** The same plan with other pictures; null: none in that place. */
export function mapImages(bundle: PlanBundle, change: (image: Image) => Image | null): PlanBundle {
  const changed = <Thing extends Meal | Component | PlanBundle["plan"]>(thing: Thing): Thing => {
    if (thing.image === undefined) return thing;
    const { image, ...rest } = thing;
    const next = change(image);
    return (next === null ? rest : { ...rest, image: next }) as Thing;
  };
  const plan = changed(bundle.plan);
  return {
    ...bundle,
    plan: { ...plan, meals: plan.meals.map(changed) },
    components: bundle.components.map(changed),
  };
}
