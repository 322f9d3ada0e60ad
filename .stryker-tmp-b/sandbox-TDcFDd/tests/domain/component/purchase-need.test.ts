// @ts-nocheck
import { describe, expect, it } from "vitest";
import { edibleShare } from "../../../src/domain/component/edible.js";
import { foodYield } from "../../../src/domain/component/food-yield.js";
import { needDimension, purchaseNeed, type PurchaseNeed } from "../../../src/domain/component/purchase-need.js";
import type { Food } from "../../../src/domain/model/food.js";
import type { Line } from "../../../src/domain/model/line.js";
import { toBase } from "../../../src/domain/quantity/convert.js";
import { density, edible, food, invented, measured, own, part, published } from "../../kit/builders.js";

const bought: Pick<Line, "measured" | "form"> = { measured: "AS_BOUGHT", form: null };
const ready = (form: string | null = null): Pick<Line, "measured" | "form"> => ({ measured: "READY", form });

/** What a written amount of a food makes one buy. */
const need = (text: string, of: Food, how = bought, partName: string | null = null): PurchaseNeed => {
  const written = measured(text);
  const base = toBase(written, of, how.form);
  if (!base.ok) throw new Error(JSON.stringify(base.missing));
  return purchaseNeed(base.amount, written, how, of.parts.find(({ name }) => name === partName) ?? null, of);
};

const carrot = food("carrot", {
  edible: [edible(0.8), edible(0.5, "balls")],
  densities: [density(0.4, "grated"), density(0.6)],
  measures: [own("piece", { grams: 60, pieces: 1 })],
});

const lemon = food("lemon", {
  shoppedBy: "COUNT",
  measures: [own("piece", { grams: 84, pieces: 1 })],
  parts: [part("juice", "40-50 ml"), part("zest", "6 g"), part("wedge", "8 piece")],
});

describe("what a line makes one buy", () => {
  it("is the amount itself, in the dimension the food is shopped by", () => {
    expect(need("100 g", carrot)).toEqual({
      amount: { dimension: "MASS", low: 100, high: 100 },
      notCombined: null,
      edibleUnknown: false,
    });
    expect(need("2-3 piece", carrot).amount).toEqual({ dimension: "MASS", low: 120, high: 180 });
    expect(need("100 ml", carrot).amount).toEqual({ dimension: "MASS", low: 60, high: 60 });
  });

  it("is more where it is weighed after trimming, by the share of its form or of the usual trimming", () => {
    expect(need("100 g", carrot, ready()).amount!.high).toBe(125);
    expect(need("100 g", carrot, ready("balls")).amount!.high).toBe(200);
    expect(need("100 g", carrot, ready("sliced")).amount!.high).toBe(125);
    const grated = need("100 ml", carrot, ready("grated"));
    expect(grated.amount!.dimension).toBe("MASS");
    expect(grated.amount!.high).toBeCloseTo((100 * 0.4) / 0.8, 12);
  });

  it("leaves whole pieces whole, trimmed or not", () => {
    expect(need("2 piece", carrot, ready()).amount!.high).toBe(120);
  });

  it("says where nobody gives the share, and buys the amount as it is", () => {
    expect(need("100 g", food("salsify"), ready("peeled"))).toMatchObject({
      amount: { high: 100 },
      edibleUnknown: true,
    });
    expect(need("1 piece", food("salsify", { shoppedBy: "COUNT" }), ready()).edibleUnknown).toBe(false);
  });

  it("takes a measure's own fact for the dimension wanted before going through another", () => {
    const tin = food("tin", {
      shoppedBy: "COUNT",
      measures: [own("tin", { grams: 240, pieces: 1 }), own("piece", { grams: 400 })],
    });
    expect(need("3 own:tin", tin).amount).toEqual({ dimension: "COUNT", low: 3, high: 3 });
  });

  it("stays in its own dimension and names the missing fact where it cannot be converted", () => {
    expect(need("100 ml", food("kale"))).toEqual({
      amount: { dimension: "VOLUME", low: 100, high: 100 },
      notCombined: "DENSITY",
      edibleUnknown: false,
    });
    expect(need("100 ml", carrot, { measured: "AS_BOUGHT", form: "diced" }).notCombined).toBe("DENSITY:diced");
    expect(need("1 piece", food("kale")).notCombined).toBe("GRAMS_OF_ONE_PIECE");
  });

  it("of a food with parts is pieces; where nobody can count them, at least what it is shopped by", () => {
    expect(needDimension(lemon)).toBe("COUNT");
    expect(needDimension({ ...lemon, parts: [] })).toBe("COUNT");
    const broccoli = food("broccoli", { parts: [part("stem", "80 g")], densities: [density(0.3)] });
    expect(needDimension(broccoli)).toBe("COUNT");
    expect(need("100 ml", broccoli)).toMatchObject({
      amount: { dimension: "MASS", low: 30, high: 30 },
      notCombined: "GRAMS_OF_ONE_PIECE",
    });
  });
});

describe("what a line of a part makes one buy", () => {
  it("is pieces by what a piece gives, counting on the least of a range", () => {
    expect(need("200 ml", lemon, bought, "juice").amount).toEqual({ dimension: "COUNT", low: 4, high: 5 });
    expect(need("12-18 g", lemon, bought, "zest").amount).toEqual({ dimension: "COUNT", low: 2, high: 3 });
  });

  it("is that many pieces where it counts the whole, and a share of them where a piece gives several", () => {
    expect(need("2 piece", lemon, bought, "zest").amount).toEqual({ dimension: "COUNT", low: 2, high: 2 });
    expect(need("12 piece", lemon, bought, "wedge").amount).toEqual({ dimension: "COUNT", low: 1.5, high: 1.5 });
  });

  it("goes through the density of the part, never of the whole", () => {
    const juicy = { ...lemon, densities: [density(1.2, "juice"), density(5)] };
    expect(need("48 g", juicy, bought, "juice").amount).toEqual({ dimension: "COUNT", low: 0.8, high: 1 });
    expect(need("48 g", lemon, bought, "juice")).toEqual({
      amount: null,
      notCombined: "DENSITY:juice",
      edibleUnknown: false,
    });
  });

  it("is not known where a part is only counted and the line weighs or measures it", () => {
    expect(need("20 g", lemon, bought, "wedge")).toMatchObject({
      amount: null,
      notCombined: "GRAMS_OF_ONE_PIECE:wedge",
    });
    expect(need("20 ml", lemon, bought, "wedge")).toMatchObject({
      amount: null,
      notCombined: "MILLILITRES_OF_ONE_PIECE:wedge",
    });
  });

  it("is not known where a piece gives an amount in a unit nobody knows", () => {
    const odd = { ...lemon, parts: [part("juice", "2 own:squeeze")] };
    expect(need("40 ml", odd, bought, "juice")).toMatchObject({ amount: null, notCombined: "OWN_MEASURE:squeeze" });
  });
});

describe("facts that two sources give", () => {
  const writer = { ...invented, kind: "WRITER" as const };

  it("the writer's edible portion beats a table's of the same form, and a form's own beats the usual", () => {
    const rows = [
      edible(0.5),
      { ...edible(0.6), source: writer },
      edible(0.7, "diced"),
      { ...edible(0.9), source: writer },
    ];
    expect(edibleShare(food("swede", { edible: rows }), null)).toBe(0.6);
    expect(edibleShare(food("swede", { edible: rows }), "diced")).toBe(0.7);
    expect(edibleShare(food("swede", { edible: rows }), "grated")).toBe(0.6);
    expect(edibleShare(food("swede"), null)).toBeNull();
  });

  it("a share that is none is passed over; all of it is a share", () => {
    expect(edibleShare(food("swede", { edible: [edible(0), edible(1.2), edible(1)] }), null)).toBe(1);
    expect(edibleShare(food("swede", { edible: [edible(-1), edible(1.000001)] }), null)).toBeNull();
  });

  it("the writer's yield of one food into another beats a table's", () => {
    const into = (gramsPerGram: number, source = published("a table")) => ({ food: "boiled", gramsPerGram, source });
    const dry = food("dry", { yields: [into(0), into(2.4), into(2.7, writer), { ...into(9, writer), food: "fried" }] });
    expect(foodYield(dry, "boiled")).toBe(2.7);
    expect(foodYield({ ...dry, yields: [into(0), into(2.4)] }, "boiled")).toBe(2.4);
    expect(foodYield(dry, "mashed")).toBeNull();
  });
});
