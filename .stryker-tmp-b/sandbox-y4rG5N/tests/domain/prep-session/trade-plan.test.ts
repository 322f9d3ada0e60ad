// @ts-nocheck
import { describe, expect, it } from "vitest";
import { inOven, planned, session, step, timesOf, unattended, work } from "./builders.js";
import { sessionFaults } from "./session-faults.js";

// The times in this plan are common practice, no source.
const celsius = (fahrenheit: number) => ((fahrenheit - 32) * 5) / 9;
const nutCream = (soak: "hot" | "overnight") =>
  work("nut-cream", [
    soak === "hot" ? unattended("soak", 60) : unattended("soak", 600, { eveningBefore: true }),
    step("drain", 2, { after: ["soak"], appliance: "sink" }),
    step("blend", 2, { after: ["drain"], appliance: "blender", leaves: "nuts", washMinutes: 2 }),
    step("box", 2, { after: ["blend"] }),
  ]);
const roots = work("roots", [
  step("scrub", 8, { appliance: "sink" }),
  inOven("bake", 60, celsius(425), { after: ["scrub"] }),
  step("peel", 10, { after: ["bake"], minWait: 10 }),
]);
const herbs = work("herbs", [
  unattended("boil-water", 8, { appliance: "hob-ring" }),
  step("blanch", 0.25, { after: ["boil-water"], appliance: "hob-ring", maxWait: 10 }),
  step("chill", 2, { after: ["blanch"], maxWait: 0 }),
]);
const sauce = work(
  "herb-sauce",
  [
    step("trim", 6),
    step("process", 4, { after: ["trim"], appliance: "blender", leaves: "garlic", washMinutes: 2, lines: ["herbs"] }),
    step("jar", 3, { after: ["process"] }),
  ],
  { uses: [{ line: "herbs", component: "herbs" }] },
);
const grain = work("barley", [
  step("rinse", 2, { appliance: "sink" }),
  unattended("boil", 35, { after: ["rinse"], appliance: "hob-ring" }),
  step("drain", 3, { after: ["boil"], appliance: "sink", maxWait: 15 }),
]);

describe("A plan of soaked nuts, baked roots, blanched herbs, a blended sauce and a grain", () => {
  it.each(["hot", "overnight"] as const)("takes one cook one to two hours with a %s soak", (soak) => {
    const input = session([nutCream(soak), roots, herbs, sauce, grain]);
    const plan = planned(input);
    expect(sessionFaults(input, plan)).toEqual([]);
    expect(plan.optimal).toBe(true);
    expect(plan.totalMinutes).toBeGreaterThanOrEqual(60);
    expect(plan.totalMinutes).toBeLessThanOrEqual(120);
    expect(plan.eveningBefore).toEqual(soak === "hot" ? [] : ["nut-cream/soak"]);
  });

  it("lets the roots bake while the hands do the rest", () => {
    const plan = planned(session([nutCream("overnight"), roots, herbs, sauce, grain]));
    const [from, to] = timesOf(plan, "roots/bake");
    expect(to - from).toBe(60);
    const busy = plan.tasks.filter((task) => task.cooks.length > 0 && task.startMinute >= from && task.endMinute <= to);
    expect(busy.length).toBeGreaterThanOrEqual(8);
    expect(plan.totalMinutes).toBe(8 + 60 + 10 + 10);
  });

  it("moves the herbs from the pot into the ice water without a pause", () => {
    const plan = planned(session([herbs, sauce]));
    expect(timesOf(plan, "herbs/chill")[0]).toBe(timesOf(plan, "herbs/blanch")[1]);
  });
});
