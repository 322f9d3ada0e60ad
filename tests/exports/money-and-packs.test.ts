import { describe, expect, it } from "vitest";
import { shoppingCsv } from "../../src/exports/csv/shopping-csv.js";
import { plainText } from "../../src/exports/document/plain-text.js";
import { shoppingMarkdown } from "../../src/exports/document/shopping-markdown.js";
import { planCard } from "../../src/exports/page/card.js";
import { moneyText } from "../../src/exports/words/money-text.js";
import { wordsFor } from "../../src/exports/words/words-for.js";
import { answerOf, demoBundle, sundayHousehold } from "./demo-answer.js";

const price = { amount: "1204.70", currency: "XTS" };

it.each([
  ["en-GB", "1204.70 XTS"],
  ["de", "1204,70 XTS"],
  ["de-CH", "1204.70 XTS"],
  ["fr-FR", "1204,70 XTS"],
  ["es-MX", "1204.70 XTS"],
  ["pl", "1204,70 XTS"],
])("a price has the decimal mark of the reader: %s", (locale, said) => {
  expect(moneyText(price, { locale })).toBe(said);
});

describe("a list for a reader of another language", () => {
  it.each(["de", "fr", "es", "pl"])("has prices and packs as people there write and call them: %s", async (locale) => {
    const answer = await answerOf(demoBundle("bean-night"), 5, { ...sundayHousehold, locale });
    const { list, reader, scaled } = answer;
    const input = { list, plans: [scaled.bundle], reader, servings: 5 };
    const made = [
      shoppingMarkdown(input),
      plainText(answer),
      JSON.stringify(planCard(answer, "https://plans.example/p/a/b")),
      shoppingCsv(list, reader, false, "SPREADSHEET"),
    ];
    for (const text of made.slice(0, 3)) {
      expect(text).toMatch(/\d,\d\d XTS/);
      expect(text).not.toMatch(/\d\.\d\d XTS/);
    }
    const own = Object.values(wordsFor(locale).packNames);
    const packs = made.flatMap((text) => [...text.matchAll(/\d × (\p{L}+) /gu)].map(([, pack = ""]) => pack));
    expect(packs.length).toBeGreaterThan(20);
    expect(packs.filter((pack) => !own.includes(pack))).toEqual([]);
  });
});
