import { describe, expect, it } from "vitest";
import type { Advice } from "../../../src/domain/storage/advice.js";
import { adviceText, adviceTexts } from "../../../src/exports/sentences/advice-text.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";

const words = {
  meal: (slug: string) => `meal ${slug}`,
  component: (slug: string) => `component ${slug}`,
  food: (slug: string) => `food ${slug}`,
  amount: () => "350 g",
  words: wordsFor("en"),
};

const every: readonly Advice[] = [
  {
    code: "FREEZE",
    component: "dal",
    portions: [
      { meal: "soup", day: 5, amount: { dimension: "MASS", low: 350, high: 350 } },
      { meal: "stew", day: 6, amount: null },
    ],
    thawDaysBefore: 1,
    daysAfterThawing: 2,
    thawRule: null,
  },
  { code: "MAKE_LATER", component: "dal", meals: [{ meal: "soup", day: 5, notBefore: 2 }] },
  { code: "SWAP_DAYS", meal: "soup", with: "stew" },
  { code: "EAT_EARLIER", meal: "soup", latestDay: 3 },
  { code: "SHOP_TWICE", food: "kale", meals: ["soup", "stew"], notBefore: 2 },
  { code: "EAT_BEFORE", day: 2, hours: 48, until: null },
  { code: "NO_PUBLISHED_RULE", keepsAs: null },
  { code: "WRITER_EXCEEDS_RULE", writerDays: 5, ruleDays: 3, rule: "r1" },
  { code: "REGION_WITHOUT_RULE", asked: "XA", used: "US" },
];

describe("the text of advice", () => {
  it.each(every)("of $code is made of whole sentences", (advice) => {
    const text = adviceText(advice, words);
    expect(text).toMatch(/^[A-Z].*[.]$/);
    expect(text).not.toMatch(/undefined|null|\[object|[A-Z]{2}_[A-Z]/);
  });

  it("says how much to freeze for which meal and when to thaw it", () => {
    expect(adviceText(every[0]!, words)).toBe(
      'Freeze 350 g for "meal soup" (day 5) and the share for "meal stew" (day 6) on the day it is made;' +
        " move it to the fridge 1 day before. Once thawed it keeps 2 days.",
    );
  });

  it("begins with the simplest way out, and never with an or", () => {
    const texts = adviceTexts(every.slice(0, 4), words, ["soup"]);
    expect(texts[0]).toBe("Eat it by day 3.");
    expect(texts.slice(1).every((text) => text.startsWith("Or "))).toBe(true);
    expect(adviceTexts(every.slice(3, 4), words, ["soup", "stew"])).toEqual(['Eat "meal soup" by day 3.']);
  });

  it("tells things of one kind together: two trips are not one or the other", () => {
    const trips = [2, 4].map((notBefore): Advice => ({ code: "SHOP_TWICE", food: "kale", meals: ["soup"], notBefore }));
    for (const text of adviceTexts(trips, words)) expect(text).toMatch(/^Buy the food kale/);
    expect(adviceTexts([every[8]!, every[2]!], words)).toEqual([
      `Eat "meal soup" and "meal stew" on each other's days.`,
      "No rule for XA is known here; those of US were used. Ask your local authority.",
    ]);
  });

  it("never promises that food is safe", () => {
    for (const advice of every) expect(adviceText(advice, words)).not.toMatch(/\bsafe\b/i);
  });
});
