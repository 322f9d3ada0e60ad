import { ceilForgiving } from "../../component/batch.js";
import type { BatchRule, Step } from "../../model/component.js";
import { growthOf } from "../../prep-session/solver/step-growth.js";
import { isOven } from "../../model/appliances.js";
import { isCooking, stepsBefore } from "../../prep-session/heating.js";
import type { SessionStep } from "../../prep-session/session.js";
import { toNumber } from "../../quantity/rational.js";
import { batchGrowth, mealGrowth } from "../demand.js";
import type { ScaledComponent, ScaledLine, ScaledMeal } from "../scaled.js";

/**
 * Kilograms or litres that one load holds where the writer says neither `at-most` nor how much a load takes: a large
 * household pot, a full oven tray. Common practice, no source.
 */
const roomOfALoad = { pot: 10, tray: 3 } as const;

/**
 * Minutes that a litre more takes to boil: 4.19 kJ/(kg K) from 15 to 100 °C is 356 kJ, of a 2 kW ring with six tenths
 * of its heat in the pot. The properties of water are in any handbook; the ring is common practice, no source.
 */
const boilMinutesPerLitre = 5;

/** What is made: a component or a meal, as its steps see it. */
interface Made {
  readonly steps: readonly Step[];
  readonly lines: readonly ScaledLine[];
  /** Of a component its batches; of a meal servings / serves. */
  readonly batches: number;
  /** Pots or trays by the component's own rule. */
  readonly loads: number;
  /** The most one load takes, by that rule. */
  readonly max: BatchRule["max"];
  /** How a line grows from one batch. */
  readonly growth: typeof batchGrowth;
}

const base = (line: ScaledLine, dimension: "MASS" | "VOLUME"): number => {
  if (line.amount?.dimension === dimension) return line.amount.high / 1000;
  const bought = line.amount?.dimension === "COUNT" && line.need?.dimension === dimension;
  return bought ? line.need.high / 1000 : 0;
};

/** Kilograms and litres that stand on the heat in a step, all batches together. A soak's water is gone by then. */
function inThePot(step: Step, { steps, lines }: Made): number {
  const so = [step, ...stepsBefore(step, steps)];
  const named = so.some((each) => each.lines.length > 0);
  return lines.reduce((sum, line) => {
    const by = named ? so.filter((each) => each.lines.includes(line.line.id)) : so;
    if (by.length === 0) return sum;
    const poured = by.every(({ eveningBefore }) => eveningBefore);
    return sum + base(line, "MASS") + (poured ? 0 : base(line, "VOLUME"));
  }, 0);
}

/** Pots or trays that a cooking step needs. */
function loadsOfCooking(step: Step, made: Made): number {
  const { batches, loads, max, steps } = made;
  const written = step.loadBatches === null ? 1 : ceilForgiving(batches / toNumber(step.loadBatches));
  if (max !== null || step.loadBatches !== null) return Math.max(1, written, max === null ? 1 : loads);
  if (batches <= 1) return 1;
  const room = isOven(step.appliance) ? roomOfALoad.tray : roomOfALoad.pot;
  const alike = steps.filter((each) => each.appliance === step.appliance && isCooking(each));
  const held = Math.max(...alike.map((each) => inThePot(each, made)));
  // One batch fits, however large its writer's pot is.
  return Math.max(1, ceilForgiving(held / Math.max(room, held / batches)));
}

/** Minutes that the litres of a load beyond those of one batch take to boil. */
function longerToBoil(step: Step, { lines, batches, growth }: Made, loads: number): number {
  if (isOven(step.appliance) || step.attention === "HANDS_ON") return 0;
  const liquid = lines.filter(({ line }) => step.lines.includes(line.id));
  const [all, one] = liquid.reduce(
    ([sum, single], line) => {
      const grown = growth(line, batches);
      const litres = base(line, "VOLUME");
      return [sum + litres, single + (grown > 0 ? litres / grown : 0)];
    },
    [0, 0],
  );
  return Math.max(0, all / loads - one) * boilMinutesPerLitre;
}

function settled(step: Step, made: Made): SessionStep {
  const grows = growthOf(step);
  if (!isCooking(step)) {
    if (grows !== "PER_LOAD") return { ...step, grows };
    const of = step.loadBatches === null ? 1 : ceilForgiving(made.batches / toNumber(step.loadBatches));
    return { ...step, grows, loads: Math.max(1, made.loads, of) };
  }
  const loads = loadsOfCooking(step, made);
  if (grows === "PER_BATCH") return { ...step, grows, loads };
  const heatUp = (step.heatUpMinutes ?? 0) * (made.batches / loads);
  const more = step.heatUpMinutes === undefined && grows === "PER_LOAD" ? longerToBoil(step, made, loads) : 0;
  // A pot holds what it holds, also where the writer says that its time is fixed.
  return { ...step, grows: "PER_LOAD", loads, minutes: step.minutes + heatUp + more };
}

/** The steps of a component as it is made, with what its writer left open settled: how they grow, in how many loads. */
export function resolvedSteps({ component, route, lines, batches, loads }: ScaledComponent): readonly SessionStep[] {
  const { max } = component.batch;
  const made: Made = { steps: route?.steps ?? component.steps, lines, batches, loads, max, growth: batchGrowth };
  return made.steps.map((step) => settled(step, made));
}

/** The same of a meal, whose batch is what it is written for. */
export function resolvedMealSteps({ meal, lines, factor }: ScaledMeal): readonly SessionStep[] {
  const made: Made = { steps: meal.steps, lines, batches: factor, loads: 1, max: null, growth: mealGrowth };
  return made.steps.map((step) => settled(step, made));
}
