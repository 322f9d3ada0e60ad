import { expect, it } from "vitest";
import { problemText } from "../../../src/exports/sentences/problem-text.js";

it.each([
  [["lines", 0, "food"], 'Ingredient 1: There is no food "brown-rice".'],
  [["meals", 1, "lines", 2, "food"], 'Meal 2, ingredient 3: There is no food "brown-rice".'],
  [["components", "dal", "lines", "l2"], 'components > dal > lines > l2: There is no food "brown-rice".'],
  [[], 'There is no food "brown-rice".'],
])("the place %j is told as a writer counts", (path, text) => {
  const said = problemText({ code: "UNKNOWN_FOOD", path, food: "brown-rice" });
  expect(said.startsWith(text)).toBe(true);
});
