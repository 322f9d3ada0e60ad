import { expect, it } from "vitest";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import { markup } from "../../../src/exports/page/markup.js";
import { keepingSources } from "../../../src/exports/page/parts/keeping-sources.js";
import { keepingRow } from "../../../src/exports/sentences/keeping-row.js";
import { regionLine } from "../../../src/exports/sentences/region-line.js";
import { nameBook } from "../../../src/exports/words/name-book.js";
import { answerOf, demoBundle } from "../demo-answer.js";

/** USDA FSIS home food storage dataset (open data), id 423: kale, 3 to 5 days in the refrigerator. */
const title = "USDA FSIS home food storage dataset";
const figure = { place: "FRIDGE" as const, days: 3, container: null, condition: null, region: "US" };
const source = { kind: "PUBLISHED" as const, title, section: "id 423" };

/** The demo's plan, whose kale keeps by an American figure alone. */
function bundleOf(ofFigure: string): PlanBundle {
  const demo = demoBundle("lentils-and-greens");
  const keeping = [{ ...figure, region: ofFigure, source }];
  const foods = demo.foods.map((food) => (food.slug === "kale" ? { ...food, keepsAs: null, keeping } : food));
  return { ...demo, foods };
}

async function told(region: string | null, locale: string, ofFigure = "US") {
  const bundle = bundleOf(ofFigure);
  const answer = await answerOf(bundle, 4, region === null ? {} : { region });
  const book = nameBook(bundle, { ...answer.reader, locale });
  const rows = answer.storage.guidance.filter(({ subject }) => subject.slug === "kale");
  return {
    says: rows.flatMap((row) => keepingRow(row, book, null).whoSays),
    top: regionLine(answer, book.words),
    page: markup`${keepingSources(rows, { answer, book })}`.text,
  };
}

it("is told as a published figure of its region, not as the writer's word", async () => {
  const { says, page } = await told("US", "en");
  expect(says).toEqual([`A published figure (US) says 3 days: ${title}, id 423 (this one stands)`]);
  expect(page).toContain(`${title}, id 423: 3 days. `);
});

it.each([
  ["en", "a figure for United States", "no rule of GB is known here; there those of US"],
  ["de", "Angabe für die Region Vereinigte Staaten", "US"],
  ["fr", "chiffre de la région États-Unis", "US"],
  ["es", "dato de la región Estados Unidos", "US"],
  ["pl", "wartość dla regionu Stany Zjednoczone", "US"],
])(
  "is told in %s as another region's to a reader elsewhere, at the top and beside it, and to one who names no region",
  async (locale, beside, above) => {
    const { says, top, page } = await told("GB", locale);
    expect(says.join()).toContain("(US)");
    expect(page).toContain(beside);
    expect(top).toContain(above);
    const country = new Intl.DisplayNames([locale], { type: "region" }).of("US");
    expect((await told(null, locale)).page).toMatch(new RegExp(`id 423: 3[^(]*\\(${country}\\)`));
  },
);

it.each([
  ["ANZ", "Australien und Neuseeland"],
  ["EU", "Europäische Union"],
])("names a region of several countries in words too (%s)", async (region, name) => {
  expect((await told("US", "de", region)).page).toContain(`Angabe für die Region ${name}`);
});
