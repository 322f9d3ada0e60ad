import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainWords } from "../../../src/domain/quantity/food-name.js";
import { spellingsOf } from "../../../src/domain/quantity/naming/word-variants.js";
import { runToEnd, unlimitedWork } from "../../../src/domain/counted-work.js";
import { partsOfLines, stemOf } from "../../../src/services/drafts/held-names.js";

const letters = fc.string({ unit: fc.constantFrom(..."aäßéo-, kcñ🥕Ω".split("")), maxLength: 30 });

describe("the parts of lines", () => {
  it("say of every name what searching each spelling of the text for its stem says", () => {
    fc.assert(
      fc.property(
        fc.array(letters, { maxLength: 4 }),
        fc.array(letters, { minLength: 1, maxLength: 10 }),
        (lines, names) => {
          const mayHold = runToEnd(partsOfLines(lines, unlimitedWork));
          const spelled = lines.flatMap((line) => spellingsOf(plainWords(line)));
          expect(names.map((name) => mayHold(stemOf(name)))).toEqual(
            names.map((name) => stemOf(name) === "" || spelled.some((word) => word.includes(stemOf(name)))),
          );
        },
      ),
    );
  });

  it("find a food by another form of its name", () => {
    const mayHold = runToEnd(partsOfLines(["3 große Möhren, geraspelt"], unlimitedWork));
    expect(mayHold(stemOf("Möhre"))).toBe(true);
    expect(mayHold(stemOf("Sellerie"))).toBe(false);
  });
});
