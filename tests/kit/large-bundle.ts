import type { Line } from "../../src/domain/model/line.js";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import { demo } from "../graphql/open-test-app.js";

export interface Size {
  readonly components: number;
  /** Of each component and each meal, beside those that take a component. */
  readonly lines: number;
  readonly meals: number;
}

const sources = demo.bundles.flatMap(({ components }) => components);
const foodLines = sources.flatMap(({ lines }) => lines).filter(({ item }) => item.kind === "FOOD");

function around<T>(entries: readonly T[], at: number): T {
  const entry = entries[at % entries.length];
  if (entry === undefined) throw new Error("the demo is empty");
  return entry;
}

const linesFrom = (first: number, count: number): readonly Line[] =>
  Array.from({ length: count }, (_, at) => ({ ...around(foodLines, first + at), id: `line-${String(at)}` }));

const taking = (at: number): Line => ({
  ...around(foodLines, 0),
  id: `component-${String(at)}`,
  item: { kind: "COMPONENT", component: `component-${String(at)}` },
  ...{ written: "1 batch", amount: { low: "1", high: "1", unit: "batch" } },
  ...{ rule: "PROPORTIONAL", exponent: null, form: null, mark: null, swaps: [] },
});

/** A plan as large as asked, of the demo's foods, lines and components; they are cooked in no order. */
export function largeBundle({ components, lines, meals }: Size): PlanBundle {
  const [plan] = demo.plans;
  const [meal] = plan?.meals ?? [];
  if (plan === undefined || meal === undefined) throw new Error("the demo is empty");
  return {
    plan: {
      ...plan,
      slug: "large",
      meals: Array.from({ length: meals }, (_, at) => ({
        ...meal,
        ...{ slug: `meal-${String(at)}`, day: at % 5, steps: [] },
        lines: [
          ...Array.from({ length: components }, (_, each) => each)
            .filter((each) => each % meals === at)
            .map(taking),
          ...linesFrom(at * 3, lines),
        ],
      })),
    },
    components: Array.from({ length: components }, (_, at) => ({
      ...around(sources, at),
      ...{ slug: `component-${String(at)}`, lines: linesFrom(at * 7, lines), steps: [], routes: [] },
    })),
    foods: demo.foods,
  };
}
