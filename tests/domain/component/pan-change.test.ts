import { describe, expect, it } from "vitest";
import { panChange, sameArea, type Pan } from "../../../src/domain/component/pan-change.js";

const round = (diameter: number): Pan => ({ shape: "ROUND", diameter });
const tray = (length: number, width: number): Pan => ({ shape: "RECTANGLE", length, width });

describe("O-13: another pan", () => {
  // Areas of common pans in square inches: a question-and-answer page on cooking (question 42162) and a pan cheat sheet.
  it("from a 9 inch round to an 8 inch square changes nothing", () => {
    const change = panChange(round(9), tray(8, 8));
    expect(change!.factor).toBeCloseTo(1.006, 3);
    expect(change!.leaveAsIs).toBe(true);
  });

  it("from 8 by 8 to 9 by 13 takes 1.828 of everything: the areas count, not the sides", () => {
    const change = panChange(tray(8, 8), tray(9, 13));
    expect(change!.factor).toBeCloseTo(117 / 64, 12);
    expect(change!.leaveAsIs).toBe(false);
  });

  it("and back again is where one began", () => {
    const [there, back] = [panChange(round(20), tray(30, 20)), panChange(tray(30, 20), round(20))];
    expect(there!.factor * back!.factor).toBeCloseTo(1, 12);
    expect(panChange(round(10), round(20))!.factor).toBeCloseTo(4, 12);
  });

  it("is left alone only within the limit", () => {
    expect(panChange(tray(100, 1), tray(100 * (1 + sameArea) - 0.01, 1))!.leaveAsIs).toBe(true);
    expect(panChange(tray(100, 1), tray(100 * (1 + sameArea) + 0.01, 1))!.leaveAsIs).toBe(false);
    expect(panChange(tray(100, 1), tray(100 * (1 - sameArea) - 0.01, 1))!.leaveAsIs).toBe(false);
  });

  it("of no size has no answer", () => {
    expect(panChange(tray(0, 8), round(9))).toBeNull();
    expect(panChange(round(9), tray(0, 8))).toBeNull();
    expect(panChange(round(9), tray(Infinity, 8))).toBeNull();
    expect(panChange(round(NaN), round(9))).toBeNull();
  });
});
