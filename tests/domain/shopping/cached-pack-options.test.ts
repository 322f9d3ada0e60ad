import { describe, expect, it } from "vitest";
import { cachedPerFood, cachedPackOptions } from "../../../src/domain/shopping/cached-pack-options.js";
import { packShelf, type Shop } from "../../../src/domain/shopping/pack-options.js";
import { density, food, pack } from "../../kit/builders.js";

const oil = food("oil", {
  densities: [density(0.92)],
  packs: [
    pack("500 ml", "4.00", { region: "XA" }),
    pack("1 l", "7.00", { region: "XB" }),
    pack("920 g", "7.50"),
    pack("1 piece", "1.00"),
  ],
});

const shops: readonly Shop[] = ["XA", "XB", null].flatMap((region) =>
  ["XTS", "XXX", null].map((currency) => ({ region, currency })),
);

describe("a shelf that is asked for again", () => {
  it("is the same shelf, and never another shop's or another dimension's", () => {
    for (const round of [1, 2]) {
      for (const shop of shops) {
        for (const dimension of ["MASS", "VOLUME", "COUNT"] as const) {
          expect(cachedPackOptions(oil, dimension, shop), `round ${round}`).toEqual(packShelf(oil, dimension, shop));
        }
      }
    }
    const here = { region: "XA", currency: "XTS" };
    expect(cachedPackOptions(oil, "MASS", here)).toBe(cachedPackOptions(oil, "MASS", { ...here }));
  });

  it("belongs to one food as it is, not to a later edition of it", () => {
    const shop = { region: null, currency: "XTS" };
    expect(cachedPackOptions(oil, "VOLUME", shop).packs.length).toBe(3);
    expect(cachedPackOptions({ ...oil, packs: [] }, "VOLUME", shop).packs).toEqual([]);
  });

  it("is forgotten when very many other shops have asked, and only then", () => {
    const vinegar = food("vinegar", { packs: [pack("1 l", "2.00")] });
    const shopAt = (n: number): Shop => ({ region: `X${String.fromCharCode(65 + n)}`, currency: "XTS" });
    const first = cachedPackOptions(vinegar, "VOLUME", shopAt(0));
    for (let n = 1; n < cachedPerFood; n++) cachedPackOptions(vinegar, "VOLUME", shopAt(n));
    expect(cachedPackOptions(vinegar, "VOLUME", shopAt(0))).toBe(first);
    // Its first turn to give way is forgiven, since it was asked for.
    for (let n = cachedPerFood; n < 3 * cachedPerFood; n++) cachedPackOptions(vinegar, "VOLUME", shopAt(n));
    expect(cachedPackOptions(vinegar, "VOLUME", shopAt(0))).not.toBe(first);
    expect(cachedPackOptions(vinegar, "VOLUME", shopAt(0))).toEqual(first);
  });
});
