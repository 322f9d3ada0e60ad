import { describe, expect, it } from "vitest";
import { readShipped } from "../../../../src/app/setup/shipped-data.js";
import type { StoragePlace } from "../../../../src/domain/model/keeping.js";
import { inForceOn } from "../../../../src/domain/model/region.js";
import { checkFoodKeeping, checkKeeping } from "../../../../src/domain/plan/check/check-keeping.js";
import { classesAround, needsCold } from "../../../../src/domain/storage/keeping-classes.js";
import { lastingDays } from "../../../../src/domain/storage/keeping-window.js";
import { component, food, keeps, line, of, part, route } from "../../../kit/builders.js";

// The published rules that come with the program; each names its own source.
const { safety } = await readShipped("rules", process.cwd());
const today = "2026-12-01";

const found = (keepsAs: string | null, days: number, place: StoragePlace) =>
  checkKeeping(component("dish", "1 kg", [], { keepsAs, keeping: [keeps(days, place)] }), safety, today);

/** The most that any rule in force gives a class, worked out beside the check. */
function most(code: string, place: StoragePlace): number | null {
  const within = classesAround(code, safety.classes).map((each) => each.code);
  const days = safety.keeping
    .filter((rule) => within.includes(rule.keepsAs) && rule.place === place && inForceOn(rule, today))
    .map(lastingDays);
  return days.length === 0 ? null : Math.max(...days);
}

const classes = safety.classes.map(({ code }) => code);

describe("a writer's days in the fridge", () => {
  const ruled = classes.flatMap((code) => {
    const days = most(code, "FRIDGE");
    return days === null ? [] : [{ code, days }];
  });

  it("are held against a rule for most classes", () => {
    expect(ruled.length).toBeGreaterThan(classes.length / 2);
  });

  it.each(ruled)(
    "stop publishing beyond every published rule of the class, not at the longest: $code",
    ({ code, days }) => {
      expect(found(code, days, "FRIDGE")).toEqual([]);
      expect(found(code, days + 1, "FRIDGE")).toMatchObject([
        {
          code: "KEPT_BEYOND_RULES",
          path: ["components", "dish", "keeping", 0],
          subject: "dish",
          keepsAs: code,
          most: days,
        },
      ]);
    },
  );

  it("stop publishing for the two weeks that nobody allows a cooked vegetable", () => {
    expect(found("cooked-vegetable", 14, "FRIDGE").map(({ code }) => code)).toEqual(["KEPT_BEYOND_RULES"]);
  });
});

describe("room temperature", () => {
  it.each(classes.filter((code) => needsCold(code, safety.classes)))(
    "stops publishing for what needs the cold: %s",
    (code) => {
      expect(found(code, (most(code, "ROOM") ?? 0) + 0.5, "ROOM")).toMatchObject([
        { code: "NEEDS_THE_COLD", keepsAs: code },
      ]);
    },
  );

  it("does not for what keeps on a shelf", () => {
    expect(found("dry-crumb", most("dry-crumb", "ROOM") ?? 7, "ROOM")).toEqual([]);
  });

  it("of two hours is what the rules allow a cooked dish", () => {
    expect(found("leftovers", 2 / 24, "ROOM")).toEqual([]);
    expect(found("leftovers", 3, "ROOM").map(({ code }) => code)).toEqual(["NEEDS_THE_COLD"]);
  });
});

describe("days in the freezer", () => {
  it("stop nothing, because what is published of it is quality", () => {
    expect(found("soup", 3000, "FREEZER")).toEqual([]);
  });
});

describe("a route", () => {
  it("is held against its component's class unless it names its own", () => {
    const dish = (keepsAs: string | null) =>
      component("dish", "1 kg", [], {
        keepsAs: "cooked-vegetable",
        routes: [{ ...route("bought", [line("1 kg", of("carrot"))]), keepsAs, keeping: [keeps(14)] }],
      });
    expect(checkKeeping(dish(null), safety, today)).toMatchObject([
      { code: "KEPT_BEYOND_RULES", path: ["components", "dish", "routes", "bought", "keeping", 0] },
    ]);
    expect(checkKeeping(dish("opened-tahini"), safety, today)).toEqual([]);
  });
});

describe("a food as it is bought", () => {
  it("is held against its class, and each of its parts against its own", () => {
    const tofu = food("tofu", {
      keepsAs: "tofu",
      keeping: [keeps(3, "ROOM")],
      parts: [part("whey", "10 ml", [], { keepsAs: "lemon-juice", keeping: [keeps(400)] })],
    });
    expect(checkFoodKeeping(tofu, safety, today)).toMatchObject([
      { code: "NEEDS_THE_COLD", path: ["foods", "tofu", "keeping", 0] },
      { code: "KEPT_BEYOND_RULES", path: ["foods", "tofu", "parts", "whey", "keeping", 0] },
    ]);
  });
});
