// @ts-nocheck
import { describe, expect, it } from "vitest";
import { allergenStatement } from "../../../src/domain/nutrition/allergens.js";
import { referenceTable, sourceOf, type Row } from "../quantity/reference-table.js";
import { publishedRules } from "../../imports/rules/published-rules.js";
import { onlyWith, saying } from "./allergen-foods.js";

const { allergens: rules } = publishedRules;
const today = "2026-11-25";
const table = referenceTable("allergens");
const idOf = (row: Row): string => row["row_id"] ?? "";
const country: Readonly<Record<string, string>> = { US: "US", EU: "FR", UK: "GB", CA: "CA", ANZ: "NZ" };
const regionOf = (row: Row): string => country[row["jurisdiction"] ?? ""] ?? "?";

/** What stands in the table, in our codes: the first is what a food contains, all must be found. */
const codes: Readonly<Record<string, readonly string[]>> = {
  eggs: ["egg"],
  peanuts: ["peanut"],
  soybeans: ["soy"],
  crustaceans: ["crustacean"],
  "crustacean shellfish": ["crustacean"],
  molluscs: ["mollusc"],
  "crustaceans and molluscs": ["crustacean", "mollusc"],
  "sesame seeds": ["sesame"],
  "sulphur dioxide and sulphites": ["sulphites"],
  "tree nuts": ["tree-nut", "almond", "brazil-nut", "cashew", "pecan", "pistachio", "walnut"],
  nuts: ["almond", "hazelnut", "walnut", "cashew", "pecan", "brazil-nut", "pistachio", "macadamia"],
  "cereals containing gluten": ["wheat", "rye", "barley", "oats"],
  "wheat and triticale": ["wheat", "triticale"],
  "filbert/hazelnut": ["hazelnut"],
  "heartnut/Japanese walnut": ["heartnut"],
  "macadamia nut/bush nut": ["macadamia"],
  "pine nut/pinon nut": ["pine-nut"],
  "walnut (English, Persian)": ["walnut"],
  "cola/kola nut": ["cola-nut"],
};
const codesOf = (row: Row): readonly string[] => {
  const name = row["allergen"] ?? "";
  return codes[name] ?? [name.toLowerCase().replaceAll(" ", "-")];
};

const findings = (row: Row, code: string, date = today) => {
  const dish = [onlyWith("plain"), onlyWith("it", code)];
  return allergenStatement(dish, rules, regionOf(row), date);
};
const claims = table.filter((row) => row["group"] === "claim");
const removed = table.filter((row) => idOf(row).startsWith("us-removed"));
const listed = table.filter((row) => ![...claims, ...removed].includes(row) && idOf(row) !== "uk-14");

describe("the table of published allergens", () => {
  it("has 85 rows, and each is held by one of the checks below", () => {
    expect(listed.length + claims.length + removed.length + 1).toBe(85);
  });

  it.each(listed.map((row) => ({ id: idOf(row), row })))("must be declared: $id", ({ row }) => {
    const shown = sourceOf(row);
    for (const code of codesOf(row)) {
      const { findings: found } = findings(row, code);
      const contained = found.filter(({ presence }) => presence === "CONTAINS");
      expect(contained.length, `${code}: ${shown}`).toBeGreaterThan(0);
      for (const each of contained) {
        expect(each.contains, shown).toEqual(["it"]);
        expect(each.found, shown).toContain(code);
      }
      const unknown = allergenStatement([saying("silent")], rules, regionOf(row), today).findings;
      expect(
        unknown.every(({ presence }) => presence === "UNKNOWN"),
        shown,
      ).toBe(true);
    }
  });

  it.each(removed.map((row) => ({ id: idOf(row), row })))("needs no declaration since January 2025: $id", ({ row }) => {
    const [code = ""] = codesOf(row);
    const now = findings(row, code);
    expect(
      now.findings.filter(({ presence }) => presence !== "DOES_NOT_CONTAIN"),
      sourceOf(row),
    ).toEqual([]);
    expect(now.alsoContains, sourceOf(row)).toEqual([{ code, foods: ["it"] }]);
    const before = findings(row, code, "2024-06-01").findings.find((each) => each.code === "tree-nut");
    expect(before?.presence, sourceOf(row)).toBe("CONTAINS");
  });

  it("lists the same 14 for the UK as for the EU", () => {
    const of = (region: string) => allergenStatement([], rules, region, today).findings.map(({ code }) => code);
    expect(of("FR")).toHaveLength(14);
    expect(of("GB")).toEqual(of("FR"));
  });

  it("lists nine for the US since 2023, and tree nuts one by one in Australia and New Zealand", () => {
    const of = (region: string, date = today) =>
      allergenStatement([], rules, region, date).findings.map(({ code }) => code);
    expect(of("US")).toHaveLength(9);
    expect(of("US", "2024-01-01")).toHaveLength(9);
    expect(of("AU")).not.toContain("tree-nut");
    expect(of("AU")).toEqual(expect.arrayContaining(["almond", "pine-nut", "walnut"]));
  });

  // A statement made from names cannot weigh milligrams: what the law says about amounts is shown, not computed.
  const shownOnly = table.filter((row) => (row["threshold"] ?? "").match(/\d/) && !claims.includes(row));
  it("shows amounts it cannot compute, and these are all of them", () => {
    expect(shownOnly.map(idOf)).toEqual(["eu-sulphur-dioxide-and-sulphites", "ca-sulphites", "anz-sulphites"]);
    for (const row of shownOnly) {
      const found = findings(row, "sulphites").findings.find(({ code }) => code === "sulphites");
      expect(found?.threshold, sourceOf(row)).toBe(row["threshold"]);
    }
  });

  it("keeps what the law exempts (refined oils, syrups) beside each entry: a food's own data says whether it is one", () => {
    const exempt = table.filter((row) => row["excludes_or_exempt"] && listed.includes(row));
    expect(exempt.length).toBeGreaterThan(0);
    const held = rules.lists.flatMap(({ entries }) => entries.map((entry) => entry.exempt));
    for (const row of exempt) expect(held, sourceOf(row)).toContain(row["excludes_or_exempt"]);
  });

  it.each(claims.map((row) => ({ id: idOf(row), row })))("ties the claim to a number: $id", ({ id, row }) => {
    const claim = rules.claims.find((each) => each.id === id);
    expect(claim, sourceOf(row)).toMatchObject({ law: row["law"], threshold: row["threshold"], diet: "gluten-free" });
  });
});
