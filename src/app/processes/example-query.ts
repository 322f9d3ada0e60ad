import type { RevisionSummary } from "../../services/deps.js";

/** A command to paste: the plan for seven people with its shopping list, or the list of plans where there is none yet. */
export function exampleQuery(address: string, plan: Pick<RevisionSummary, "publisher" | "slug"> | null): string {
  const query =
    plan === null
      ? "{ plans { edges { node { title } } } }"
      : `{ plan(publisher: "${plan.publisher}", slug: "${plan.slug}") { title scaling(servings: 7) { scaled { ` +
        "components { component { title } batches made { text } leftOver { text } } " +
        "shoppingList { lines { food { name } need { text } buy { count pack { name } } } cost { atTill { amount currency } } } } problems { where text } } } }";
  return `curl -s ${address}/graphql -H 'content-type: application/json' -d '${JSON.stringify({ query })}'`;
}
