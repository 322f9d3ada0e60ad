import { describe, expect, it } from "vitest";
import type { OwnMeasure, Pack } from "../../../src/domain/model/food.js";
import { packNamesOf } from "../../../src/exports/words/pack-names.js";
import { readSpokenAmount, type SpokenThing } from "../../../src/domain/quantity/spoken-amount.js";

const source = { kind: "WRITER", title: "invented", section: "for this test" } as const;
const pack = (name: string, low: string, unit: string, more: Partial<Pack> = {}): Pack => ({
  ...{ id: `${name}-${low}`, name, content: { low, high: low, unit }, price: null, region: null },
  ...{ seen: "2026-03-02", source },
  ...more,
});
const measure = (name: string, grams: number, words = name): OwnMeasure => ({
  ...{ name, one: words, many: `${words}s`, grams, millilitres: null, pieces: null, source },
});
const thing = (packs: readonly Pack[], measures: readonly OwnMeasure[] = []): SpokenThing => ({
  ...{ slug: "thing", packs, measures, densities: [], shoppedBy: "MASS" },
});

const barley = thing([pack("bag", "500", "g")]);
const oil = thing([pack("bottle", "1/2", "l")]);
const rice = thing([
  pack("bag", "500", "g"),
  pack("bag", "1", "kg"),
  pack("bag", "1000", "g"),
  pack("box", "250", "g"),
]);
const chickpeas = thing(
  [pack("tin", "1", "own:tin"), pack("tray", "6", "own:tin")],
  [measure("tin", 253, "tin, drained")],
);
const carrots = thing([pack("bag", "1", "kg")], [measure("piece", 61)]);

const read = (text: string, of: SpokenThing, locale: string | null = null, region: string | null = null): string => {
  const found = readSpokenAmount(text, of, {
    ...{ locale, measures: "METRIC", region, path: ["here"] },
    packWords: packNamesOf,
  });
  if (!found.ok) {
    const [problem] = found.problems;
    expect(problem?.path).toEqual(["here"]);
    if (problem?.code === "AMBIGUOUS_UNIT") return `which: ${problem.candidates.join(", ")}`;
    return problem?.code === "BAD_AMOUNT" ? problem.why : String(problem?.code);
  }
  const { low, high, unit } = found.value;
  return low === high ? `${low} ${unit}` : `${low}-${high} ${unit}`;
};

describe("an amount as people say it", () => {
  it.each([
    ["half a bag", barley, null, "250 g"],
    ["a bag", barley, null, "500 g"],
    ["bag", barley, null, "500 g"],
    ["1 1/2 bags", barley, null, "750 g"],
    ["2.5 bags", barley, null, "1250 g"],
    ["ein halber Beutel", barley, "de", "250 g"],
    ["ein halber Beutel", barley, null, "250 g"],
    ["2,5 Beutel", barley, "de", "1250 g"],
    ["pół torebki", barley, "pl", "250 g"],
    ["media bolsa", barley, "es", "250 g"],
    ["a bottle", oil, null, "1/2 l"],
    ["eine Flasche", oil, "de-AT", "1/2 l"],
    ["Flasche", oil, "de", "1/2 l"],
    ["une bouteille", oil, "fr", "1/2 l"],
    ["dwie butelki", oil, "pl", "1 l"],
    ["2 tins", chickpeas, null, "2 own:tin"],
    ["2 Dosen", chickpeas, "de", "2 own:tin"],
    ["2 tins of 400 g", chickpeas, null, "2 own:tin"],
    ["500g", carrots, null, "500 g"],
    ["1/2 lb", carrots, null, "1/2 lb"],
    ["½ kg", carrots, null, "1/2 kg"],
    ["1 lb 4 oz", carrots, null, "5/4 lb"],
    ["0,5 l", oil, "de", "1/2 l"],
    ["0,5 l", oil, null, "1/2 l"],
    ["0.5 l", oil, "de", "1/2 l"],
    ["3", carrots, null, "3 piece"],
    ["3 Stück", carrots, "de", "3 piece"],
    ["2 own:tin", chickpeas, null, "2 own:tin"],
  ] as const)("%s", (text, of, locale, expected) => {
    expect(read(text, of, locale)).toBe(expected);
  });

  it("is a question where packs of several sizes are called so, each of them a choice that can be written", () => {
    expect(read("half a bag", rice)).toBe("which: bag (500 g), bag (1 kg)");
    expect(read("half a bag (500 g)", rice)).toBe("250 g");
    expect(read("half a bag of 1 kg", rice)).toBe("1/2 kg");
    expect(read("2 Beutel", rice, "de")).toBe("which: beutel (500 g), beutel (1 kg)");
    expect(read("2 Beutel (1 kg)", rice, "de")).toBe("2 kg");
    expect(read("a box", rice)).toBe("250 g");
  });

  it("offers packs of pieces and of other packs by their count", () => {
    const eggs = thing([pack("box", "6", "piece"), pack("box", "12", "piece")], [measure("piece", 50)]);
    expect(read("half a box", eggs)).toBe("which: box (6), box (12)");
    expect(read("half a box (6)", eggs)).toBe("3 piece");
    expect(read("2 boxes (12)", eggs)).toBe("24 piece");
    expect(read("a box (10)", eggs)).toBe("NOT_SOLD_SO");
    expect(read("eine Schachtel (6)", eggs, "de")).toBe("6 piece");
    expect(read("a tray", chickpeas)).toBe("6 own:tin");
  });

  it("takes the packs of the reader's region, and those of others where none is sold there", () => {
    const sold = thing([pack("jar", "200", "g", { region: "XA" }), pack("jar", "350", "g", { region: "XB" })]);
    expect(read("a jar", sold, null, "XA")).toBe("200 g");
    expect(read("a jar", sold, null, "XB")).toBe("350 g");
    expect(read("a jar", sold, null, "XC")).toBe("which: jar (200 g), jar (350 g)");
    expect(read("a jar", sold)).toBe("which: jar (200 g), jar (350 g)");
  });

  it("asks which is meant where the food's own measure and its pack differ", () => {
    expect(read("a bag", thing([pack("bag", "500", "g")], [measure("bag", 500)]))).toBe("1 own:bag");
    expect(read("a bag", thing([pack("bag", "1", "kg")], [measure("bag", 500)]))).toBe(
      "which: bag (500 g), bag (1 kg)",
    );
  });

  it("takes no more of a pack than it holds at least", () => {
    const net = thing([{ ...pack("net", "800", "g"), content: { low: "800", high: "1000", unit: "g" } }]);
    expect(read("a net", net)).toBe("800 g");
    expect(read("half a net", net)).toBe("400 g");
    expect(read("2 nets", net)).toBe("1600 g");
    expect(read("2 fishing nets", net)).toBe("UNKNOWN_UNIT");
  });

  it.each([
    ["1.500 kg", carrots, "de", "AMBIGUOUS_SEPARATOR"],
    ["1.500 kg", carrots, null, "3/2 kg"],
    ["500", carrots, null, "NO_UNIT"],
    ["3", barley, null, "NO_UNIT"],
    ["a bottle", barley, null, "UNKNOWN_UNIT"],
    ["a bag", thing([pack("bag", "1", "kg", { loose: { step: null } })]), null, "UNKNOWN_UNIT"],
    ["some", barley, null, "NO_NUMBER"],
    ["a lot", barley, null, "NO_NUMBER"],
    ["500 g flour", barley, null, "UNKNOWN_UNIT"],
    ["-1 g", barley, null, "AMOUNT_OUT_OF_RANGE"],
    ["", barley, null, "EMPTY"],
    ["x".repeat(121), barley, null, "TOO_LARGE"],
    ["1/0 bags", barley, null, "DIVISION_BY_ZERO"],
    ["2-3 bags", barley, null, "1000-1500 g"],
  ] as const)("%s is never guessed at", (text, of, locale, expected) => {
    expect(read(text, of, locale)).toBe(expected);
  });
});
