import type { Plan, PlanBundle } from "../../domain/model/plan.js";
import { frozenTranslations } from "../../domain/plan/translate/texts-of.js";
import type { Prisma } from "../generated/client.js";
import { fromJson } from "../sql/json-column.js";

/** Number of the shape documents are frozen in now. A change of the model that old documents lack a field of raises it. */
export const documentFormat = 1;

/** The bundle with its components and foods in the order of their slugs: the same content is the same document. */
export const documentOf = (bundle: PlanBundle): PlanBundle => {
  const translations = frozenTranslations(bundle);
  return {
    plan: withoutDates(bundle.plan),
    components: bundle.components.toSorted(bySlug),
    foods: bundle.foods.toSorted(bySlug),
    ...(translations.length > 0 && { translations }),
  };
};

/** Characters of the JSON that a document was read from. */
const sizes = new WeakMap<PlanBundle, number>();

/** The same plan is the same revision, whenever it is published. */
const withoutDates = ({ publishAt: _publish, withdrawAt: _withdraw, ...plan }: Plan): Plan => plan;

/** Reads a document of any format so far. @param text its JSON */
export function bundleOf(id: string, format: number, text: string): PlanBundle {
  if (format > documentFormat) throw new Error(`revision ${id} was frozen by a newer version of the program`);
  const bundle = fromJson<PlanBundle>(JSON.parse(text) as Prisma.JsonValue);
  sizes.set(bundle, text.length);
  return bundle;
}

/** How many characters of JSON a document is; writing one anew to know it takes as long as reading it. */
export const documentSize = (bundle: PlanBundle): number => sizes.get(bundle) ?? JSON.stringify(bundle).length;

const bySlug = (a: { readonly slug: string }, b: { readonly slug: string }): number =>
  a.slug < b.slug ? -1 : a.slug > b.slug ? 1 : 0;
