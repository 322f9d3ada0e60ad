// @ts-nocheck
import { describe, expect, it } from "vitest";
import type { Food } from "../../../src/domain/model/food.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { scalePlan } from "../../../src/domain/plan/scale-plan.js";
import { shop } from "../../../src/domain/plan/shop.js";
import {
  bundle,
  component,
  edible,
  food,
  household,
  line,
  made,
  meal,
  of,
  onHand,
  own,
  part,
  published,
} from "../../kit/builders.js";
import { referenceTable, sourceOf, type Row } from "../quantity/reference-table.js";

const rows = referenceTable("yields");
const cell = (row: Row, name: string): string => row[name] ?? "";
const titled = (list: readonly Row[]): [string, Row][] =>
  list.map((row) => [`${cell(row, "yield_id")} (${sourceOf(row)})`, row]);

/** Base units of one; what is counted (a head, a bunch, a wedge) is a piece. */
const sizes: Readonly<Record<string, number>> = {
  g: 1,
  lb: 453.59237,
  oz: 28.349523125,
  ml: 1,
  "us-cup": 236.5882365,
  "us-tbsp": 14.78676478125,
  "us-tsp": 4.92892159375,
};
const unitOf = (printed: string): string => {
  const written = printed.toLowerCase().replace(" ", "-");
  return written in sizes ? written : "piece";
};

/** `"18.5"` as the exact fraction the model stores. */
const rational = (decimal: string): string => {
  const [whole = "0", places = ""] = decimal.split(".");
  return places === "" ? whole : `${BigInt(whole + places)}/${10n ** BigInt(places.length)}`;
};

const input = (row: Row): string => `${rational(cell(row, "in_qty"))} ${unitOf(cell(row, "in_unit"))}`;
const output = (row: Row): string => {
  const most = cell(row, "out_qty_max");
  const range = most === "" ? "" : `-${rational(most)}`;
  return `${rational(cell(row, "out_qty"))}${range} ${unitOf(cell(row, "out_unit"))}`;
};
const inBase = (row: Row, end: "in" | "out"): number =>
  Number(cell(row, `${end}_qty`)) * (sizes[unitOf(cell(row, `${end}_unit`))] ?? 1);

/** What has to be bought of "it" for a number of servings. */
const need = (plan: PlanBundle, servings: number): number => {
  const scaled = scalePlan(plan, servings, household());
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  const [bill, ...others] = shop([scaled.value], household()).lines;
  expect(others).toEqual([]);
  expect(bill!.food.slug).toBe("it");
  return bill!.need!.high;
};

const shoppedAs = (row: Row): Food => {
  const unit = unitOf(cell(row, "in_unit"));
  const shoppedBy = unit === "piece" ? "COUNT" : ["g", "lb", "oz"].includes(unit) ? "MASS" : "VOLUME";
  return food("it", { shoppedBy });
};

describe("every published yield, through the engine", () => {
  it.each(titled(rows))("%s: so much out takes so much in", (_, row) => {
    const least = output(row).replace(/-\d\S*(?= )/, "");
    const cooked = component("cooked", output(row), [line(input(row), "it")]);
    const plan = bundle([meal("plate", [line(least, made("cooked"))])], [cooked], [shoppedAs(row)]);
    expect(need(plan, 1)).toBeCloseTo(inBase(row, "in"), 9);
    expect(need(plan, 7) / (7 * inBase(row, "in"))).toBeCloseTo(1, 12);
  });

  const trims = rows.filter(
    (row) => ["mass", "ep_to_ap_factor"].includes(cell(row, "basis")) && inBase(row, "out") <= inBase(row, "in"),
  );

  it.each(titled(trims))("%s: so much ready is so much as bought, and the printed percentage agrees", (_, row) => {
    const share = inBase(row, "out") / inBase(row, "in");
    const trimmed = food("it", { edible: [{ ...edible(share), source: published(cell(row, "source")) }] });
    const ready = line(output(row), "it", { measured: "READY" });
    const bought = need(bundle([meal("plate", [ready])], [], [trimmed]), 1);
    expect(bought / inBase(row, "in")).toBeCloseTo(1, 12);
    const percent = Number(cell(row, "yield_pct"));
    // Printed to two decimals of a percent, or to six figures.
    expect(Math.abs((100 * inBase(row, "out")) / bought - percent)).toBeLessThan(0.0051);
  });

  const gains = rows.filter((row) => cell(row, "basis") === "mass" && inBase(row, "out") > inBase(row, "in"));

  it.each(titled(gains))("%s: what is on hand dry is offered for what is needed cooked", (_, row) => {
    const gramsPerGram = inBase(row, "out") / inBase(row, "in");
    const dry = food("dry", { yields: [{ food: "it", gramsPerGram, source: published(cell(row, "source")) }] });
    const bowl = bundle([meal("bowl", [line("1 kg", "it")])]);
    const who = household({ onHand: [onHand("dry", input(row))] });
    const scaled = scalePlan({ ...bowl, foods: [...bowl.foods, dry] }, 1, who);
    if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
    const [warning] = shop([scaled.value], who).warnings;
    if (warning?.code !== "ON_HAND_IN_OTHER_FORM") throw new Error("the dry form was not offered");
    expect(warning.gives / inBase(row, "out")).toBeCloseTo(1, 12);
    expect(warning.wouldTake).toBeCloseTo(1000 / gramsPerGram, 9);
  });
});

const row = (id: string): Row => {
  const found = rows.find((each) => cell(each, "yield_id") === id);
  if (found === undefined) throw new Error(`no such row: ${id}`);
  return found;
};

/** One food whose parts are rows of the same purchased thing; every part wanted in its own printed unit. */
const jointly = (parts: Readonly<Record<string, string>>): Food =>
  food("it", {
    shoppedBy: "COUNT",
    measures: [own("piece", { pieces: 1 })],
    parts: Object.entries(parts).map(([name, id]) => part(name, output(row(id)))),
  });

describe("yields that come out of the same thing", () => {
  const groups: readonly [string, Readonly<Record<string, string>>][] = [
    ["a lemon", { juice: "sr28-lemon-juice", zest: "page-lemon-zest" }],
    ["an egg", { white: "sr28-egg-white", yolk: "sr28-egg-yolk" }],
    ["a tin of chickpeas", { drained: "sr28-can-chickpea-drained", liquid: "derived-can-chickpea-liquid" }],
  ];

  it.each(groups)("%s: as many as the part wanted most takes, not the sum", (_, parts) => {
    const [[first, firstRow], [second, secondRow]] = Object.entries(parts) as [[string, string], [string, string]];
    const wanted = (name: string, id: string): ReturnType<typeof line> => line(output(row(id)), of("it", name));
    const five = Array.from({ length: 5 }, () => wanted(first, firstRow));
    const three = Array.from({ length: 3 }, () => wanted(second, secondRow));
    const plan = bundle([meal("one", five), meal("two", three)], [], [jointly(parts)]);
    expect(need(plan, 1)).toBeCloseTo(5, 12);
    const whole = bundle([meal("one", five), meal("two", [...three, line("2 piece", "it")])], [], [jointly(parts)]);
    expect(need(whole, 1)).toBeCloseTo(7, 12);
    expect(need(bundle([meal("two", three)], [], [jointly(parts)]), 2)).toBeCloseTo(6, 12);
  });

  it("6 tbsp of juice and 1 tbsp of zest are two lemons, not three, at 3 tbsp a lemon", () => {
    const lemon = food("it", {
      shoppedBy: "COUNT",
      parts: [part("juice", "3 us-tbsp"), part("zest", output(row("page-lemon-zest")))],
    });
    const plan = bundle(
      [meal("drink", [line("6 us-tbsp", of("it", "juice")), line("1 us-tbsp", of("it", "zest"))])],
      [],
      [lemon],
    );
    expect(need(plan, 1)).toBeCloseTo(2, 12);
  });

  it("a yield from purchase to plate has the trim in it already", () => {
    // Food Buying Guide, section 2: onions as purchased to cooked 0.78, of which trimming 0.88.
    const onion = food("it", { edible: [edible(0.88)] });
    const asPurchased = component("fried", "78 g", [line("100 g", "it")]);
    const readyFirst = component("fried", "78 g", [line("88 g", "it", { measured: "READY" })]);
    for (const fried of [asPurchased, readyFirst]) {
      const plan = bundle([meal("plate", [line("39/5 kg", made("fried"))])], [fried], [onion]);
      expect(need(plan, 1)).toBeCloseTo(10_000, 8);
    }
  });

  it("stages follow one another: 0.81 peeled, 0.95 cooked, 1.20 mashed", () => {
    const chain = ["peel", "cook", "mash"].map((stage) => row(`ah102-mash-${stage}`));
    const [peel, cook, mash] = chain as [Row, Row, Row];
    const potato = food("it", { edible: [edible(inBase(peel, "out") / inBase(peel, "in"))] });
    const cooked = component("cooked", output(cook), [line(input(cook), "it", { measured: "READY" })]);
    const mashed = component("mashed", output(mash), [line(input(mash), made("cooked"))]);
    const plan = bundle([meal("plate", [line("1 kg", made("mashed"))])], [cooked, mashed], [potato]);
    // Agriculture Handbook 102 prints 92 % for the chain.
    expect(Math.round((100 * 1000) / need(plan, 1))).toBe(92);
    expect(1000 / need(plan, 1)).toBeCloseTo(0.81 * 0.95 * 1.2, 12);
  });

  it("the writer's own yield beats a table's, whichever stands first", () => {
    const table = { form: null, share: 0.5, source: published("a table") };
    const writer = { form: null, share: 0.8, source: { ...published("me"), kind: "WRITER" as const } };
    for (const both of [
      [table, writer],
      [writer, table],
    ]) {
      const plan = bundle(
        [meal("plate", [line("400 g", "it", { measured: "READY" })])],
        [],
        [food("it", { edible: both })],
      );
      expect(need(plan, 1)).toBeCloseTo(500, 12);
    }
  });
});
