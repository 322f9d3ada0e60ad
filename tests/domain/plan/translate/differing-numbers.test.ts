import { countSteps } from "../../../kit/count-steps.js";
import { expect, test } from "vitest";
import { differingLinks, differingNumbers } from "../../../../src/domain/plan/translate/differing-numbers.js";

const differ = (original: string, translated: string, from = "en-GB", to = "de") =>
  differingNumbers({ text: original, language: from }, { text: translated, language: to }, "TEXT");

// What cooks write, by common practice in both languages; the oven dials are those of the conversion tables printed in cookery books.
test.each([
  ["Boil for 45 minutes.", "45 Minuten kochen."],
  ["Boil for 1.5 hours.", "1,5 Stunden kochen."],
  ["Boil for 1 h 30 min.", "90 Minuten kochen."],
  ["Boil for 1 hour and 30 minutes.", "1 Stunde und 30 Minuten kochen."],
  ["Stir in ½ of it.", "1/2 davon unterrühren."],
  ["Stir in 1½ tsp.", "1,5 TL unterrühren."],
  ["Add 1,500 ml water.", "1,5 l Wasser zugeben."],
  ["Add 1,500 g.", "1.500 g zugeben."],
  ["Add 12,500 g.", "12\u202f500 g zugeben."],
  ["Bake at 180–200 °C.", "Bei 180 bis 200 °C backen."],
  ["Bake at 400 °F.", "Bei 200 °C backen."],
  ["Bake at 350F.", "Bei 180 °C backen."],
  ["Bake at 200 °C (400 °F).", "Bei 200 °C backen."],
  ["Heat to 165 °F inside.", "Auf 74 °C im Kern erhitzen."],
  ["Freeze at -18 °C.", "Bei minus 18 °C einfrieren."],
  ["Simmer for ten minutes.", "10 Minuten köcheln."],
  ["Use 2 onions.", "Zwei Zwiebeln nehmen."],
  ["A 10-minute rest.", "10 Minuten ruhen lassen."],
  ["Keep 2 days.", "48 Stunden haltbar."],
  ["No number here.", "Keine Zahl hier."],
  ["Add 10 mint leaves.", "10 Minzblätter zugeben."],
])("%s = %s", (original, translated) => {
  expect(differ(original, translated)).toBeNull();
});

test.each([
  ["Boil for 45 minutes.", "54 Minuten kochen.", ["45 minutes"], ["54 Minuten"]],
  ["Boil for 45 minutes.", "45 Stunden kochen.", ["45 minutes"], ["45 Stunden"]],
  ["Boil for 45 minutes.", "Kochen.", ["45 minutes"], []],
  ["Bake at 200 °C for 45 min.", "Bei 45 °C 200 Minuten backen.", ["200 °C", "45 min"], ["45 °C", "200 Minuten"]],
  ["Heat to 165 °F inside.", "Auf 70 °C im Kern erhitzen.", ["165 °F"], ["70 °C"]],
  ["Bake at 350 °F.", "Bei 200 °C backen.", ["350 °F"], ["200 °C"]],
  ["Bake at 180 °C.", "Bei 185 °C backen.", ["180 °C"], ["185 °C"]],
  ["Freeze at -18 °C.", "Bei 18 °C einfrieren.", ["−18 °C"], ["18 °C"]],
  ["Add 1.5 tsp salt.", "15 TL Salz zugeben.", ["1.5"], ["15"]],
  ["Add 5 g salt.", "5 kg Salz zugeben.", ["5 g"], ["5 kg"]],
])("%s ≠ %s", (original, translated, before, after) => {
  expect(differ(original, translated)).toEqual({ original: before, translated: after });
});

test("reads digits of other scripts, and thousands parted by spaces", () => {
  expect(differ("Boil for 45 minutes.", "اسلق لمدة ٤٥ دقيقة", "en", "ar")).toBeNull();
  expect(differ("Boil for 45 minutes.", "४५ मिनट उबालें", "en", "hi")).toBeNull();
  expect(differ("Boil for 45 minutes.", "٥٤ دقيقة", "en", "ar")).not.toBeNull();
  expect(differ("Ajouter 1 500 g.", "Add 1,500 g.", "fr", "en")).toBeNull();
  expect(differ("Ajouter 1 500 g.", "Add 500 g.", "fr", "en")).not.toBeNull();
});

test("numbers of lists and of addresses are nobody's", () => {
  const from = { text: "1. Salt\n2. Pepper\n\n[see](https://allotments.example/2024/5)", language: "en" };
  const to = { text: "- Salz\n- Pfeffer\n\n[siehe](https://allotments.example/de/7)", language: "de" };
  expect(differingNumbers(from, to, "WRITING")).toBeNull();
  expect(differingLinks(from.text, to.text)).toEqual([
    "https://allotments.example/2024/5",
    "https://allotments.example/de/7",
  ]);
});

test("numbers are told once, and the first of them only", () => {
  expect(differ("Add 5 g, 5 g and 7 g.", "3 g, 3 g und 3 g zugeben.")).toEqual({
    original: ["5 g", "7 g"],
    translated: ["3 g"],
  });
  const many = Array.from({ length: 500 }, (_, at) => `${String(at + 1000)} g`).join(", ");
  expect(differ(many, "nichts")?.original).toEqual(many.split(", ").slice(0, 10));
});

test("a sign is looked for close to its number, whatever stands before", () => {
  const words = "Wasch den Grünkohl. ".repeat(300);
  expect(differ(`${words}Freeze at -18 °C.`, `${words}Bei −18 °C einfrieren.`)).toBeNull();
  expect(differ(`${words}Bake at 180 - 200 °C.`, `${words}Bei 180 bis 200 °C backen.`)).toBeNull();
});

// A text may be nothing but numbers: 9,000 letters hold some thousand of them.
test.each([
  ["numbers", (at: number) => String(at + 1000), (at: number) => String(at + 5000)],
  ["masses", (at: number) => `${String(at + 1000)} g`, (at: number) => `${String(at + 5000)} g`],
  ["temperatures", (at: number) => `-${String(at + 100)} °C`, (at: number) => `-${String(at + 5100)} °F`],
  ["the same numbers", (at: number) => String(at + 1000), (at: number) => String(at + 1000)],
])("twice as many %s are no more than about twice the work", (_, original, translated) => {
  const text = (of: (at: number) => string, count: number) =>
    Array.from({ length: count }, (__, at) => of(at)).join("; ");
  const work = (count: number) => {
    const [before, after] = [text(original, count), text(translated, count)];
    return countSteps(() => differ(before, after));
  };
  work(50);
  expect(work(600)).toBeLessThan(2.3 * work(300));
});
