import fc from "fast-check";
import { fromMarkdown } from "mdast-util-from-markdown";
import { XMLParser } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { TranslatedThing, Translation } from "../../src/domain/model/translation.js";
import type { WordsOfPlan } from "../../src/domain/model/writers-words.js";
import { readWriting } from "../../src/domain/writing/read-writing.js";
import { originalsOf } from "../../src/domain/plan/translate/texts-of.js";
import { mailHtml } from "../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../src/exports/document/markdown.js";
import { plainText } from "../../src/exports/document/plain-text.js";
import { writtenMarkdown } from "../../src/exports/document/written-markdown.js";
import { writtenForms } from "../../src/exports/document/written-text.js";
import { atomFeed } from "../../src/exports/feeds/atom.js";
import { jsonFeed } from "../../src/exports/feeds/json-feed.js";
import { blankForm } from "../../src/exports/page/form/plan-form.js";
import { planPage } from "../../src/exports/page/plan-page.js";
import { schemaOrgText } from "../../src/exports/schema-org/schema-org.js";
import { answerOf, shippedRules } from "../kit/answer-of.js";
import { elementsOf, parseErrors } from "../kit/html-page.js";
import { addresses, demo } from "./demo-answer.js";
import { hostileText } from "./hostile-text.js";

const attacks = fc.oneof(
  fc.constantFrom(
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "[x](javascript:alert(1))",
    "[x](JaVaScRiPt:alert(1))",
    "[x](data:text/html,<script>alert(1)</script>)",
    "[x](vbscript:x)",
    "[x](//evil.example)",
    "[x](https://a@evil.example)",
    '[x](https://evil.example/"onmouseover="alert\\(1\\))',
    "[x](https://evil.example/'><svg/onload=alert\\(1\\)>)",
    "[x]: javascript:alert(1)\n\n[x]",
    "<javascript:alert(1)>",
    "![x](https://evil.example/pixel.png)",
    "\\![x](https://evil.example/pixel.png)",
    "look!\u202e[x](https://evil.example/pixel.png)",
    "*a\\!*[x](https://evil.example/pixel.png)",
    "</script><script>alert(1)</script>",
    "]]><svg onload=alert(1)>",
    "&lt;script&gt;alert(1)&lt;/script&gt;",
    "*[x](https://plans.example/ok)* **and [y](https://plans.example/also)**",
    "- a\n- b\n\n1. c",
    "{{ constructor.constructor('alert(1)')() }}",
    "\u202egnp.exe",
    "\t!",
    "a\n\t!\n\n\t- b\n\n \t1. c",
    "- a\n\n\t\tb",
  ),
  hostileText,
);

/** Every text that a writer writes beside how things are made, everywhere it can stand. */
function said(bundle: PlanBundle, text: string): PlanBundle {
  const words: WordsOfPlan = {
    ...{ introduction: text, notes: text, tips: text },
    equipment: [text],
    credits: [{ name: text, licence: text, adapted: true }],
  };
  const { introduction, notes, tips } = words;
  return {
    ...bundle,
    plan: {
      ...bundle.plan,
      ...words,
      tags: [text],
      licence: text,
      meals: bundle.plan.meals.map((meal) => ({ ...meal, introduction, notes, tips }) as typeof meal),
    },
    components: bundle.components.map((component) => ({ ...component, ...words })),
  };
}

/** The same texts, said by a translation of all that can be translated. */
function translated(bundle: PlanBundle, text: string): PlanBundle {
  const whole = said(bundle, "Plain words");
  const things: readonly TranslatedThing[] = [
    { kind: "PLAN", slug: whole.plan.slug },
    ...whole.components.map(({ slug }): TranslatedThing => ({ kind: "COMPONENT", slug })),
  ];
  const translations = things.map((of): Translation => {
    const texts = [...(originalsOf(whole, of)?.values() ?? [])].map(({ path }) => ({ path, text }));
    return { of, language: "de", texts };
  });
  return { ...whole, translations };
}

/** Scripts, handlers, what is fetched, and addresses that are none of the web: what no word may become. */
function dangers(html: string): readonly string[] {
  return elementsOf(html).flatMap(({ tagName, attrs }) => [
    // Structured data is no script: a browser runs nothing of this type. What breaks out of it is an element of its own.
    ...(tagName === "script" && attrs.some(({ name, value }) => name === "type" && value === "application/ld+json")
      ? []
      : ["script", "img", "svg", "iframe", "object", "base", "style", "embed", "video"].includes(tagName)
        ? [tagName]
        : []),
    ...attrs.flatMap(({ name, value }) =>
      name.startsWith("on") ||
      (["href", "src", "action"].includes(name) && !/^(https?:\/\/(plans|evil)\.example|[/#]|mailto:)/i.test(value))
        ? [`${tagName} ${name}=${value}`]
        : [],
    ),
  ]);
}

const bundle = demo.bundles.find(({ plan }) => plan.slug === "bean-night");
if (bundle === undefined) throw new Error("the demo has no bean night");

describe("a link behind an exclamation mark", () => {
  it.each([
    "\\![x](https://evil.example/p)",
    "look!\u202e[x](https://evil.example/p)",
    "*a\\![x](https://evil.example/p)*",
  ])("is a link in Markdown, and no picture: %j", (text) => {
    const kinds = JSON.stringify(fromMarkdown(writtenMarkdown(readWriting(text).blocks)));
    expect(kinds).toContain('"type":"link"');
    expect(kinds).not.toContain('"type":"image"');
  });
});

describe("whatever a writer says beside how things are made", () => {
  it.each([
    ["in the plan", said],
    ["in a translation", translated],
  ] as const)("is never a script, a handler or something to fetch, in any way out: %s", (_, sayIn) => {
    let charts: number | undefined;
    fc.assert(
      // A text with nothing in it is refused where documents are read.
      fc.property(
        attacks.filter((text) => text.trim() !== "" || sayIn === said),
        (text) => {
          const answer = answerOf(sayIn(bundle, text), 4, { region: "XA", currency: "XTS", locale: "de" });
          const { publication } = answer;
          const links = { origin: "https://plans.example", style: null, ticks: null, cook: null };
          const page = planPage({
            ...{ publication, bundle: answer.scaled.bundle, form: blankForm, links },
            ...{ diets: shippedRules.allergens.diets, answer, problems: [] },
          });
          const mail = mailHtml(answer, addresses, null);
          const forms = writtenForms(text);
          const feed = {
            ...{ id: "urn:uuid:1", title: "Plans", home: "https://plans.example/", self: "https://plans.example/feed" },
            ...{ next: null, locale: "en", author: null, withdrawn: [] },
            entries: [
              {
                ...{ planId: "01936d2e-7a4c-7c3f-9b1a-2f60b8a4d001", title: "Plan", summary: null, introduction: text },
                ...{ tags: [text], address: "https://plans.example/p", locale: "en", changeNote: null },
                author: { name: "Us", address: "https://plans.example/" },
                firstPublishedAt: new Date(0),
                publishedAt: new Date(0),
              },
            ],
          };
          charts ??= dangers(page).length;
          for (const html of [page, mail]) {
            expect(parseErrors(html)).toEqual([]);
            // The chart of the session is drawn by the page itself.
            expect(dangers(html).filter((each) => each !== "svg")).toEqual([]);
            expect(dangers(html).length).toBe(html === page ? charts : 0);
          }
          expect(dangers(forms.html)).toEqual([]);
          const atom = new XMLParser({ ignoreAttributes: false }).parse(atomFeed(feed)) as {
            feed: { entry: { content: { readonly "#text"?: string } | undefined } };
          };
          expect(dangers(String(atom.feed.entry.content?.["#text"] ?? ""))).toEqual([]);
          const item = (JSON.parse(jsonFeed(feed)) as { items: { content_html: string }[] }).items[0];
          expect(dangers(item?.content_html ?? "")).toEqual([]);
          const types = JSON.stringify(fromMarkdown(planMarkdown(answer, addresses, null)));
          expect(/"type":"(html|image|code|inlineCode|definition)"/.exec(types)).toBeNull();
          expect(types).not.toMatch(/"url":"(?!https?:)/i);
          expect(schemaOrgText(answer, addresses)).not.toMatch(/[<>]/);
          for (const plain of [plainText(answer), forms.text]) expect(plain).not.toMatch(/[\u0000-\u0008\u202e]/);
        },
      ),
      { numRuns: 30 },
    );
  });
});
