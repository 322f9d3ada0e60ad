import type { PlanBundle } from "../../domain/model/plan.js";
import type { Prisma } from "../generated/client.js";
import { fromJson } from "../sql/json-column.js";

/** Number of the shape documents are frozen in now. A change of the model that old documents lack a field of raises it. */
export const documentFormat = 1;

/** The bundle with its components and foods in the order of their slugs: the same content is the same document. */
export const documentOf = ({ plan, components, foods }: PlanBundle): PlanBundle => ({
  plan,
  components: components.toSorted(bySlug),
  foods: foods.toSorted(bySlug),
});

/** Reads a document of any format so far. */
export function bundleOf(id: string, format: number, document: Prisma.JsonValue): PlanBundle {
  if (format > documentFormat) throw new Error(`revision ${id} was frozen by a newer version of the program`);
  return fromJson(document);
}

const bySlug = (a: { readonly slug: string }, b: { readonly slug: string }): number =>
  a.slug < b.slug ? -1 : a.slug > b.slug ? 1 : 0;
