import { beforeAll, describe, expect, it } from "vitest";
import { runToEnd } from "../../src/domain/counted-work.js";
import { readSeeds } from "../../src/app/setup/read-seeds.js";
import type { MeasureSystem } from "../../src/domain/model/amount.js";
import type { PlanAnswer } from "../../src/domain/plan/plan-answer.js";
import { componentText } from "../../src/exports/words/component-text.js";
import { icalendar } from "../../src/exports/calendar/icalendar.js";
import { keepingLines } from "../../src/exports/sentences/keeping-text.js";
import { lineText } from "../../src/exports/words/line-text.js";
import { mailHtml } from "../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../src/exports/document/markdown.js";
import { nameBook } from "../../src/exports/words/name-book.js";
import { planCard } from "../../src/exports/page/card.js";
import { lineMarkup } from "../../src/exports/page/parts/line-markup.js";
import { markup } from "../../src/exports/page/markup.js";
import { listPage } from "../../src/exports/page/list-page.js";
import { blankForm } from "../../src/exports/page/form/plan-form.js";
import { planPage } from "../../src/exports/page/plan-page.js";
import { shelfLine } from "../../src/exports/page/parts/shopping-part.js";
import { plainText } from "../../src/exports/document/plain-text.js";
import { recipeParts } from "../../src/exports/schema-org/recipe-parts.js";
import { schemaOrgText } from "../../src/exports/schema-org/schema-org.js";
import { shoppingCsv } from "../../src/exports/csv/shopping-csv.js";
import { listBlocksInSlices } from "../../src/exports/document/sections/list-section.js";
import { renderMarkdown } from "../../src/exports/document/render-markdown.js";
import { showFor } from "../../src/exports/words/shown-amount.js";
import { badFormIn, badForms } from "../fixtures/bad-forms.js";
import { answerOf, shippedRules } from "../kit/answer-of.js";
import { htmlLines } from "../kit/html-page.js";

const measures = [
  "METRIC",
  "UK_IMPERIAL",
  "US_CUSTOMARY",
  "METRIC_CUP",
  "AUSTRALIAN",
] as const satisfies readonly MeasureSystem[];
const locales = ["en-GB", "en-US", "de", "fr", "es", "pl"] as const;

/** All measures in each turn, their locales in turn: after six turns every reader was there. */
const readersOf = (turn: number): readonly WantedReader[] =>
  measures.map((system, at) => ({ measures: system, locale: locales[(turn + at) % locales.length]! }));

interface WantedReader {
  readonly measures: MeasureSystem;
  readonly locale: (typeof locales)[number];
}

const demo = await readSeeds("seeds");

const addresses = {
  plan: "https://plans.example/plan",
  revision: "https://plans.example/plan?revision=3",
  publisher: "https://plans.example/society",
  list: "https://plans.example/list",
  calendar: "https://plans.example/plan.ics",
};
const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

const household = {
  region: "XA",
  currency: "XTS",
  session: { start: "2026-03-01T09:00:00Z", zone: "Europe/London" },
} as const;

const readAs = (answer: PlanAnswer, reader: WantedReader): PlanAnswer => {
  const wanted = { ...answer.household, ...reader };
  return { ...answer, household: wanted, reader: showFor(wanted, answer.scaled.bundle.plan) };
};

/** Every amount that the ways out are made of. */
function amountLines(answer: PlanAnswer): readonly string[] {
  const { scaled, list, reader } = answer;
  const book = nameBook(scaled.bundle, reader);
  const lines = [...scaled.meals, ...scaled.components].flatMap((each) => each.lines);
  return [
    ...lines.map((line) => lineText(line, book)),
    ...lines.flatMap((line) => htmlLines(markup`<p>${lineMarkup(line, book)}</p>`.text)),
    ...scaled.components.map((made) => componentText(made, book)),
    ...scaled.meals.flatMap((meal) =>
      recipeParts(meal, scaled).flatMap((each) => each.lines.map((line) => lineText(line, book))),
    ),
    ...renderMarkdown(runToEnd(listBlocksInSlices(list, reader, false, 2))).split("\n"),
    ...list.lines.map((line) => {
      const { food, take, notes } = shelfLine(line, book);
      return `${food} ${take ?? ""} ${notes.join("; ")}`;
    }),
    ...shoppingCsv(list, reader, false, "SPREADSHEET").split("\r\n"),
    ...keepingLines(answer.storage, book),
  ];
}

/** Figures of nutrition are those of a label, which has rules of its own (tests/domain/nutrition). */
const labelFigures = /<section id="figures"[^]*?<\/section>/;

/** Whole documents, as lines of text. */
function everyWayOut(answer: PlanAnswer): Readonly<Record<string, readonly string[]>> {
  const { scaled, publication, list, reader } = answer;
  const { bundle, servings } = scaled;
  const calendar = icalendar(answer, addresses);
  const page = planPage({
    publication,
    bundle,
    form: blankForm,
    diets: shippedRules.allergens.diets,
    answer,
    problems: [],
    links,
  });
  const listed = { bundle, publisher: publication.publisher, servings, form: blankForm };
  return {
    markdown: planMarkdown(answer, addresses, null).split("\n"),
    terminal: plainText(answer).split("\n"),
    mail: htmlLines(mailHtml(answer, addresses, null)),
    page: htmlLines(page.replace(labelFigures, "")),
    "list page": htmlLines(
      listPage({ plans: [listed], list, reader, household: answer.household, labels: new Set(), links, others: "" }),
    ),
    "schema.org": schemaOrgText(answer, addresses)
      .split("\n")
      .filter((line) => !/"(?:servingSize|\w+Content)":/.test(line)),
    calendar: calendar.ok ? calendar.value.replaceAll("\r\n ", "").split(/\r\n|\\n/) : [],
    // A card without a picture says so in the words of JSON.
    card: JSON.stringify(planCard(answer, addresses.plan), null, 1)
      .split("\n")
      .filter((line) => line.trim() !== '"image": null,'),
  };
}

describe("bad forms", () => {
  it.each(badForms.flatMap(({ form, seen }) => seen.map((line) => [line, form] as const)))(
    "%s is found, so that the scan can fail",
    (line, form) => {
      expect(line).toMatch(form);
    },
  );

  it.each(["1.05 kg", "¾ tsp", "1 lb 1¾ oz", "125 g", "9:00 AM", "5 °C", "12 ladles", "⅓ cup", "2.5 l", "09:00"])(
    "%s is none",
    (line) => {
      expect(badFormIn(line)).toBeNull();
    },
  );
});

describe("every line that is rendered, of all demo plans from 1 to 40 servings", () => {
  const found = new Map<string, string>();
  let scanned = 0;

  const scan = (lines: readonly string[], where: string): void => {
    for (const line of lines) {
      if (line.trim() === "") continue;
      scanned += 1;
      const bad = badFormIn(line);
      if (bad !== null && !found.has(bad.why)) found.set(bad.why, `${where}: ${line.trim().slice(0, 300)}`);
    }
  };

  beforeAll(() => {
    let turn = 0;
    for (const bundle of demo.bundles) {
      for (let servings = 1; servings <= 40; servings += 1) {
        const answer = answerOf(bundle, servings, household);
        const at = `${bundle.plan.slug}, ${servings} servings`;
        const readers = readersOf(turn);
        for (const reader of readers)
          scan(amountLines(readAs(answer, reader)), `${at}, ${reader.measures}, ${reader.locale}`);
        // Whole documents cost more: one reader a plan and number.
        const reader = readers[turn % readers.length]!;
        for (const [way, lines] of Object.entries(everyWayOut(readAs(answer, reader))))
          scan(lines, `${at}, ${reader.measures}, ${reader.locale}, ${way}`);
        turn += 1;
      }
    }
  }, 300_000);

  it("has no bad form, of more than 20,000 lines", () => {
    expect([...found].map(([why, line]) => `${why} | ${line}`)).toEqual([]);
    expect(scanned).toBeGreaterThan(20_000);
  });
});
