// @ts-nocheck
import { describe, expect, it } from "vitest";
import type { Food, Pack } from "../../../src/domain/model/food.js";
import { currencyFor, packShelf, type Shop } from "../../../src/domain/shopping/pack-options.js";
import { density, food, own, pack } from "../../kit/builders.js";

const here: Shop = { region: "XA", currency: "XTS" };
const anywhere: Shop = { region: null, currency: null };
const withPacks = (packs: readonly Pack[], facts: Partial<Food> = {}): Food => food("leek", { packs, ...facts });
const contents = (of: Food, shop: Shop): readonly (readonly [number, number | null])[] =>
  packShelf(of, "MASS", shop).options.map(({ content, price }) => [content, price]);

describe("the shelf", () => {
  it("holds what is sold in the reader's region or anywhere", () => {
    const leek = withPacks([
      pack("100 g", "1.00", { region: "XA" }),
      pack("200 g", "2.00", { region: "XB" }),
      pack("300 g", "3.00"),
    ]);
    expect(contents(leek, here).map(([content]) => content)).toEqual([100, 300]);
    expect(contents(leek, { ...here, region: null }).map(([content]) => content)).toEqual([100, 200, 300]);
  });

  it("knows no price in another currency, and none that is no decimal number", () => {
    const leek = withPacks([
      pack("100 g", "1.00"),
      pack("200 g", null, { price: { amount: "2.00", currency: "XXX" } }),
      pack("300 g", "3 or 4"),
    ]);
    expect(contents(leek, here)).toEqual([
      [100, 10_000],
      [200, null],
      [300, null],
    ]);
    expect(contents(leek, { ...here, currency: null }).every(([, price]) => price === null)).toBe(true);
  });

  it("turns contents into the dimension needed by the food's own facts", () => {
    const packs = [pack("1 l", "1.00"), pack("2 own:bunch", "3.00"), pack("3/2 kg", "4.00")];
    const leek = withPacks(packs, { densities: [density(0.5)], measures: [own("bunch", { grams: 120 })] });
    expect(contents(leek, here).map(([content]) => content)).toEqual([500, 240, 1500]);
  });

  it("sets apart what it cannot compare, and names the missing fact", () => {
    const [litre, bunch, gram] = [pack("1 l", "1.00"), pack("1 own:bunch", "3.00"), pack("100 g", "1.00")];
    const { packs, options, notComparable } = packShelf(withPacks([litre, bunch, gram]), "MASS", here);
    expect(packs).toEqual([gram]);
    expect(options.map(({ index }) => index)).toEqual([0]);
    expect(notComparable).toEqual([
      { pack: litre, missing: "DENSITY" },
      { pack: bunch, missing: "OWN_MEASURE:bunch" },
    ]);
  });

  it("counts a content that is a range on its low end", () => {
    expect(contents(withPacks([pack("900-1100 g", "1.00")]), here)).toEqual([[900, 10_000]]);
  });

  it("takes the latest price of the same pack, however its content is written", () => {
    const leek = withPacks([
      pack("1 kg", "2.00", { seen: "2026-02-01" }),
      pack("1000 g", "2.50", { seen: "2026-03-01" }),
      pack("1 kg", "1.50", { seen: "2026-01-01" }),
    ]);
    expect(contents(leek, here)).toEqual([[1000, 25_000]]);
  });

  it("takes the one written last of two prices of one day", () => {
    const leek = withPacks([pack("1 kg", "2.00"), pack("1 kg", "2.20")]);
    expect(contents(leek, here)).toEqual([[1000, 22_000]]);
  });

  it.each<[string, Partial<Pack>]>([
    ["name", { name: "net" }],
    ["region", { region: "XA" }],
    ["currency", { price: { amount: "9.00", currency: "XXX" } }],
  ])("keeps packs apart that differ in %s", (_, other) => {
    const leek = withPacks([pack("1 kg", "2.00"), pack("1 kg", "2.20", { seen: "2026-03-01", ...other })]);
    expect(contents(leek, here)).toHaveLength(2);
  });
});

describe("the currency of a list", () => {
  const pricedIn = (...currencies: readonly string[]): Food =>
    withPacks(currencies.map((currency) => pack("1 kg", null, { price: { amount: "1.00", currency } })));

  it("is the reader's own, whether or not anything is priced in it", () => {
    expect(currencyFor([pricedIn("XXX")], { region: null, currency: "XTS" })).toBe("XTS");
  });

  it("is else the one most foods are priced in, by code where equal", () => {
    expect(currencyFor([pricedIn("XTS"), pricedIn("XXX"), pricedIn("XXX")], anywhere)).toBe("XXX");
    expect(currencyFor([pricedIn("XXX"), pricedIn("XTS")], anywhere)).toBe("XTS");
    expect(currencyFor([pricedIn("XXX", "XXX", "XXX"), pricedIn("XTS"), pricedIn("XTS")], anywhere)).toBe("XTS");
  });

  it("looks only at packs sold in the region", () => {
    const abroad = withPacks([pack("1 kg", null, { region: "XB", price: { amount: "1.00", currency: "XXX" } })]);
    expect(currencyFor([abroad, pricedIn("XTS")], { region: "XA", currency: null })).toBe("XTS");
    expect(currencyFor([abroad], { region: "XA", currency: null })).toBeNull();
  });

  it("is none where nothing has a price", () => {
    expect(currencyFor([withPacks([pack("1 kg", null)])], anywhere)).toBeNull();
    expect(currencyFor([], anywhere)).toBeNull();
  });
});
