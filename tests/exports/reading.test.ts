import { fromMarkdown } from "mdast-util-from-markdown";
import { beforeAll, describe, expect, it } from "vitest";
import type { PlanBundle } from "../../src/domain/model/plan.js";
import type { PlanAnswer } from "../../src/domain/plan/plan-answer.js";
import { mailHtml } from "../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../src/exports/document/markdown.js";
import { shoppingMarkdown } from "../../src/exports/document/shopping-markdown.js";
import { shop } from "../../src/domain/plan/shop.js";
import { addresses, answerOf, demo, demoBundle, sundayHousehold } from "./demo-answer.js";
import { htmlTree } from "./html-tree.js";

const note = "The barley now takes less water.";

/** Every kind of node a CommonMark parser finds. */
function kindsOf(markdown: string): ReadonlySet<string> {
  const kinds = new Set<string>();
  const walk = (node: { readonly type: string; readonly children?: readonly { readonly type: string }[] }): void => {
    kinds.add(node.type);
    node.children?.forEach(walk);
  };
  walk(fromMarkdown(markdown));
  return kinds;
}

const drawn = new Set([
  "root",
  "heading",
  "paragraph",
  "text",
  "list",
  "listItem",
  "strong",
  "emphasis",
  "break",
  "link",
]);

describe("a plan to read", () => {
  let answer: PlanAnswer;

  beforeAll(async () => {
    answer = await answerOf(demoBundle("roots-and-barley"), 7, sundayHousehold);
  });

  it("as Markdown and as a mail is what the golden files show", async () => {
    await expect(planMarkdown(answer, addresses, note)).toMatchFileSnapshot("../golden/plan.md");
    await expect(mailHtml(answer, addresses, note)).toMatchFileSnapshot("../golden/mail.html");
  });

  it("is made of plain CommonMark, of every demo plan, with and without a session", async () => {
    for (const bundle of demo.bundles) {
      for (const household of [{}, sundayHousehold]) {
        const markdown = planMarkdown(await answerOf(bundle, 5, household), addresses, null);
        for (const kind of kindsOf(markdown)) expect(drawn).toContain(kind);
        expect(markdown).not.toMatch(/undefined|null|NaN|\[object/);
        for (const { title } of bundle.plan.meals) expect(markdown).toContain(`### ${title}`);
      }
    }
  });

  it("says both words about keeping, with their sources", () => {
    const markdown = planMarkdown(answer, addresses, null);
    expect(markdown).toMatch(
      /The writer says 4 days: .*kitchen notes; .*A published rule \(GB\) says 48 hours: .*this one stands/,
    );
  });

  it("names whose plan it is, the revision, its addresses and what has changed", () => {
    const html = htmlTree(mailHtml(answer, addresses, note));
    const links = html.elements.filter(({ name }) => name === "a").map(({ attributes }) => attributes["href"]);
    expect(links).toEqual([
      addresses.publisher,
      addresses.revision,
      addresses.plan,
      addresses.list,
      addresses.calendar,
    ]);
    expect(planMarkdown(answer, addresses, note)).toContain(note);
  });

  it("gives clock times in the reader's zone, the soak with its own day", async () => {
    const beans = await answerOf(demoBundle("bean-night"), 4, {
      // Central Europe put its clocks back on 2026-10-25 at 03:00 (IANA tz database).
      sessionStart: { local: "2026-10-25T09:00", zone: "Europe/Berlin" },
    });
    const markdown = planMarkdown(beans, addresses, null);
    expect(markdown).toMatch(/- Sat, 24 Oct, 2\d:\d\d – Sun, 25 Oct, 0\d:\d\d\n {2}- What: Boiled red kidney beans/);
    expect(markdown).toMatch(/- 09:00 – 09:03\n/);
  });
});

describe("a plan as a mail", () => {
  it("parses without an error, fetches nothing and runs nothing", async () => {
    for (const bundle of demo.bundles) {
      const html = mailHtml(await answerOf(bundle, 5, sundayHousehold), addresses, note);
      const { errors, elements } = htmlTree(html);
      expect(errors).toEqual([]);
      const names = new Set(elements.map(({ name }) => name));
      for (const name of ["script", "img", "link", "style", "iframe", "form", "input", "svg"]) {
        expect(names).not.toContain(name);
      }
      for (const { name, attributes } of elements) {
        expect(Object.keys(attributes).filter((key) => key === "src" || key.startsWith("on"))).toEqual([]);
        expect(attributes["style"] ?? "").not.toMatch(/url\(|expression|[^-]color:|background/);
        // Mail clients clip at about 100 kB; common practice, no source.
        if (name === "html") expect(attributes).toEqual({ lang: bundle.plan.locale, dir: "ltr" });
      }
      expect(Buffer.byteLength(html)).toBeLessThan(100_000);
    }
  });

  it("runs from right to left for a language that does", async () => {
    const bundle = demoBundle("roots-and-barley");
    const hebrew: PlanBundle = { ...bundle, plan: { ...bundle.plan, locale: "he" } };
    // There are no fixed words in it: they are English, and the writer's are said to be Hebrew.
    const mail = mailHtml(await answerOf(hebrew, 4), addresses, null);
    expect(mail).toContain('<html lang="en" dir="rtl">');
    expect(mail).toContain('<h1 lang="he"');
  });
});

describe("a shopping list alone", () => {
  it("over two plans names the plan of every use", async () => {
    const answers = [
      await answerOf(demoBundle("roots-and-barley"), 7, sundayHousehold),
      await answerOf(demoBundle("lentils-and-greens"), 3, sundayHousehold),
    ];
    const [first] = answers;
    const scaled = answers.map((answer) => answer.scaled);
    const input = {
      list: shop(scaled, first!.household),
      plans: scaled.map(({ bundle }) => bundle),
      reader: first!.reader,
      servings: null,
    };
    const markdown = shoppingMarkdown(input);
    for (const kind of kindsOf(markdown)) expect(drawn).toContain(kind);
    expect(markdown).toContain("Roots and barley, four ways: ");
    await expect(markdown).toMatchFileSnapshot("../golden/list.md");
  });
});
