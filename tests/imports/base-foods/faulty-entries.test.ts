import { describe, expect, it } from "vitest";
import { readBaseFoods } from "../../../src/imports/base-foods/read-base-foods.js";

const bytes = (text: string) => new TextEncoder().encode(text);
const names = "names: { en: x|xs, de: x, fr: x, es: x, pl: x }";
const whole = `${names}\n  aisle: fruit\n  shop: count\n  is: plant`;

const read = (...files: readonly string[]) =>
  readBaseFoods({
    files: files.map((text, at) => ({ name: `${String(at)}.yaml`, text })),
    storage: bytes("id,name,subtitle,place,basis,min,max,unit\n1,Apples,,pantry,,3,,Weeks\n"),
    cooked: bytes("yield_id,in_qty,out_qty,source,source_section\n"),
    weights: bytes("ndb_no,seq,amount,measure,grams\n"),
    catalogue: { edition: { code: "e", title: "E" }, rows: new Map() },
    rules: { keeping: [], classes: [] },
  });
const edition = "kind: base-foods\ncode: 2026-01-01\ntitle: T\n";
const faults = (entry: string, more = "") =>
  read(edition, `apple:\n  ${entry}\n${more}`).problems.map(({ file, line, path }) => [file, line, path.join(".")]);

describe("a faulty base food", () => {
  it("is told by file, line, food and key", () => {
    expect(faults(whole)).toEqual([]);
    expect(faults(`${whole}\n  fsis: [7]`)).toEqual([["1.yaml", 6, "apple.fsis.0"]]);
    expect(faults(`${whole}\n  usda: "99999"`)).toEqual([["1.yaml", 6, "apple.usda"]]);
    expect(faults(`${whole}\n  measures: { piece: w3 }`)).toEqual([["1.yaml", 6, "apple.measures.piece"]]);
    expect(faults(`${whole}\n  contains: [mlik]`)).toEqual([["1.yaml", 6, "apple.contains.0"]]);
    expect(faults(`${whole}\n  colour: red`)).toEqual([["1.yaml", 6, "apple.colour"]]);
    expect(faults(`${whole.replace("plant", "made")}`)).toEqual([["1.yaml", 2, "apple.diets"]]);
    const made = `${whole.replace("plant", "made")}\n  unsure: [egg]\n  diets:`;
    expect(faults(`${made} { vegan: unknown, vegetarian: yes, gluten-free: yes }`)).toEqual([]);
    expect(faults(`${made} { vegan: yes, vegetarian: yes, gluten-free: yes }`)).toEqual([
      ["1.yaml", 7, "apple.diets.vegan"],
    ]);
    expect(faults(`${whole}\n  shares: [x]`)).toEqual([["1.yaml", 6, "apple.shares.0"]]);
    expect(faults(whole, `pear:\n  ${whole}`).map(([file, , path]) => [file, path])).toContainEqual([
      "1.yaml",
      "pear.names.en",
    ]);
  });

  it("may share a word with another where both say so", () => {
    const sharing = `${whole}\n  shares: [x, xs]`;
    expect(faults(sharing, `pear:\n  ${sharing}`)).toEqual([]);
    expect(faults(sharing, `pear:\n  ${whole}`)).not.toEqual([]);
  });

  it("keeps all of them out, and so does an edition without a head", () => {
    expect(read(edition, `apple:\n  ${whole}\n  fsis: [7]`).base).toBeNull();
    expect(read(`apple:\n  ${whole}`)).toMatchObject({ base: null, problems: [{ path: ["kind"] }] });
    expect(read(edition, `apple:\n  ${whole}\n  fsis: [1]`).base?.foods[0]?.keeping).toMatchObject([
      { place: "ROOM", days: 21, purpose: "QUALITY", region: "US" },
    ]);
  });
});
