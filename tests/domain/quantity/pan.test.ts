import { describe, expect, it } from "vitest";
import { panArea, panFactor, type Pan } from "../../../src/domain/quantity/pan.js";

const round = (diameter: number): Pan => ({ kind: "ROUND", diameter });
const tray = (length: number, width: number): Pan => ({ kind: "RECTANGULAR", length, width });

// geometry: a circle is pi r², a rectangle length times width
describe("moving to another pan", () => {
  it("follows the area of the inside", () => {
    expect(panArea(round(20))).toBeCloseTo(314.159265, 6);
    expect(panArea(tray(30, 20))).toBe(600);
  });

  it("multiplies by the new area over the old", () => {
    expect(panFactor(round(20), round(30))).toBeCloseTo(2.25, 12);
    expect(panFactor(tray(20, 20), tray(30, 20))).toBe(1.5);
    expect(panFactor(tray(20, 20), round(20))).toBeCloseTo(0.785398, 6);
  });
});
