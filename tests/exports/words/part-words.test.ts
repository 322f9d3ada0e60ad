import { describe, expect, it } from "vitest";
import { partName, partText } from "../../../src/exports/words/part-words.js";

const lemons = { number: "2½", several: true, named: true };

describe("a part of a food", () => {
  // O-06 and O-17 name the forms in English; those of other languages are common practice, no source.
  it.each([
    ["en", "lemon", "juice", "1 tbsp", null, "1 tbsp lemon juice"],
    ["en", "lemon", "zest", "2½ lemons", lemons, "zest of 2½ lemons"],
    ["en", "egg", "white", "3 eggs", { number: "3", several: true, named: true }, "3 egg whites"],
    ["en", "egg", "yolk", "1 egg", { number: "1", several: false, named: true }, "1 egg yolk"],
    ["en", "celeriac", "leaves", "2", { number: "2", several: true, named: false }, "leaves of 2 celeriac"],
    ["de", "Zitrone", "juice", "1 EL", null, "1 EL Zitrone (Saft)"],
    ["de", "Ei", "yolk", "3 Eier", { number: "3", several: true, named: true }, "3 Eier (Eigelb)"],
    ["fr", "citron", "zest", "2 citrons", lemons, "2 citrons (zeste)"],
    ["es", "limón", "juice", "2 limones", lemons, "2 limones (zumo)"],
    ["pl", "cytryna", "zest", "2 cytryny", lemons, "2 cytryny (skórka)"],
    ["it", "limone", "juice", "2 limoni", lemons, "2 limoni (juice)"],
  ] as const)("in %s: %s, %s, %s", (language, food, part, amount, pieces, expected) => {
    expect(partText({ food, part, amount, pieces }, language)).toBe(expected);
  });

  it("has a name without an amount", () => {
    expect(partName("lemon", "juice", "en")).toBe("lemon juice");
    expect(partName("Zitrone", "juice", "de")).toBe("Zitrone (Saft)");
  });
});
