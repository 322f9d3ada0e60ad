import { parse, type DefaultTreeAdapterTypes } from "parse5";
import { beforeAll, describe, expect, it } from "vitest";
import { runToEnd } from "../../../src/domain/counted-work.js";
import type { PlanBundle } from "../../../src/domain/model/plan.js";
import type { TranslatedThing, Translation } from "../../../src/domain/model/translation.js";
import { textsOfComponent, textsOfPlan, type OriginalText } from "../../../src/domain/plan/translate/texts-of.js";
import { cookPageInSlices } from "../../../src/exports/page/cook/cook-page.js";
import { blankForm } from "../../../src/exports/page/form/plan-form.js";
import { mailHtml } from "../../../src/exports/document/mail-html.js";
import { listPage } from "../../../src/exports/page/list-page.js";
import { planPage } from "../../../src/exports/page/plan-page.js";
import { fridgePage, labelsPage } from "../../../src/exports/page/print-pages.js";
import type { GivenHousehold } from "../../../src/services/answers/read-household.js";
import { addresses, answerOf, demo, publication, rules, sundayHousehold } from "../demo-answer.js";

type Node = DefaultTreeAdapterTypes.Node;

const links = { origin: "https://plans.example", style: "/p-assets/page.css", ticks: null, cook: null };

/** Fields in which a writer writes. */
const written = new Set(
  [
    "title",
    "summary",
    "text",
    "one",
    "many",
    "preparation",
    "mark",
    "container",
    "condition",
    "note",
    "introduction",
  ].concat(["notes", "tips", "equipment", "name", "tags"]),
);

/** Every word of the writer's, each a different one that no language has. Foods are named in English alone. */
function inInventedWords(bundle: PlanBundle): PlanBundle {
  let at = 0;
  const words = new Map<string, string>();
  const word = (text: string): string => {
    const known = words.get(text) ?? `zq${++at}`;
    words.set(text, known);
    return known;
  };
  const walk = (value: unknown, key: string): unknown => {
    if (typeof value === "string") return written.has(key) ? word(value) : value;
    if (Array.isArray(value)) return value.map((each) => walk(each, key));
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, each]) => [
        name,
        key === "measures" || key === "packs" ? each : walk(each, name),
      ]),
    );
  };
  // Read in German, a plan that was translated into it is in German.
  const { foods, translations: _, ...rest } = bundle;
  return {
    ...(walk(rest, "") as Omit<PlanBundle, "foods">),
    foods: foods.map((food) => ({
      ...food,
      names: food.names
        .filter(({ language }) => language === "en")
        .map((name) => ({ ...name, one: word(name.one), many: word(name.many) })),
    })),
  };
}

/** Every other text of a plan in German, in words that no other text has; the rest stays as it is. */
function halfTranslated(bundle: PlanBundle): PlanBundle {
  const halfOf = (of: TranslatedThing, texts: ReadonlyMap<string, OriginalText>): Translation => ({
    of,
    language: "de",
    texts: [...texts.values()]
      .filter(({ text }) => Number(/\d+/.exec(text)?.[0]) % 2 === 0)
      .map(({ path, text }) => ({ path, text: text.replaceAll("zq", "dq") })),
  });
  return {
    ...bundle,
    translations: [
      halfOf({ kind: "PLAN", slug: bundle.plan.slug }, textsOfPlan(bundle.plan)),
      ...bundle.components.map((each) => halfOf({ kind: "COMPONENT", slug: each.slug }, textsOfComponent(each))),
    ],
  };
}

/** Sentences that every way out says alike, as plain text: warnings, what the order of work rests on, notes on figures. */
const plainSentences = [/ul\.reasons/, /section#notes/, /section\.mind/, /section#figures.* p\.aside/];

/** Whom a writer credits: names of people and works, which are in no language. */
const properNames = /section#writer.* p\.quiet bdi/;

/** A choice in a list holds no element, and so one language alone: that of the food, not of what is noted on it. */
const foodWithNote = / option: /;

/** Texts with such a word that are not said to be in its language, English or (translated) German, each with where it stands. */
function unmarked(html: string): readonly string[] {
  const found: string[] = [];
  const walk = (node: Node, language: string, place: string): void => {
    if (node.nodeName === "head") return;
    if ("tagName" in node) {
      const of = (name: string): string | undefined => node.attrs.find((each) => each.name === name)?.value;
      const [own, id, kind] = [of("lang") ?? language, of("id"), of("class")];
      const here = `${place} ${node.tagName}${id === undefined ? "" : `#${id}`}${kind === undefined ? "" : `.${kind}`}`;
      for (const child of node.childNodes) walk(child, own, here);
      return;
    }
    if ("value" in node)
      for (const [word] of node.value.matchAll(/[zd]q\d+/g))
        if (!language.startsWith(word.startsWith("z") ? "en" : "de")) found.push(`${place}: ${node.value.trim()}`);
    if ("childNodes" in node) for (const child of node.childNodes) walk(child, language, place);
  };
  walk(parse(html), "", "");
  return found;
}

const bundles = demo.bundles.map(inInventedWords);
const households: readonly GivenHousehold[] = [
  {},
  { ...sundayHousehold, region: "DE", diets: ["vegan", "gluten-free"] },
  { ...sundayHousehold, routes: { mode: "CHEAPEST", byName: [] }, onHand: [] },
];

/** What a writer says beside the plan, which no translation has. */
const taken = {
  ...publication,
  withdrawnAt: new Date("2026-02-21T08:00:00Z"),
  ...{ withdrawnBecause: "zq9001", changeNote: "zq9002" },
};

/** Each plan as it was written for every household, and half translated for one that takes every swap. */
const cases = bundles.flatMap((bundle) => [
  ...households.map((household, at) => ({ bundle, household, swapped: at === 2 })),
  { bundle: halfTranslated(bundle), household: sundayHousehold, swapped: true },
]);

describe("what is in another language than a page", () => {
  const pages = new Map<string, string>();
  const mails: string[] = [];
  const marked = new Set<string>();

  beforeAll(async () => {
    for (const [at, { bundle, household, swapped }] of cases.entries()) {
      const swaps = bundle.components
        .flatMap(({ lines }) => lines)
        .concat(bundle.plan.meals.flatMap(({ lines }) => lines))
        .flatMap(({ item, swaps: offered }) =>
          item.kind === "FOOD" ? offered.slice(0, 1).map(({ food }) => ({ from: item.food, to: food })) : [],
        );
      const answer = await answerOf(bundle, 7, { ...household, locale: "de", ...(swapped ? { swaps } : {}) });
      const asked = { answer, form: blankForm, links };
      const shown = answer.scaled.bundle;
      const listed = { bundle: shown, publisher: publication.publisher, servings: 7, form: blankForm };
      const { diets } = rules.allergens;
      const made = {
        plan: planPage({ publication: taken, bundle: shown, form: blankForm, diets, answer, problems: [], links }),
        list: listPage({
          ...{ plans: [listed], list: answer.list, reader: answer.reader, household: answer.household, links },
          ...{ labels: new Set<string>(), others: "" },
        }),
        cook: runToEnd(cookPageInSlices(asked)),
        fridge: fridgePage(asked),
        labels: labelsPage(asked),
      };
      mails.push(mailHtml(answer, addresses, null));
      for (const [kind, html] of Object.entries(made)) pages.set(`${kind} ${at}`, html);
    }
  });

  it("is said to be", () => {
    const left = [...pages].flatMap(([, html]) => unmarked(html));
    const known = [...plainSentences, properNames, foodWithNote];
    expect(left.filter((each) => !known.some((place) => place.test(each)))).toEqual([]);
    for (const place of known) expect(left.some((each) => place.test(each))).toBe(true);
  });

  // Sentences of which a name is a part are said alike by every way out, as plain text.
  it("is said to be in mails where a text stands by itself", () => {
    const alone = mails.flatMap(unmarked).filter((each) => /^[^:]*: zq\d+[:,]?$/.test(each));
    expect(alone).toEqual([]);
    for (const html of mails)
      for (const [, element] of html.matchAll(/<(h1|h3|th|li|p|td)\b[^>]*>(?:<[^>]*>)*zq\d/g))
        marked.add(element ?? "");
    expect([...marked].sort()).toEqual(["h1", "h3", "li", "p", "td", "th"]);
    expect(mails.filter((html) => !html.startsWith('<!doctype html>\n<html lang="de"'))).toEqual([]);
  });

  it("is in the language that is said: names of the page's own language are not marked", async () => {
    const [bundle] = demo.bundles;
    if (bundle === undefined) throw new Error("the demo has no plan");
    const answer = await answerOf(bundle, 7, { ...sundayHousehold, locale: "en-GB" });
    const html = planPage({
      ...{ publication, bundle, form: blankForm, diets: rules.allergens.diets, answer, problems: [], links },
    });
    expect([...html.matchAll(/ lang="([^"]*)"/g)].map(([, language]) => language)).toEqual(["en"]);
  });
});
