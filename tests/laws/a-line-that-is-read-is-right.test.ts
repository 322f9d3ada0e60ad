import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileFoodNames } from "../../src/domain/quantity/food-name.js";
import { isSoldIn } from "../../src/domain/quantity/line/line-food.js";
import { readLine, type TakenLine } from "../../src/domain/quantity/read-line.js";
import { lineFoods, meantLines, type MeantLine } from "../kit/line-fixtures.js";

const catalogue = lineFoods();
const foods = compileFoodNames(catalogue);
const lines = ["en.txt", "de.txt", "fr.txt", "second.txt", "third.txt"].flatMap(meantLines);

type Way = Pick<MeantLine, "locale" | "measures">;

const read = (written: string, { locale, measures }: Way) =>
  readLine(written, { locale, measures, region: null, foods });

/** What of a line decides what is bought and eaten. */
const essence = (taken: TakenLine | null) =>
  taken === null ? null : [taken.food, taken.part, taken.amount, taken.measured, taken.optional];

/** However else it is written, a line is read as before, or a person is asked; what was open is not guessed. */
const staysRight = (line: MeantLine, otherwise: string): void => {
  const [before, after] = [read(line.written, line).taken, read(otherwise, line).taken];
  if (after === null) return;
  expect(essence(after), `${JSON.stringify(line.written)} as ${JSON.stringify(otherwise)}`).toEqual(essence(before));
};

const glyphs: readonly (readonly [string, string])[] = [["1/2", "½"], ["1/4", "¼"], ["3/4", "¾"], ["1/3", "⅓"]]; // prettier-ignore

const anyLine = fc.constantFrom(...lines);

describe("law 7: a line that is read is right, or a person is asked", () => {
  it("whatever spaces part its words", () => {
    const space = fc.constantFrom(" ", "  ", "\t", "\u00a0", "\u2009 ", " \u200b");
    fc.assert(
      fc.property(anyLine, fc.array(space, { minLength: 40, maxLength: 40 }), (line, spaces) => {
        let at = 0;
        staysRight(
          line,
          line.written.replace(/ /g, () => spaces[at++ % spaces.length] ?? " "),
        );
      }),
      { numRuns: 400 },
    );
  });

  it("whatever list mark stands before it", () => {
    const mark = fc.constantFrom("- ", "• ", "▢", "[ ] ", "* ", "\u200b", "– ", "✓ ", "☐\t");
    fc.assert(
      fc.property(anyLine, mark, (line, before) => {
        staysRight(line, before + line.written);
      }),
      { numRuns: 300 },
    );
  });

  it("with fractions as one sign, or as digits around any slash", () => {
    fc.assert(
      fc.property(anyLine, fc.constantFrom("/", "⁄", "∕"), fc.boolean(), (line, slash, asGlyph) => {
        const written = glyphs.reduce(
          (text, [plain, glyph]) =>
            asGlyph
              ? text.replace(new RegExp(`(?<![\\d/])${plain}(?![\\d/])`, "g"), glyph)
              : text.replaceAll(glyph, ` ${plain.replace("/", slash)}`),
          line.written,
        );
        staysRight(line, written.trim());
      }),
      { numRuns: 300 },
    );
  });

  it("in capitals, where no single letter is a unit", () => {
    const spelled = lines.filter(({ written }) => !/(?<!\p{L})(?:t|c|kl|g|l|m)(?!\p{L})/iu.test(written));
    expect(spelled.length).toBeGreaterThan(300);
    fc.assert(
      fc.property(fc.constantFrom(...spelled), (line) => {
        staysRight(line, line.written.toUpperCase());
      }),
      { numRuns: 300, examples: spelled.filter(({ meant }) => meant === null).map((line) => [line]) },
    );
  });

  it("with the amount before the food or behind it", () => {
    const grams = fc.integer({ min: 50, max: 900 });
    const named = catalogue.flatMap(({ slug, names }) => names.map(({ language, one }) => ({ slug, language, one })));
    fc.assert(
      fc.property(
        fc.constantFrom(...named),
        grams,
        fc.constantFrom("g", "ml"),
        fc.boolean(),
        ({ slug, language, one }, amount, unit, behind) => {
          const written = behind ? `${one} ${String(amount)} ${unit}` : `${String(amount)} ${unit} ${one}`;
          const { taken } = read(written, { locale: language, measures: "METRIC" });
          if (taken === null) return;
          const exact = String(amount);
          expect([taken.food, taken.amount], written).toEqual([slug, { low: exact, high: exact, unit }]);
        },
      ),
      { numRuns: 600 },
    );
  });

  it("in a tin or a jar only where the food is sold so", () => {
    const containers = fc.constantFrom(
      ...([["en", "can"], ["en", "tins"], ["en", "jar"], ["de", "Dose"], ["de", "Glas"], ["fr", "boîte"], ["es", "lata"], ["pl", "puszka"]] as const), // prettier-ignore
    );
    const size = fc.constantFrom("", "(400 g) ", "(15 oz) ");
    fc.assert(
      fc.property(fc.constantFrom(...catalogue), containers, size, (food, [language, word], written) => {
        const name = food.names.find((each) => each.language === language)?.one;
        if (name === undefined) return;
        const line = `1 ${word} ${written}${name}`;
        const { taken } = read(line, { locale: language, measures: "METRIC" });
        if (taken === null) return;
        const taking = catalogue.find(({ slug }) => slug === taken.food);
        expect(taking !== undefined && isSoldIn(taking, word === "tins" ? "tin" : word.toLowerCase()), line).toBe(true);
      }),
      { numRuns: 800 },
    );
  });

  it("with a bracket that is more than twice the amount, or less than half, never", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.double({ min: 0.02, max: 40, noNaN: true }), (cups, share) => {
        // A US cup of flour: 125 g (USDA SR 28, weight file, NDB 20081).
        const grams = Math.round(cups * 125 * share);
        const { taken } = read(`${String(cups)} cups (${String(grams)} g) flour`, {
          locale: "en-US",
          measures: "US_CUSTOMARY",
        });
        const ratio = grams / (cups * 125);
        if (ratio > 2 || ratio < 0.5) expect(taken).toBeNull();
        else expect(taken?.amount).toEqual({ low: String(grams), high: String(grams), unit: "g" });
      }),
    );
  });
});
