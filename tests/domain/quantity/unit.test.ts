import { describe, expect, it } from "vitest";
import type { MeasureSystem } from "../../../src/domain/model/amount.js";
import {
  findUnit,
  nearestUnits,
  ownMeasureName,
  ownMeasureRef,
  standardUnits,
} from "../../../src/domain/quantity/unit.js";

const found = (id: string) => ({ kind: "FOUND", id });
const ambiguous = (...candidates: string[]) => ({ kind: "AMBIGUOUS", candidates });

const find = (word: string, locale: string | null = "en", measures: MeasureSystem = "METRIC") =>
  findUnit(word, { locale, measures });

describe("unit words", () => {
  it.each([
    ["grams", "en", "g"],
    ["lbs.", "en", "lb"],
    ["Pounds", "en", "lb"],
    ["fl. oz.", "en", "us-floz"],
    ["fluid ounces", "en", "us-floz"],
    ["T", "en", "us-tbsp"],
    ["t", "en", "us-tsp"],
    ["Tbsp.", "en", "us-tbsp"],
    ["Esslöffel", "de", "us-tbsp"],
    ["EL", "de-AT", "us-tbsp"],
    ["TL", "de", "us-tsp"],
    ["Pfund", "de", "metric-pound"],
    ["Gramm", "de", "g"],
    ["Stück", "de", "piece"],
    ["c. à s.", "fr", "us-tbsp"],
    ["cuillères à café", "fr-CA", "us-tsp"],
    ["livre", "fr", "metric-pound"],
    ["cucharadas", "es", "us-tbsp"],
    ["cdta.", "es-MX", "us-tsp"],
    ["łyżek", "pl", "us-tbsp"],
    ["łyżeczki", "pl", "us-tsp"],
    ["dag", "pl", "dag"],
    ["deko", "pl", "dag"],
    ["us-cup", "pl", "us-cup"],
    ["gn-1-2-65", "en", "gn-1-2-65"],
    ["cups", "de", "us-cup"],
    ["dozen", "en", "dozen"],
    ["batches", "en", "batch"],
  ])("%s (%s) is %s in US measures", (word, locale, id) => {
    expect(find(word, locale, "US_CUSTOMARY")).toEqual(found(id));
  });

  it("O-09: keeps the 20 ml spoon for Australia and gives New Zealand 15 ml", () => {
    expect(find("tbsp", "en-AU", "AUSTRALIAN")).toEqual(found("au-tbsp"));
    expect(find("tbsp", "en-NZ", "METRIC_CUP")).toEqual(found("metric-tbsp"));
    expect(find("cup", "en-NZ", "METRIC_CUP")).toEqual(found("metric-cup"));
    expect(find("tbsp", "en-GB", "UK_IMPERIAL")).toEqual(found("metric-tbsp"));
    expect(find("tbsp", "de", "METRIC")).toEqual(found("metric-tbsp"));
  });

  it("O-10: knows three pints, and asks where the measures do not say which", () => {
    const us = { locale: "en-US", measures: "US_CUSTOMARY" } as const;
    expect(findUnit("pint", { ...us, form: "dry" })).toEqual(found("us-dry-pint"));
    expect(findUnit("pint", { ...us, form: "liquid" })).toEqual(found("us-pint"));
    expect(findUnit("pint", us)).toEqual(ambiguous("us-pint", "us-dry-pint"));
    expect(find("pint", "en-GB", "UK_IMPERIAL")).toEqual(found("imp-pint"));
    expect(findUnit("pint", { locale: "en-GB", measures: "UK_IMPERIAL", form: "dry" })).toEqual(found("imp-pint"));
    expect(find("pint", "en-AU", "AUSTRALIAN")).toEqual(ambiguous("us-pint", "imp-pint", "us-dry-pint"));
    const dry = { locale: "en-AU", measures: "AUSTRALIAN", form: "dry" } as const;
    expect(findUnit("pint", dry)).toEqual(ambiguous("us-pint", "imp-pint", "us-dry-pint"));
    expect(find("dry pint", "en", "US_CUSTOMARY")).toEqual(found("us-dry-pint"));
  });

  it("takes a quart for liquid unless the food is dry goods", () => {
    expect(find("quart", "en", "US_CUSTOMARY")).toEqual(found("us-quart"));
    expect(findUnit("quarts", { locale: "en", measures: "US_CUSTOMARY", form: "dry" })).toEqual(found("us-dry-quart"));
    expect(findUnit("cup", { locale: "en", measures: "US_CUSTOMARY", form: "dry" })).toEqual(found("us-cup"));
  });

  it("does not guess a cup where the measures have none", () => {
    expect(find("cup", "en", "METRIC")).toEqual(ambiguous("metric-cup", "us-cup"));
    expect(find("Tasse", "de", "METRIC")).toEqual(ambiguous("metric-cup", "us-cup"));
    expect(find("cup", "en", "UK_IMPERIAL")).toEqual(ambiguous("metric-cup", "us-cup"));
  });

  it("knows no other words", () => {
    expect(find("cupps")).toBeNull();
    expect(find("")).toBeNull();
    expect(find("constructor")).toBeNull();
    expect(find("Esslöffel", "en")).toBeNull();
    expect(find("grams", "xx")).toEqual(found("g"));
    expect(find("grams", null)).toEqual(found("g"));
  });
});

describe("suggestions for an unknown unit", () => {
  it.each([
    ["cupps", "us-cup"],
    ["grms", "g"],
    ["tabelspoon", "us-tbsp"],
    ["us-cpu", "us-cup"],
    ["liter5", "l"],
  ])("offer for %s: %s first", (word, id) => {
    expect(nearestUnits(word)[0]).toBe(id);
  });

  it("stand in the order of nearness, whoever's they are", () => {
    expect(nearestUnits("cups", ["caps"]).slice(0, 2)).toEqual(["us-cup", "own:caps"]);
  });

  it("offer the food's own measures too, and never more than three", () => {
    expect(nearestUnits("clov", ["clove", "head"])[0]).toBe("own:clove");
    expect(nearestUnits("a").length).toBeLessThanOrEqual(3);
  });

  it("are empty where nothing is near, and quick for a hostile word", () => {
    expect(nearestUnits("wheelbarrow")).toEqual([]);
    const start = process.cpuUsage().user;
    nearestUnits("c".repeat(1_000_000));
    expect((process.cpuUsage().user - start) / 1000).toBeLessThan(200);
  });

  it("only name units that exist", () => {
    for (const word of ["cupps", "tabel", "onse", "quat", "galon"]) {
      for (const id of nearestUnits(word)) expect(standardUnits.has(id), id).toBe(true);
    }
  });
});

describe("own measures", () => {
  it("are told from standard units by their prefix", () => {
    expect(ownMeasureName("own:clove")).toBe("clove");
    expect(ownMeasureName("g")).toBeNull();
    expect(ownMeasureRef("clove")).toBe("own:clove");
  });
});
