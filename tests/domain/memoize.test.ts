import { describe, expect, it } from "vitest";
import { memoizeLatest, memoize } from "../../src/domain/memoize.js";

describe("once for each thing", () => {
  it("is found once, also where nothing is found, and for each thing by itself", () => {
    const asked: object[] = [];
    const find = memoize((thing: { readonly name: string | undefined }) => {
      asked.push(thing);
      return thing.name;
    });
    const [none, one, like] = [{ name: undefined }, { name: "one" }, { name: "one" }];
    expect([none, none, one, one, like].map(find)).toEqual([undefined, undefined, "one", "one", "one"]);
    expect(asked).toEqual([none, one, like]);
  });
});

describe("the latest answers", () => {
  it("are kept for equal questions, and give way to those asked since", () => {
    const asked: number[] = [];
    const double = memoizeLatest("test", 2, String, (number: number) => {
      asked.push(number);
      return number * 2;
    });
    expect([1, 2, 1, 3, 1, 2].map(double)).toEqual([2, 4, 2, 6, 2, 4]);
    // 2 was asked longest ago when 3 came.
    expect(asked).toEqual([1, 2, 3, 2]);
  });
});
