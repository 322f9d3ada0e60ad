import { parse, type DefaultTreeAdapterTypes } from "parse5";
import { beforeAll, describe, expect, it } from "vitest";
import { runToEnd } from "../../../src/domain/counted-work.js";
import type { PlanAnswer } from "../../../src/domain/plan/plan-answer.js";
import type { Problem } from "../../../src/domain/problem.js";
import { measureNames, unitNames } from "../../../src/domain/quantity/units/unit-names.js";
import { icalendar } from "../../../src/exports/calendar/icalendar.js";
import { shoppingCsv } from "../../../src/exports/csv/shopping-csv.js";
import { mailHtml } from "../../../src/exports/document/mail-html.js";
import { mailTextInSlices } from "../../../src/exports/document/mail-text.js";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import { plainText } from "../../../src/exports/document/plain-text.js";
import { planCard } from "../../../src/exports/page/card.js";
import { cookPageInSlices } from "../../../src/exports/page/cook/cook-page.js";
import { blankForm, type PlanForm } from "../../../src/exports/page/form/plan-form.js";
import { listPage } from "../../../src/exports/page/list-page.js";
import { markup } from "../../../src/exports/page/markup.js";
import { noticePage } from "../../../src/exports/page/notice-page.js";
import { previewPart } from "../../../src/exports/page/parts/preview-part.js";
import { planPage } from "../../../src/exports/page/plan-page.js";
import { fridgePage, labelsPage } from "../../../src/exports/page/print-pages.js";
import { privacyPage } from "../../../src/exports/page/privacy-page.js";
import { publisherPage } from "../../../src/exports/page/publisher-page.js";
import { startPage } from "../../../src/exports/page/start-page.js";
import type { Words } from "../../../src/exports/words/words.js";
import { wordsFor } from "../../../src/exports/words/words-for.js";
import { addresses, answerOf, demo, rules, sundayHousehold } from "../demo-answer.js";
import { inWritersLetters, speakWide } from "./pseudo-language.js";

const links = { origin: "https://plans.example", style: "/s.css", ticks: "/t.js", cook: "/c.js" };

/** Keys of a plan's documents under which a writer writes words, beside the names of packs and routes. */
const writersKeys = new Set(
  "title summary text one many counted preparation mark container condition note section introduction notes tips tags equipment".split(
    " ",
  ),
);

/** Titles of published sources stay as they were published. */
const titles = new Set(["title", "section", "law"]);

const texts = (of: unknown, keys: ReadonlySet<string>, key = ""): readonly string[] => {
  if (typeof of === "string") return keys.has(key) ? [of] : [];
  if (typeof of !== "object" || of === null) return [];
  return Object.entries(of).flatMap(([name, each]) => texts(each, keys, Array.isArray(of) ? key : name));
};

const polishDays = (options: Intl.DateTimeFormatOptions): readonly string[] =>
  Array.from({ length: 366 }, (_, at) => new Date(Date.UTC(2028, 0, 1 + at))).flatMap((day) =>
    new Intl.DateTimeFormat("pl", { ...options, timeZone: "UTC" })
      .formatToParts(day)
      .flatMap(({ type, value }) => (type === "month" || type === "weekday" ? [value] : [])),
  );

/** Regions of published figures. */
const countries = new Intl.DisplayNames("pl", { type: "region" });

/** What is no fixed word: days and countries as Intl says them, and units, symbols and parts of foods, which have tables and tests of their own. */
const others = [
  "Prepwright",
  "plans.example",
  // The clock that the reader named.
  "London",
  ...["GB", "US"].map((region) => countries.of(region) ?? region),
  ...polishDays({ weekday: "long", month: "long", day: "numeric" }),
  ...polishDays({ weekday: "short", month: "short", day: "numeric" }),
  ...[...unitNames.values(), ...measureNames.values()].flatMap(({ pl }) =>
    typeof pl === "string" ? [pl] : Object.values(pl),
  ),
  ...["min", "kcal", "sok", "skórka", "białko", "białka", "żółtko", "żółtka"],
];

/** Lines in which Latin letters stand in no name, address or code: words that did not come through the catalogues. */
function leftIn(said: readonly string[], names: readonly string[]): readonly string[] {
  const known = [...new Set([...others, ...names])]
    .filter((each) => each.length > 1)
    .toSorted((a, b) => b.length - a.length);
  const lines = new Set(said.flatMap((text) => text.split(/\n|\\n/)));
  return [...lines].filter((line) => {
    let rest = line.replace(/https?:\/\/\S+/g, " ");
    if (!/[A-Za-zÀ-ɏ]{2}/.test(rest)) return false;
    for (const each of known) rest = rest.replaceAll(each, " ");
    return /[A-Za-zÀ-ɏ]{2,}/.test(rest.replaceAll(/(?<![A-Za-z])[A-Z]{2,3}(?![A-Za-z])/g, " "));
  });
}

type Node = DefaultTreeAdapterTypes.Node;

/** What readers and their screen readers are told on a page, and what scripts will tell them. Countries and currencies are Intl's. */
function saidOn(html: string): readonly string[] {
  const said: string[] = [];
  const walk = (node: Node): void => {
    if (node.nodeName === "#text" && "value" in node) said.push(node.value);
    if ("tagName" in node) {
      const attributes = new Map(node.attrs.map(({ name, value }) => [name, value]));
      const name = attributes.get("name") ?? attributes.get("property") ?? "";
      if (["script", "style"].includes(node.tagName)) return;
      // Languages are called by their own names, on links and on buttons that post what a link may not hold.
      if (attributes.has("lang") && (attributes.has("hreflang") || node.tagName === "button")) return;
      if (node.tagName === "select" && ["region", "currency"].includes(name)) return;
      if (node.tagName === "meta" && /description|title|site_name|alt/.test(name))
        said.push(attributes.get("content") ?? "");
      for (const [key, value] of attributes)
        if (/^(alt|title|placeholder|aria-label|data-(all|one|stop|up|count))$/.test(key))
          said.push(value.replaceAll(/\{(got|all)\}/g, ""));
    }
    if ("childNodes" in node) node.childNodes.forEach(walk);
  };
  walk(parse(html));
  return said;
}

const calendarOf = (answer: PlanAnswer): readonly string[] => {
  const written = icalendar(answer, addresses);
  return !written.ok
    ? []
    : written.value
        .replaceAll("\r\n ", "")
        .split("\r\n")
        .flatMap(
          (line) =>
            /^(?:SUMMARY|DESCRIPTION|X-WR-CALNAME|LOCATION|COMMENT|CATEGORIES)[^:]*:(.*)$/.exec(line)?.[1] ?? [],
        );
};

/** A form in which everything is wrong; what a reader typed is in letters of its own too. */
const oddForm: PlanForm = {
  ...blankForm,
  servings: "много",
  diets: ["vegan", "луна"],
  onHand: ["лук:"],
  start: "скоро",
  zone: "Марс",
  cooks: "два",
};

const at = (...path: readonly (string | number)[]) => ({ path });
const shape = { code: "BAD_SHAPE", expected: "a number", got: "много" } as const;
const problems: readonly Problem[] = [
  "servings",
  "region",
  "currency",
  "measures",
  "diet",
  "eaters",
  "on-hand",
  "start",
  "zone",
  "cooks",
].map((field) => ({ ...shape, ...at(field) }));

describe("a reader of a language that nobody speaks", () => {
  const answers: PlanAnswer[] = [];

  beforeAll(async () => {
    speakWide();
    for (const bundle of demo.bundles) {
      const written = inWritersLetters(bundle, writersKeys);
      for (const household of [{}, { ...sundayHousehold, diets: ["vegan", "gluten-free"] }])
        answers.push(inWritersLetters(await answerOf(written, 5, { ...household, locale: "pl" }), titles));
    }
  });

  const ofPlan: Readonly<Record<string, (answer: PlanAnswer) => readonly string[]>> = {
    Markdown: (answer) => [planMarkdown(answer, addresses, null)],
    "the mail": (answer) => saidOn(mailHtml(answer, addresses, null)),
    "the mail's text": (answer) => [runToEnd(mailTextInSlices(answer, addresses, null))],
    "the terminal": (answer) => [plainText(answer)],
    "the spreadsheet": ({ list, reader }) => [shoppingCsv(list, reader, false, "SPREADSHEET")],
    "the calendar": calendarOf,
    "the card": (answer) =>
      texts(
        planCard(answer, "https://plans.example/p/x/y"),
        new Set(
          "session handsOn perServing day title late what where keeps keepingUnknown food take notes presence names text source alt credit".split(
            " ",
          ),
        ),
      ),
    "the plan's page": (answer) =>
      saidOn(
        planPage({
          publication: answer.publication,
          bundle: answer.scaled.bundle,
          form: blankForm,
          diets: rules.allergens.diets,
          answer,
          problems: [],
          links,
        }),
      ),
    "a refused form": ({ publication, scaled: { bundle } }) =>
      saidOn(
        planPage({
          publication,
          bundle,
          form: oddForm,
          diets: rules.allergens.diets,
          answer: null,
          problems,
          locale: "pl",
          links,
        }),
      ),
    "the list's page": ({ publication: { publisher }, scaled: { bundle }, list, reader, household }) =>
      saidOn(
        listPage({
          plans: [{ bundle, publisher, servings: 5, form: blankForm }],
          list,
          reader,
          household,
          labels: new Set(bundle.foods.map(({ slug }) => slug)),
          links,
          others: "",
        }),
      ),
    "the kitchen's page": (answer) => saidOn(runToEnd(cookPageInSlices({ answer, form: blankForm, links }))),
    "the sheet for the fridge": (answer) => saidOn(fridgePage({ answer, form: blankForm, links })),
    "labels for boxes": (answer) => saidOn(labelsPage({ answer, form: blankForm, links })),
  };

  it.each(Object.keys(ofPlan))("is told nothing but fixed words, names and the writer's words: %s", (way) => {
    const said = answers.flatMap((answer) => ofPlan[way]?.(answer) ?? []);
    expect(said.some((text) => /[ａ-ｚ]{3}/.test(text))).toBe(true);
    const names = answers.flatMap((answer) =>
      texts([answer.list, answer.publication, answer.scaled.bundle], new Set(["name"])),
    );
    expect(leftIn(said, names)).toEqual([]);
  });

  const preview = { version: 3, expiresAt: new Date("2026-03-08T09:00:00Z"), missing: [] };
  const shelf = {
    plans: [
      {
        publisher: "third-gate-allotments",
        slug: "bean-night",
        shown: { title: "", language: "en" },
        serves: 4,
        revision: 3,
        publishedAt: new Date("2026-03-01T09:00:00Z"),
      },
    ],
    next: "/?after=1",
    locale: null,
  };

  it.each<readonly [string, (words: Words) => string]>([
    ["the privacy page", (words) => privacyPage(words, links)],
    ["the start page", (words) => startPage(shelf, () => "", words, links)],
    [
      "the page of a publisher",
      (words) => publisherPage({ slug: "third-gate-allotments", name: "" }, shelf, words, links),
    ],
    ["a notice", (words) => noticePage({ title: words.page.notFound, text: words.page.noSuchPlan }, words, links)],
    ["a preview", (words) => markup`${previewPart(preview, words)}`.text],
  ])("is told nothing else on %s", (_, html) => {
    const said = saidOn(html(wordsFor("pl")));
    expect(said.some((text) => /[ａ-ｚ]{3}/.test(text))).toBe(true);
    expect(leftIn(said, ["graphql", "openapi", "UTC"])).toEqual([]);
  });

  it("would be told what is in no catalogue", () => {
    expect(leftIn(["ｆｏｒ 4 ｐｅｏｐｌｅ, 1 March 2026", "Contains"], [])).toHaveLength(2);
  });
});
