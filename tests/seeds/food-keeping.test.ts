import { expect, it } from "vitest";
import { readShipped } from "../../src/app/setup/shipped-data.js";
import { checkFoodKeeping } from "../../src/domain/plan/check/check-keeping.js";
import { demo } from "../graphql/open-test-app.js";

it("keeps every food of the demo within what is published", async () => {
  const { safety } = await readShipped("rules", process.cwd());
  expect(demo.foods.flatMap((food) => checkFoodKeeping(food, safety, "2026-12-01"))).toEqual([]);
});
