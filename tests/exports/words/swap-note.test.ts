import { expect, it } from "vitest";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import type { Line } from "../../../src/domain/model/line.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { answerOf } from "../../kit/answer-of.js";
import { addresses, demo } from "../demo-answer.js";

const linesOf = ({ plan, components }: PlanBundle): readonly Line[] =>
  [...plan.meals, ...components].flatMap(({ lines }) => lines);

/** The demo's plans whose swaps hold a note once it is put there, with the first swap of each. */
const swapping = demo.bundles.flatMap((bundle) => {
  const line = linesOf(bundle).find(({ item, swaps }) => item.kind === "FOOD" && swaps.length > 0);
  const swap = line?.swaps[0];
  return line?.item.kind === "FOOD" && swap !== undefined ? [{ bundle, from: line.item.food, to: swap.food }] : [];
});

const noted = <T>(value: T, to: string): T =>
  JSON.parse(
    JSON.stringify(value, (_, each: unknown) =>
      typeof each === "object" && each !== null && "ratio" in each && "food" in each && each.food === to
        ? { ...each, note: "rinse it twice" }
        : each,
    ),
  ) as T;

it.each(swapping)(
  "the note of a swap stands where one cooks once it is taken: $from to $to",
  ({ bundle, from, to }) => {
    const written = noted(bundle, to);
    const { serves } = written.plan;
    const asWritten = answerOf(written, serves, { region: "XA", currency: "XTS" });
    const swapped = answerOf(written, serves, { region: "XA", currency: "XTS", swaps: [{ from, to }] });
    expect(planMarkdown(asWritten, addresses, null)).not.toContain("rinse it twice");
    expect(planMarkdown(swapped, addresses, null)).toContain("rinse it twice");
  },
);
