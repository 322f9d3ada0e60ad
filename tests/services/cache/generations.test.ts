import { describe, expect, it } from "vitest";
import { Generations } from "../../../src/services/cache/generations.js";

const listening = (): Generations => {
  const generations = new Generations();
  generations.listening(true);
  return generations;
};

describe("what answers hang on", () => {
  it("holds until it changes, and nothing else does", () => {
    const generations = listening();
    const foods = [generations.slot("foods")];
    const rules = [generations.slot("rules")];
    const since = generations.now();
    expect(generations.areUnchanged([...foods, ...rules], since)).toBe(true);
    generations.heard("foods");
    expect(generations.areUnchanged(foods, since)).toBe(false);
    expect(generations.areUnchanged(rules, since)).toBe(true);
    expect(generations.areUnchanged(foods, generations.now())).toBe(true);
  });

  it("is one plan, or all that is published", () => {
    const generations = listening();
    const since = generations.now();
    generations.heard("plan north-field/bean-night");
    expect(generations.areUnchanged([generations.slot("plan north-field/bean-night")], since)).toBe(false);
    expect(generations.areUnchanged([generations.slot("plan north-field/roots")], since)).toBe(true);
    expect(generations.areUnchanged([generations.slot("plans")], since)).toBe(false);
    expect(generations.areUnchanged([generations.slot("publishers"), generations.slot("foods")], since)).toBe(true);
    generations.heard("plans");
    expect(generations.areUnchanged([generations.slot("plan north-field/roots")], since)).toBe(false);
  });

  it("is everything where a newer version says what this one does not know", () => {
    const generations = listening();
    const since = generations.now();
    generations.heard("weather");
    for (const each of ["foods", "rules", "publishers", "plans", "plan a/b"] as const) {
      expect(generations.areUnchanged([generations.slot(each)], since)).toBe(false);
    }
  });

  it("holds nothing while changes are not heard, and nothing from before", () => {
    const generations = new Generations();
    expect(generations.areUnchanged([], generations.now())).toBe(false);
    generations.listening(true);
    const since = generations.now();
    expect(generations.areUnchanged([generations.slot("rules")], since)).toBe(true);
    generations.listening(false);
    expect(generations.areUnchanged([], generations.now())).toBe(false);
    generations.listening(true);
    expect(generations.areUnchanged([generations.slot("rules")], since)).toBe(false);
  });
});
