import type { components, paths } from "./generated/rest.js";

type Schemas = components["schemas"];
type Query<Path extends keyof paths> = paths[Path] extends {
  get: { parameters: { query?: infer Asked } };
}
  ? NonNullable<Asked>
  : never;

/** Which plan: both are parts of its address. */
export interface PlanName {
  readonly publisher: string;
  readonly slug: string;
}

/** A reader's side: `{ servings: 4, diet: ["vegan"], region: "DE" }`. */
export type Household = Query<"/v1/plans/{publisher}/{slug}.json">;
/** Beside the household, the parts of a plan: `{ include: ["meals,shoppingList"] }`. */
export type PlanParts = Query<"/v1/plans/{publisher}/{slug}.brief">;
/** What plans are found by: `{ diet: ["vegan"], "max-session-minutes": 90 }`. */
export type PlanFilter = Query<"/v1/plans">;
export type ChangeFilter = Query<"/v1/changes">;
/** Forms of a plan in text: Markdown, plain text, a calendar (needs `start` and `zone`), and schema.org's data. */
export type TextForm = "md" | "txt" | "ics" | "jsonld";

export type Plan = Schemas["Plan"];
export type BriefPlan = Schemas["BriefPlan"];
export type PlanPage = Schemas["PlanPage"];
export type PlanSummary = Schemas["PlanSummary"];
export type ShoppingListQuestion = Schemas["ShoppingListQuestion"];
export type ShoppingListAnswer = Schemas["ShoppingListAnswer"];
export type ShoppingLine = Schemas["ShoppingLine"];
export type ChangePage = Schemas["ChangePage"];
export type Vocabulary = Schemas["Vocabulary"];
