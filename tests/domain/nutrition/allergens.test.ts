import { describe, expect, it } from "vitest";
import { allergenStatement, type AllergenFinding } from "../../../src/domain/nutrition/allergens.js";
import type { AllergenFood } from "../../../src/domain/nutrition/allergen-claims.js";
import { publishedRules } from "../../imports/rules/published-rules.js";
import { has, onlyWith, saying } from "./allergen-foods.js";

const { allergens: rules } = publishedRules;
const today = "2026-11-25";

const state = (foods: readonly AllergenFood[], region: string | null = "US", date = today) =>
  allergenStatement(foods, rules, region, date);
const find = (foods: readonly AllergenFood[], code: string, region = "US", date = today): AllergenFinding => {
  const found = state(foods, region, date).findings.find((each) => each.code === code);
  if (found === undefined) throw new Error(`${code} is on no list of ${region}`);
  return found;
};

describe("a swap", () => {
  const others = [onlyWith("onion"), onlyWith("soy-sauce", "soy", "wheat", "gluten")];

  it("of almond butter for peanut butter takes the peanut and brings a tree nut (O-31)", () => {
    const before = [...others, onlyWith("peanut-butter", "peanut")];
    const after = [...others, onlyWith("almond-butter", "almond", "tree-nut")];
    expect(find(before, "peanut")).toMatchObject({ presence: "CONTAINS", contains: ["peanut-butter"] });
    expect(find(before, "tree-nut")).toMatchObject({ presence: "DOES_NOT_CONTAIN", contains: [] });
    expect(find(after, "peanut").presence).toBe("DOES_NOT_CONTAIN");
    expect(find(after, "tree-nut")).toMatchObject({ presence: "CONTAINS", contains: ["almond-butter"] });
    expect(find(after, "tree-nut").found).toContain("almond");
  });

  it("of tahini for peanut butter takes the peanut and brings sesame (O-31)", () => {
    const after = [...others, onlyWith("tahini", "sesame")];
    expect(find(after, "peanut").presence).toBe("DOES_NOT_CONTAIN");
    expect(find(after, "sesame")).toMatchObject({ presence: "CONTAINS", contains: ["tahini"] });
  });
});

describe("a food that does not say", () => {
  it("leaves the dish unknown, and is named (O-31: a stock cube without a statement)", () => {
    const found = find([onlyWith("onion"), saying("stock-cube", has("celery"))], "milk");
    expect(found).toMatchObject({ presence: "UNKNOWN", unknown: ["stock-cube"], contains: [], mayContain: [] });
  });

  it("does not become free of anything by another food that is", () => {
    for (const finding of state([onlyWith("onion"), saying("mystery")]).findings)
      expect(finding).toMatchObject({ presence: "UNKNOWN", unknown: ["mystery"] });
  });

  it("is there in a dish of no foods at all", () => {
    for (const { presence } of state([]).findings) expect(presence).toBe("UNKNOWN");
  });

  it("does not hide that another one contains it", () => {
    const found = find(
      [saying("mystery"), onlyWith("feta", "milk"), saying("biscuit", has("milk", "MAY_CONTAIN"))],
      "milk",
    );
    expect(found).toMatchObject({
      presence: "CONTAINS",
      contains: ["feta"],
      mayContain: ["biscuit"],
      unknown: ["mystery"],
    });
  });
});

describe("may contain", () => {
  it("comes only from a food's own data", () => {
    expect(find([onlyWith("onion"), saying("oats", has("wheat", "MAY_CONTAIN"))], "wheat").presence).toBe(
      "MAY_CONTAIN",
    );
    const silent = state([saying("stock-cube")]).findings.map(({ presence }) => presence);
    expect(silent).not.toContain("MAY_CONTAIN");
  });

  it("of a group may be any of its members", () => {
    const biscuit = saying("biscuit", has("tree-nut", "MAY_CONTAIN"));
    expect(find([biscuit], "almond", "AU").presence).toBe("MAY_CONTAIN");
    expect(find([biscuit], "tree-nut", "US").presence).toBe("MAY_CONTAIN");
  });
});

describe("groups", () => {
  it("that are contained leave open which member it is", () => {
    const mix = saying("nut-mix", has("tree-nut"));
    expect(find([mix], "tree-nut").presence).toBe("CONTAINS");
    expect(find([mix], "almond", "NZ")).toMatchObject({ presence: "UNKNOWN", unknown: ["nut-mix"] });
  });

  it("that are absent take tree nuts with them, but gluten-free wheat starch is still wheat", () => {
    expect(find([saying("seeds", has("tree-nut", "DOES_NOT_CONTAIN"))], "almond", "NZ").presence).toBe(
      "DOES_NOT_CONTAIN",
    );
    const starch = saying("starch", has("gluten", "DOES_NOT_CONTAIN"));
    expect(find([starch], "wheat").presence).toBe("UNKNOWN");
    expect(find([starch], "gluten", "DE").presence).toBe("DOES_NOT_CONTAIN");
    expect(find([saying("starch", has("gluten", "DOES_NOT_CONTAIN"), has("wheat"))], "gluten", "DE").presence).toBe(
      "CONTAINS",
    );
  });

  it("are absent when each of their members is", () => {
    const cereals = ["wheat", "barley", "rye", "oats", "triticale"].map((code) => has(code, "DOES_NOT_CONTAIN"));
    expect(find([saying("rice", ...cereals)], "gluten", "FR").presence).toBe("DOES_NOT_CONTAIN");
    expect(find([saying("rice", ...cereals.slice(1))], "gluten", "FR").presence).toBe("UNKNOWN");
  });

  it("of two statements about one code take the graver", () => {
    const torn = saying("torn", has("egg", "DOES_NOT_CONTAIN"), has("egg"));
    expect(find([torn], "egg").presence).toBe("CONTAINS");
  });
});

describe("lists", () => {
  it("differ by region: celery and mustard, molluscs, gluten and wheat, pine nuts", () => {
    const dish = [onlyWith("soup", "celery", "mollusc", "barley", "pine-nut", "tree-nut")];
    const codes = (region: string): readonly string[] =>
      state(dish, region).findings.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : []));
    expect(codes("US")).toEqual(["tree-nut"]);
    expect(codes("DE")).toEqual(["gluten", "tree-nut", "celery", "mollusc"]);
    expect(codes("GB")).toEqual(codes("DE"));
    expect(codes("CA")).toEqual(["shellfish", "tree-nut"]);
    expect(codes("AU")).toEqual(["barley", "pine-nut", "mollusc"]);
    expect(state(dish, "US").alsoContains.map(({ code }) => code)).toEqual(["mollusc", "celery", "barley"]);
  });

  it("of the EU do not count pine nuts, coconut or chestnuts as nuts", () => {
    const pine = onlyWith("pine-nuts", "pine-nut");
    expect(find([pine], "tree-nut", "IT").presence).toBe("DOES_NOT_CONTAIN");
    expect(state([pine], "IT").alsoContains).toEqual([{ code: "pine-nut", foods: ["pine-nuts"] }]);
    expect(find([pine], "tree-nut", "US").presence).toBe("CONTAINS");
  });

  it("change with the date: coconut left the US list in January 2025, and is still named", () => {
    const curry = [onlyWith("coconut-milk", "coconut")];
    expect(find(curry, "tree-nut", "US", "2024-12-31").presence).toBe("CONTAINS");
    expect(find(curry, "tree-nut", "US", today).presence).toBe("DOES_NOT_CONTAIN");
    expect(state(curry).alsoContains).toEqual([{ code: "coconut", foods: ["coconut-milk"] }]);
  });

  it("are all of them together where no region is named or the named one has none, and the answer says so", () => {
    const dish = [onlyWith("soup", "celery", "wheat", "gluten")];
    const unnamed = state(dish, null);
    expect(unnamed).toMatchObject({ asked: null, reach: "REGION_NOT_GIVEN" });
    expect(unnamed.lists.map(({ id }) => id)).toEqual(["us-2025", "eu", "uk", "ca", "anz"]);
    const contained = unnamed.findings.flatMap(({ code, presence }) => (presence === "CONTAINS" ? [code] : []));
    expect(contained).toEqual(expect.arrayContaining(["wheat", "gluten", "celery"]));
    expect(state(dish, "XA").reach).toBe("REGION_WITHOUT_LIST");
    expect(state(dish, "XA").findings).toEqual(unnamed.findings);
    expect(unnamed.findings.find(({ code }) => code === "tree-nut")?.presence).toBe("DOES_NOT_CONTAIN");
  });

  it("name each thing once", () => {
    for (const region of [null, "US", "FR", "GB", "CA", "NZ"]) {
      const codes = state([], region).findings.map(({ code }) => code);
      expect(new Set(codes).size).toBe(codes.length);
    }
  });
});
