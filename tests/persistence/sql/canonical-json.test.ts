import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runToEnd } from "../../../src/domain/counted-work.js";
import { canonicalJson, canonicalJsonInSlices } from "../../../src/persistence/sql/canonical-json.js";
import { largeBundle } from "../../kit/large-bundle.js";

describe("the canonical text of a value", () => {
  it("says the same value, with keys in the order of their code units", () => {
    expect(canonicalJson({ b: 1, a: [{ z: null, é: "ä", Z: undefined }], A: {} })).toBe(
      '{"A":{},"a":[{"z":null,"é":"ä"}],"b":1}',
    );
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it("is the same written in slices", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 8 }), (value) => {
        expect(runToEnd(canonicalJsonInSlices(value))).toBe(canonicalJson(value));
      }),
    );
  });

  it("lets others go on between the lines of a large plan", () => {
    const bundle = largeBundle({ components: 50, lines: 30, meals: 6 });
    let longest = 0;
    let slices = 0;
    const writing = canonicalJsonInSlices(bundle);
    for (let turn = writing.next(); turn.done !== true; turn = writing.next()) slices += 1;
    for (const { lines } of bundle.components)
      for (const line of lines) longest = Math.max(longest, canonicalJson(line).length);
    // A slice writes no more than one thing of a plan does: a line, a step, a food.
    expect(slices).toBeGreaterThan(50 * 30);
    expect(canonicalJson(bundle).length / slices).toBeLessThan(longest);
  });
});
