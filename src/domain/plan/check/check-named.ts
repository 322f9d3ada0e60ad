import type { Step } from "../../model/component.js";
import type { Food } from "../../model/food.js";
import { openTableNumber } from "../../model/open-table-slug.js";
import type { Line } from "../../model/line.js";
import type { PlanBundle } from "../../model/plan.js";
import type { Path } from "../../problem.js";
import { toBase } from "../../quantity/convert.js";
import type { Finding } from "./finding.js";

interface Made {
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  readonly path: Path;
}

/** Everything of a plan that has lines and steps: meals, components, and their other routes. */
const everythingMade = ({ plan, components }: PlanBundle): readonly Made[] => [
  ...plan.meals.map(({ slug, lines, steps }) => ({ lines, steps, path: ["meals", slug] })),
  ...components.flatMap(({ slug, lines, steps, routes }) => [
    { lines, steps, path: ["components", slug] },
    ...routes.map((route) => ({ ...route, path: ["components", slug, "routes", route.name] })),
  ]),
];

/**
 * An appliance that steps take up and the plan's kitchen does not name; each once, where it is first asked for. A kitchen that
 * names none at all is not described.
 */
function appliances(bundle: PlanBundle): readonly Finding[] {
  const has = new Set(Object.keys(bundle.plan.kitchen.appliances));
  if (has.size === 0) return [];
  return everythingMade(bundle).flatMap(({ steps, path }) =>
    steps.flatMap(({ id, appliance }): readonly Finding[] => {
      if (appliance === null || has.has(appliance)) return [];
      has.add(appliance);
      return [{ code: "APPLIANCE_NOT_IN_KITCHEN", severity: "LOOK", path: [...path, "steps", id], appliance }];
    }),
  );
}

const formsOf = ({ densities, edible }: Food): readonly string[] => [
  ...new Set([...densities, ...edible].flatMap(({ form }) => form ?? [])),
];

/** Whether the amount is turned into a weight by a density of the form: another form's is never used. */
function hangsOnForm({ amount }: Line, food: Food): boolean {
  const base = amount === null ? null : toBase(amount, food, null);
  return base?.ok === true && base.amount.dimension === "VOLUME" && food.shoppedBy !== "VOLUME";
}

/** A form of which the food has no fact, so that naming it picks nothing. */
function forms(bundle: PlanBundle): readonly Finding[] {
  const foods = new Map(bundle.foods.map((food) => [food.slug, food]));
  return everythingMade(bundle).flatMap(({ lines, path }) =>
    lines.flatMap((line): readonly Finding[] => {
      const { form, item, id } = line;
      const food = item.kind === "FOOD" ? foods.get(item.food) : undefined;
      if (form === null || food === undefined || formsOf(food).includes(form)) return [];
      const severity = hangsOnForm(line, food) ? "STOPS" : "LOOK";
      const at = [...path, "lines", id, "form"];
      return [{ code: "FORM_UNKNOWN", severity, path: at, food: food.slug, form, known: formsOf(food) }];
    }),
  );
}

const isOpenTableRow = ({ slug, owner, ndbNo }: Food): boolean =>
  owner === undefined && ndbNo !== null && openTableNumber(slug) === ndbNo;

/** Foods that are a row of the open table and nothing else; each once, at the first line that names it. */
function openTableRows(bundle: PlanBundle): readonly Finding[] {
  const left = new Set(bundle.foods.filter(isOpenTableRow).map(({ slug }) => slug));
  if (left.size === 0) return [];
  return everythingMade(bundle).flatMap(({ lines, path }) =>
    lines.flatMap(({ id, item, swaps }) =>
      [...(item.kind === "FOOD" ? [item.food] : []), ...swaps.map(({ food }) => food)].flatMap(
        (food): readonly Finding[] =>
          left.delete(food)
            ? [{ code: "FOOD_OF_OPEN_TABLE", severity: "LOOK", path: [...path, "lines", id], food }]
            : [],
      ),
    ),
  );
}

/** What lines and steps name that the plan's kitchen or the food does not have. */
export const checkNamed = (bundle: PlanBundle): readonly Finding[] => [
  ...appliances(bundle),
  ...forms(bundle),
  ...openTableRows(bundle),
];
