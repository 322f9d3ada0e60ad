/** What a reader asked a page for, as it was typed: it is shown again, whatever is wrong with it. Blank: not asked. */
export interface PlanForm {
  readonly servings: string;
  readonly revision: string;
  readonly region: string;
  readonly currency: string;
  readonly measures: string;
  readonly locale: string;
  /** Codes. */
  readonly diets: readonly string[];
  /** Codes, or names in any language. */
  readonly avoidAllergens: readonly string[];
  /** Slugs of foods, or names in any language. */
  readonly dislikes: readonly string[];
  /** `2x1/2`: so many people, and the share of a serving each eats. */
  readonly eaters: readonly string[];
  /** `from:to`, slugs of foods. */
  readonly swaps: readonly string[];
  /** How to come by components in general. */
  readonly routes: string;
  /** `component:name` of a route. */
  readonly route: readonly string[];
  /** `carrot:500 g`: what is in the house already. */
  readonly onHand: readonly string[];
  /** What the clock on the kitchen wall says: `2026-03-01T10:00`. */
  readonly start: string;
  readonly zone: string;
  readonly cooks: string;
  /** `oven-shelf:1`: how many there are. */
  readonly appliances: readonly string[];
}

export const blankForm: PlanForm = {
  servings: "",
  revision: "",
  region: "",
  currency: "",
  measures: "",
  locale: "",
  diets: [],
  avoidAllergens: [],
  dislikes: [],
  eaters: [],
  swaps: [],
  routes: "",
  route: [],
  onHand: [],
  start: "",
  zone: "",
  cooks: "",
  appliances: [],
};

/** Names in the address, in the order in which they are written there. */
export const formFields = {
  servings: "servings",
  revision: "revision",
  region: "region",
  currency: "currency",
  measures: "measures",
  locale: "locale",
  diets: "diet",
  avoidAllergens: "avoid-allergen",
  dislikes: "dislike",
  eaters: "eaters",
  swaps: "swap",
  routes: "routes",
  route: "route",
  onHand: "on-hand",
  start: "start",
  zone: "zone",
  cooks: "cooks",
  appliances: "appliance",
} as const satisfies Record<keyof PlanForm, string>;

/** Fields of one text that holds several, with commas between them, and which of the form they are. */
export const textsOfSeveral = {
  "avoid-allergens-typed": "avoidAllergens",
  "dislikes-typed": "dislikes",
} as const satisfies Readonly<Record<string, keyof PlanForm>>;

/** `?servings=6&diet=vegan`, or nothing for a blank form: one spelling for one question. */
export function formQuery(form: PlanForm): string {
  const query = new URLSearchParams();
  for (const key of Object.keys(formFields) as (keyof PlanForm)[]) {
    const value = form[key];
    for (const each of typeof value === "string" ? [value] : value) {
      if (each !== "") query.append(formFields[key], each);
    }
  }
  const text = query.toString();
  return text === "" ? "" : `?${text}`;
}
