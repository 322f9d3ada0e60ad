import { describe, expect, it } from "vitest";
import { readDocuments } from "../../../../src/imports/documents/read-documents.js";

const food = (region: string) => `kind: food
slug: carrot
names: { en: carrot }
aisle: vegetables
shopped-by: mass
packs:
  - { id: bag, name: bag, content: 1 kg, region: ${region}, seen: 2026-03-02, source: writer }
`;

describe("the region of a pack in a document", () => {
  it.each(["GB", "gb", "US-WA", "XA"])("may be %s", (region) => {
    expect(readDocuments(food(region), "carrot.yaml").problems).toEqual([]);
  });

  it.each([
    ["UK", "GB"],
    ["USA", "US"],
    ["Atlantis", "such as GB or US-WA"],
  ])("is refused as %s, with its place and %s instead", (region, instead) => {
    const [found, ...others] = readDocuments(food(region), "carrot.yaml").problems;
    expect(others).toEqual([]);
    expect(found).toMatchObject({ file: "carrot.yaml", line: 7, path: ["packs", 0, "region"] });
    expect(found?.problem).toMatchObject({ code: "BAD_SHAPE", got: region });
    expect(found?.problem.code === "BAD_SHAPE" && found.problem.expected).toContain(instead);
  });
});
