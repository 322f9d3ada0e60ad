// @ts-nocheck
import { readSeeds } from "../seeds/load-seeds.js";
import { noHousehold, type Household } from "../src/domain/model/household.js";
import type { PlanBundle } from "../src/domain/model/plan.js";
import { scalePlan } from "../src/domain/plan/scale-plan.js";
import type { ScaledPlan } from "../src/domain/plan/scaled.js";
import { shop } from "../src/domain/plan/shop.js";
import { compared, result, type Benchmark, type BenchmarkResult } from "./benchmark.js";

const household: Household = { ...noHousehold, region: "XA", currency: "XTS" };

const scaled = (bundle: PlanBundle, servings: number): ScaledPlan => {
  const answer = scalePlan(bundle, servings, household);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
};

/** Scale and shop one demo plan, against reading and writing the same plan's document as JSON. */
async function onePlan(): Promise<readonly BenchmarkResult[]> {
  const { bundles } = await readSeeds("seeds");
  return bundles.map((bundle) => {
    const text = JSON.stringify(bundle);
    let servings = 0;
    const [ours = 0, json = 1, readAndShop = 0, readOnly = 0] = compared([
      () => shop([scaled(bundle, 1 + (servings++ % 50))], household),
      () => JSON.stringify(JSON.parse(text)),
      () => shop([scaled(JSON.parse(text) as PlanBundle, 1 + (servings++ % 50))], household),
      () => JSON.parse(text) as unknown,
    ]);
    const us = (milliseconds: number): string => `${(milliseconds * 1000).toFixed(0)} us`;
    const detail =
      `${us(ours)} for ${bundle.components.length} components and ${bundle.foods.length} foods, ` +
      `${us(readAndShop - readOnly)} the first time after it was read and is checked; ` +
      `JSON of ${text.length} characters ${us(json)}`;
    return result(`scale and shop ${bundle.plan.slug} / its JSON`, ours / json, { atMost: 1 }, detail);
  });
}

/** One list over 1000 plans against one over 100: ten times the plans should take about ten times as long. */
async function manyPlans(): Promise<readonly BenchmarkResult[]> {
  const { bundles } = await readSeeds("seeds");
  const plans = Array.from({ length: 1000 }, (_, at) => {
    const bundle = bundles[at % bundles.length];
    if (bundle === undefined) throw new Error("the demo has no plans");
    return scaled({ ...bundle, plan: { ...bundle.plan, slug: `${bundle.plan.slug}-${at}` } }, 1 + (at % 30));
  });
  const hundred = plans.slice(0, 100);
  const [many = 0, few = 1] = compared([() => shop(plans, household), () => shop(hundred, household)], 9);
  return [
    result(
      "one list of 1000 plans / of 100",
      many / few,
      { atMost: 11 },
      `${many.toFixed(1)} ms and ${few.toFixed(1)} ms`,
    ),
  ];
}

export const engineBenchmarks: readonly Benchmark[] = [
  { name: "scale", run: onePlan },
  { name: "merge", run: manyPlans },
];
