import { IntlMessageFormat } from "intl-messageformat";
import { beforeAll, describe, expect, it } from "vitest";
import type { PlanAnswer } from "../../../src/domain/plan/plan-answer.js";
import { icalendar } from "../../../src/exports/calendar/icalendar.js";
import { shoppingCsv } from "../../../src/exports/csv/shopping-csv.js";
import { mailHtml } from "../../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import { plainText } from "../../../src/exports/document/plain-text.js";
import { isMessage, type Catalogue } from "../../../src/exports/words/message.js";
import { english } from "../../../src/exports/words/messages/english.js";
import { french } from "../../../src/exports/words/messages/french.js";
import { german } from "../../../src/exports/words/messages/german.js";
import { polish } from "../../../src/exports/words/messages/polish.js";
import { spanish } from "../../../src/exports/words/messages/spanish.js";
import { addresses, answerOf, demo, sundayHousehold } from "../demo-answer.js";

type Elements = ReturnType<IntlMessageFormat["getAst"]>;

/** Text between the arguments, in every form of a sentence. */
const literals = (elements: Elements): readonly string[] =>
  elements.flatMap((element): readonly string[] => {
    if (element.type === 0) return [element.value];
    if (!("options" in element) || element.options === undefined || element.options === null) return [];
    return Object.values(element.options as Record<string, { value: Elements }>).flatMap(({ value }) =>
      literals(value),
    );
  });

const textsOf = (catalogue: object): readonly string[] =>
  Object.values(catalogue as Catalogue).flatMap((entry): readonly string[] => {
    if (typeof entry === "string") return [entry];
    return isMessage(entry) ? [entry.text] : textsOf(entry);
  });

/** Pieces of the catalogue that are long enough not to be met by chance. */
const piecesOf = (catalogue: object): readonly string[] =>
  textsOf(catalogue)
    .flatMap((text) => literals(new IntlMessageFormat(text, "en", undefined, { ignoreTag: true }).getAst()))
    .map((piece) => piece.trim())
    .filter((piece) => /\p{L}{3,}\P{L}+\p{L}{2,}/u.test(piece) && piece.length >= 10);

function calendarOf(answer: PlanAnswer): string {
  const written = icalendar(answer, addresses);
  return written.ok ? written.value.replaceAll("\r\n ", "") : "";
}

const everything = (answer: PlanAnswer): string =>
  [
    planMarkdown(answer, addresses, null),
    mailHtml(answer, addresses, null),
    plainText(answer),
    calendarOf(answer),
    shoppingCsv(answer.list, answer.reader, false, "SPREADSHEET"),
  ].join("\n");

describe.each([
  ["de", german],
  ["fr", french],
  ["es", spanish],
  ["pl", polish],
] as const)("a plan for a reader of %s", (locale, catalogue) => {
  const answers: PlanAnswer[] = [];
  const pieces = piecesOf(english);
  const own = textsOf(catalogue).join("\n");

  beforeAll(async () => {
    for (const bundle of demo.bundles)
      for (const household of [{}, { ...sundayHousehold, diets: ["vegan", "gluten-free"] }])
        answers.push(await answerOf(bundle, 5, { ...household, locale }));
  });

  it("has no piece of an English sentence of ours, but for what its writer and its sources say", () => {
    for (const answer of answers) {
      const written = JSON.stringify([answer.scaled.bundle, answer.storage, answer.contents, answer.cautions]);
      const said = everything(answer);
      const left = pieces.filter((piece) => said.includes(piece) && !written.includes(piece) && !own.includes(piece));
      expect(left).toEqual([]);
    }
  });

  it("would show such pieces in English", async () => {
    const [bundle] = demo.bundles;
    if (bundle === undefined) throw new Error("the demo has no plan");
    const said = everything(await answerOf(bundle, 5, { ...sundayHousehold, locale: "en" }));
    expect(pieces.filter((piece) => said.includes(piece)).length).toBeGreaterThan(20);
  });

  it("says its cautions, allergens and diets in the language", () => {
    for (const { cautions, contents } of answers) {
      for (const { text } of cautions.cautions) expect(Object.values(english.cautionTexts)).not.toContain(text);
      const names = contents.plan.allergens.findings.map(({ name }) => name);
      for (const name of names) expect(own).toContain(name);
      for (const { name } of contents.plan.diets) expect(Object.values(catalogue.dietNames)).toContain(name);
    }
  });
});
