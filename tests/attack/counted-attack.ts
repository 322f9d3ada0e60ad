import { expect } from "vitest";
import { demo } from "../graphql/open-test-app.js";
import type { Target } from "./attack-request.js";

/** What one attack was computed for, and what it was charged before that. */
export interface CountedAttack {
  readonly name: string;
  readonly steps: number;
  /** Points. 0: it was refused before it had a price. */
  readonly priced: number;
  /** Of the request. */
  readonly bytes: number;
}

/** The most steps that one request may be computed for, whatever it says. */
const mostSteps = 1_000_000;
/** Steps for each point that is asked for before anything is run. */
const mostForAPoint = 1_000;

/** What is attacked where only the demo is loaded. */
export const demoTarget: Target = {
  publisher: demo.publisher.slug,
  plans: demo.plans.map(({ slug }) => slug),
  foods: demo.foods.map(({ slug }) => slug),
  components: demo.components.map(({ slug }) => slug),
};

/** What a price pays for; what is refused before it has one is charged by its length. */
export const payable = ({ priced, bytes }: CountedAttack): number => (priced > 0 ? mostForAPoint * priced : 2 * bytes);

/** Documents are charged afterwards, and never take more than their length. */
export const readable = ({ bytes }: CountedAttack): number => 2 * bytes;

/** Prints the worst of them, and fails where one takes too many steps: at all, or for what it pays. */
export function expectFewSteps(
  kind: string,
  measured: readonly CountedAttack[],
  { most, counted }: { readonly most: (attack: CountedAttack) => number; readonly counted: number },
): void {
  const worst = measured.toSorted((a, b) => b.steps - a.steps)[0];
  const cheapest = measured.toSorted((a, b) => b.steps / (b.priced + 1) - a.steps / (a.priced + 1))[0];
  console.log(
    `${String(measured.length)} ${kind}; most steps ${JSON.stringify(worst)}; most for a point ${JSON.stringify(cheapest)}`,
  );
  expect(measured.filter(({ steps }) => steps > 0).length).toBeGreaterThan(counted);
  expect(measured.filter(({ steps }) => steps > mostSteps)).toEqual([]);
  expect(measured.filter((each) => each.steps > most(each))).toEqual([]);
}
