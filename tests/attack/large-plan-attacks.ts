import { get, graphql, type AttackRequest } from "./attack-request.js";

const ofPlan = [
  ...["", ".json", ".md", ".html", ".csv", ".ics", ".txt"],
  ...[
    "/list",
    "/list.md",
    "/list.csv",
    "/list.txt",
    "/session",
    "/storage",
    "/mail",
    "/servings-table",
    "/revisions/1",
  ],
];
const fields = [
  "allergens { lists { __typename } alsoContains }",
  "meals { lines { amount { text } food { name } } }",
  "components { component { title } lines { amount { text } } }",
  "shoppingList { lines { need { text } uses { asWritten amount { text } } } }",
  "storage { days advice }",
  "cautions { __typename }",
  "session { totalMinutes }",
  "warnings { message }",
];

/** Every form and every part of one plan that has thousands of lines. */
export const largePlanAttacks = (publisher: string, slug: string): readonly AttackRequest[] => [
  ...ofPlan.map((part) => get(`a large plan: ${part}`, `/v1/plans/${publisher}/${slug}${part}?servings=7`)),
  ...["", "/list", "/card"].map((part) => get(`a page of a large plan: ${part}`, `/p/${publisher}/${slug}${part}`)),
  ...fields.map((inside) =>
    graphql(
      `a large plan over GraphQL: ${inside}`,
      `{ plan(publisher: "${publisher}", slug: "${slug}") { scaled(servings: 7) { ${inside} } } }`,
    ),
  ),
];
