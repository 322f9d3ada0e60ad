import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shop } from "../../../src/domain/plan/shop.js";
import { csvText, marksOf, standardMarks } from "../../../src/exports/csv/csv-text.js";
import { legibleText } from "../../../src/exports/words/legible-text.js";
import { shoppingCsv } from "../../../src/exports/csv/shopping-csv.js";
import { answerOf, demoBundle, sundayHousehold } from "../demo-answer.js";
import { hostileText } from "../hostile-text.js";

const columns = [
  "aisle",
  "food",
  "need",
  "unit",
  "on hand",
  "to buy",
  "packs",
  "price",
  "currency",
  "uses",
  "optional",
];

type Row = Readonly<Record<string, string>>;

/** As a parser that we did not write (csv-parse) reads it. */
const rowsOf = (text: string, delimiter = ","): readonly Row[] =>
  parse(text, { columns: true, delimiter, bom: true, record_delimiter: "\r\n" }) as Row[];

describe("a shopping list as a table", () => {
  it("is what the golden file shows, and reads back line by line", async () => {
    const answer = await answerOf(demoBundle("roots-and-barley"), 7, {
      ...sundayHousehold,
      onHand: [{ food: "carrot", amount: "250", unit: "g" }],
    });
    const text = shoppingCsv(answer.list, answer.reader, false, "STANDARD");
    await expect(text).toMatchFileSnapshot("../../golden/list.csv");
    const rows = rowsOf(text);
    expect(Object.keys(rows[0] ?? {})).toEqual(columns);
    expect(rows).toHaveLength(answer.list.lines.length);
    for (const [at, { food, need, toBuy, cost, buy }] of answer.list.lines.entries()) {
      const row = rows[at];
      expect(row?.["aisle"]).toBe(food.aisle.replaceAll("-", " "));
      if (need === null) continue;
      const grams = { g: 1, kg: 1000, ml: 1, l: 1000 }[row?.["unit"] ?? ""];
      if (grams === undefined) continue;
      expect(Number(row?.["need"]) * grams).toBeCloseTo(need.high, -Math.log10(need.high * 1e-5));
      expect(Number(row?.["to buy"]) * grams).toBeCloseTo(toBuy?.high ?? 0, 1);
      expect(row?.["price"]).toBe(buy.length === 0 ? "" : cost.atTill?.amount);
    }
    const carrot = rows.find((row) => row["food"] === "carrot");
    expect(Number(carrot?.["need"]) - Number(carrot?.["on hand"])).toBeCloseTo(Number(carrot?.["to buy"]), 4);
    expect(carrot).toMatchObject({ unit: "kg", "on hand": "0.25", currency: "XTS" });
  });

  it("for a spreadsheet in German has semicolons and decimal commas, and says that it is UTF-8", async () => {
    const answer = await answerOf(demoBundle("roots-and-barley"), 7, { ...sundayHousehold, locale: "de-DE" });
    const text = shoppingCsv(answer.list, answer.reader, false, "SPREADSHEET");
    expect(text.startsWith("\ufeff")).toBe(true);
    const rows = rowsOf(text, ";");
    expect(rows.find((row) => row["Währung"] === "XTS")?.["Preis"]).toMatch(/^\d+,\d\d$/);
    expect(marksOf("en-GB")).toEqual(standardMarks);
    expect(marksOf("de-CH")).toEqual(standardMarks);
    expect(marksOf("not a tag")).toEqual(standardMarks);
  });

  it("over two plans names the plan of every use", async () => {
    const answers = [
      await answerOf(demoBundle("roots-and-barley"), 7, sundayHousehold),
      await answerOf(demoBundle("lentils-and-greens"), 3, sundayHousehold),
    ];
    const [first] = answers;
    const list = shop(
      answers.map(({ scaled }) => scaled),
      first!.household,
    );
    const uses = rowsOf(shoppingCsv(list, first!.reader, true, "STANDARD")).map((row) => row["uses"]);
    expect(uses.join(" ")).toMatch(/Roots and barley, four ways: .*; /);
  });
});

describe("a cell", () => {
  it("reads back as its words, and never begins as a formula does", () => {
    fc.assert(
      fc.property(hostileText, fc.constantFrom(standardMarks, marksOf("de")), (words, marks) => {
        const text = csvText(
          [
            ["head", "tail"],
            [words, { decimal: "1.5" }],
          ],
          marks,
        );
        const [head, row] = parse(text, { delimiter: marks.separator, record_delimiter: "\r\n" }) as string[][];
        expect(head).toEqual(["head", "tail"]);
        const [cell = "", number] = row ?? [];
        expect(number).toBe(`1${marks.decimal}5`);
        expect(cell.replace(/^'/, "")).toBe(legibleText(words).replace(/^'/, ""));
        // The characters that OWASP's page on CSV injection lists.
        expect(cell.trimStart()).not.toMatch(/^[=+\-@]/);
        expect(cell).not.toMatch(/^[\t\r]/);
      }),
      { numRuns: 1000 },
    );
  });

  it("is one cell to a program that was told any other separator", () => {
    fc.assert(
      fc.property(hostileText, fc.constantFrom(...[",", ";", "\t", "|"]), (words, delimiter) => {
        const [row] = parse(csvText([[words]], standardMarks), { delimiter, record_delimiter: "\r\n" }) as string[][];
        expect(row?.length ?? 0).toBeLessThanOrEqual(1);
        expect((row?.[0] ?? "").trimStart().normalize("NFKC")).not.toMatch(/^[=+\-@]/);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(["＝1+1", "＋1", "－1", "＠SUM(A1)", "−1", "﹦1", "﹢1", "﹣1", "﹫A", " ＝1", "\u202e=1", "％1", "｜cmd"])(
    "of %j is words, as it is of the signs of half its width",
    (words) => {
      expect(csvText([[words]], standardMarks).replace(/^"/, "")).toMatch(/^'/);
    },
  );

  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", " =1", "|cmd"])("of %j is words", (words) => {
    expect(csvText([[words]], standardMarks).replace(/^"/, "")).toMatch(/^'/);
  });
});
