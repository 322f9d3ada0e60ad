import { describe, expect, it } from "vitest";
import { referenceTable, sourceOf, type Row } from "../quantity/reference-table.js";
import { publishedRules } from "../../imports/rules/published-rules.js";
import { ask, bought } from "./kept-builders.js";

const table = referenceTable("storage");
/** Rows of the same dataset for food as it is bought. */
const fresh = referenceTable("home-storage");
const { keeping, handling } = publishedRules.safety;
const idOf = (row: Row): string => row["rule_id"] ?? "";
const keepingRows = table.filter((row) => keeping.some(({ id }) => id === idOf(row)));
const handlingRows = table.filter((row) => handling.some(({ id }) => id === idOf(row)));

/** Rows of the table without a number to compute with, and why. */
const notComputed: Readonly<Record<string, string>> = {
  "nut-cream-gap": "no figure is published; the class borrows that of leftovers and says so",
};

/** Rows that say something, but no length: they are held word for word, not computed. */
const onlyHeld = new Set([
  ...["fridge-us", "freezer-us", "danger-zone-us", "danger-zone-uk", "danger-zone-anz", "fridge-uk", "fridge-uk-law"],
  ...["hot-uk-law", "canada-fridge", "eu-853", "fc-cold-hold", "fc-hot-hold", "fc-reheat", "fc-reheat-commercial"],
  ...["fc-thaw-fridge", "fc-tcs-def", "cut-greens-41", "leftovers-reheat", "bcereus", "cperf"],
  // words instead of a number: indefinite, clock stops, allowed, several months, never
  ...["freezer-indefinite", "fc-date-freeze", "leftovers-refreeze", "us-hot-into-fridge", "garlic-oil-freeze"],
  "kidney-slow-cooker",
]);

const daysOf: Readonly<Record<string, number>> = { day: 1, week: 7, month: 30, hour: 1 / 24 };
const unitOf = (row: Row): string => (row["unit"] ?? "").split(" ")[0] ?? "";
const lengthOf = (row: Row, end: "min_value" | "max_value" = "max_value"): number =>
  Number(row[end]) * (daysOf[unitOf(row)] ?? Number.NaN);
const regions: readonly (readonly [start: string, region: string])[] = [
  ["US retail, Washington", "US-WA"],
  ["US", "US"],
  ["UK", "GB"],
  ["AU/NZ", "ANZ"],
  ["Canada", "CA"],
  ["EU", "EU"],
  ["all", "INT"],
];
const regionOf = (row: Row): string => regions.find(([start]) => row["applies_to"]?.startsWith(start))?.[1] ?? "?";
const places: Readonly<Record<string, string>> = {
  refrigerator: "FRIDGE",
  freezer: "FREEZER",
  room: "ROOM",
  pantry: "ROOM",
};

describe("the table of published storage times", () => {
  it("is all in the rules, but for the rows that are named here with the reason", () => {
    const held = new Set([...keeping, ...handling].map(({ id }) => id));
    const left = table.map(idOf).filter((id) => !held.has(id));
    expect(left).toEqual(Object.keys(notComputed));
    expect(keepingRows.length + handlingRows.length + left.length).toBe(127);
  });

  it("has no rule in the set that is not in the table or in that of fresh food, but for the two on thawing", () => {
    const inTable = new Set([...table, ...fresh].map(idOf));
    const more = [...keeping, ...handling].map(({ id }) => id).filter((id) => !inTable.has(id));
    // Leftovers and Food Safety (USDA FSIS), as told in a food-safety news report
    expect(more).toEqual(["us-thawed", "us-thawed-fast"]);
  });

  it.each(keepingRows.map((row) => ({ id: idOf(row), row })))("is answered as printed: $id", ({ id, row }) => {
    const rule = keeping.find((each) => each.id === id);
    if (rule === undefined) throw new Error(id);
    const shown = sourceOf(row);
    const firstDay = row["unit"]?.includes("incl. day 1") ? 1 : 0;
    expect(rule, shown).toMatchObject({
      region: regionOf(row),
      place: places[row["place"] ?? ""],
      firstDay,
      purpose: row["safety_or_quality"]?.toUpperCase(),
      counts: unitOf(row) === "hour" ? "HOURS" : "DAYS",
      audience: row["applies_to"]?.includes("consumer") ? "HOUSEHOLD" : "FOOD_SERVICE",
    });
    expect(rule.days, shown).toBeCloseTo(lengthOf(row), 9);
    const from = row["min_value"] === "" ? null : Number(row["min_value"]) * (daysOf[unitOf(row)] ?? Number.NaN);
    expect(rule.daysFrom, shown).toBe(from);
    expect(rule.source.title.slice(0, 20), shown).toBe(row["source"]?.slice(0, 20));
    const memory = row["read_or_memory"] === "memory";
    expect(rule.note?.includes("from memory") ?? false, shown).toBe(memory);

    // And it is what an engine with this rule alone answers, for 1 June 2026 at 10:00 in Greenwich.
    const start = Date.UTC(2026, 5, 1, 10);
    const word = { place: rule.place, days: 3000, container: null, condition: null, source: rule.source };
    const answer = ask(
      { foods: [bought("it", rule.keepsAs, [word])] },
      {
        rules: [{ ...rule, inForceTo: null }],
        region: rule.region === "ANZ" ? "NZ" : rule.region,
        audience: rule.audience === "FOOD_SERVICE" ? "FOOD_SERVICE" : "HOUSEHOLD",
        today: "2026-06-01",
        session: { start: new Date(start).toISOString(), zone: "UTC" },
      },
    );
    const found = answer.guidance.find(({ place }) => place === rule.place);
    const hours = unitOf(row) === "hour";
    // A range is planned by its lower end.
    const planned = lengthOf(row, row["min_value"] === "" ? "max_value" : "min_value");
    const lasts = hours ? planned : planned - firstDay;
    const last = new Date(start + lasts * 86_400_000).toISOString();
    if (rule.place === "FREEZER") expect(answer.unknown).toHaveLength(1);
    else {
      expect(found?.lastDay, shown).toBe(last.slice(0, 10));
      expect(found?.days, shown).toBeCloseTo(lasts, 9);
      if (hours) expect(Date.parse(found?.keepUntil ?? ""), shown).toBe(Date.parse(last));
      expect(found?.basis.find(({ decides }) => decides)?.rule, shown).toBe(id);
    }
  });

  it.each(handlingRows.map((row) => ({ id: idOf(row), row })))(
    "holds what is printed on handling: $id",
    ({ id, row }) => {
      const rule = handling.find((each) => each.id === id);
      const shown = sourceOf(row);
      expect(rule?.region, shown).toBe(regionOf(row));
      expect(rule?.temperature ?? "", shown).toBe(row["temp_limit"]);
      const number = row["max_value"] === "" ? row["min_value"] : row["max_value"];
      expect(rule?.limit?.value ?? null, shown).toBe(number === "" ? null : Number(number));
      if (rule?.limit) {
        expect(rule.limit.unit.toLowerCase(), shown).toBe(unitOf(row));
        expect(rule.limit.from, shown).toBe(row["min_value"] && row["max_value"] ? Number(row["min_value"]) : null);
        if (row["max_value"] === "") expect(rule.limit.bound, shown).toBe("AT_LEAST");
      }
      expect(rule?.limit === null, shown).toBe(onlyHeld.has(id));
    },
  );
});

describe("the table of fresh food and opened packs", () => {
  const scale: Readonly<Record<string, number>> = { Days: 1, Weeks: 7, Months: 30, Years: 360, Year: 360 };

  it.each(fresh.map((row) => ({ id: idOf(row), row })))("is in the rules as printed: $id", ({ id, row }) => {
    const shown = sourceOf(row);
    const days = (end: string): number => Number(row[end]) * (scale[row["unit"] ?? ""] ?? Number.NaN);
    const isRange = row["min"] !== "" && row["min"] !== row["max"];
    expect(
      keeping.find((rule) => rule.id === id),
      shown,
    ).toMatchObject({
      keepsAs: row["keeps_as"],
      place: places[row["place"] ?? ""],
      days: days("max"),
      daysFrom: isRange ? days("min") : null,
      purpose: row["safety_or_quality"]?.toUpperCase(),
      region: "US",
      source: { section: `id ${row["id"]}` },
    });
  });

  it("gives every fresh animal food a limit by which plans go", () => {
    // USDA FSIS home food storage dataset, ids 40, 43, 117, 144, 157, 21: the lower ends
    const lasting = (code: string) => {
      const [found] = ask({ foods: [bought("it", code)] }, { region: "US" }).guidance;
      return [found?.place, found?.days];
    };
    expect(["raw-meat", "raw-mince", "raw-poultry", "raw-fish", "raw-shellfish", "eggs-in-shell"].map(lasting)).toEqual(
      [
        ["FRIDGE", 3],
        ["FRIDGE", 1],
        ["FRIDGE", 1],
        ["FRIDGE", 1],
        ["FRIDGE", 1],
        ["FRIDGE", 21],
      ],
    );
  });
});

describe("a dataset that contradicts itself", () => {
  it("is kept row by row, and the odd value never decides", () => {
    // USDA FSIS home food storage dataset, ids 549 and 679: sprouts 5 to 10 days, and 4 to 6 weeks
    const answer = ask(
      { foods: [bought("sprouts", "sprouts")] },
      { rules: keeping.filter(({ purpose }) => purpose === "QUALITY") },
    );
    const [found] = answer.guidance;
    expect(found?.days).toBe(5);
    expect(found?.basis.map(({ rule, days, daysFrom }) => [rule, daysFrom, days])).toEqual([
      ["fsd-sprouts-bean", 5, 10],
      ["fsd-sprouts-mung", 28, 42],
    ]);
    expect(found?.basis.every(({ note }) => note !== null)).toBe(true);
  });
});
