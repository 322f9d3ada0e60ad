import { fromMarkdown } from "mdast-util-from-markdown";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Addresses } from "../../../src/exports/addresses.js";
import { mailHtml } from "../../../src/exports/document/mail-html.js";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import { answerPlan } from "../../../src/services/answers/answer-plan.js";
import { loadSeeds } from "../../../src/services/drafts/load-seeds.js";
import { htmlTree } from "../../exports/html-tree.js";
import { describeOnBothDatabases } from "../../kit/databases.js";
import { demo, openTestApp, type TestApp } from "../open-test-app.js";

const address = "https://plans.example/plan";
const addresses: Addresses = { plan: address, revision: address, publisher: address, list: address, calendar: address };

type PhrasingContent = Extract<
  ReturnType<typeof fromMarkdown>["children"][number],
  { type: "paragraph" }
>["children"][number];

/** First lines of the items under a heading, as a CommonMark parser reads them. */
function itemsUnder(markdown: string, title: string): readonly string[] {
  const { children } = fromMarkdown(markdown);
  const at = children.findIndex((node) => node.type === "heading" && firstText(node.children) === title);
  const list = children[at + 1];
  if (list?.type !== "list") throw new Error(`nothing is listed under ${title}`);
  return list.children.map((item) => {
    const [paragraph] = item.children;
    return paragraph?.type === "paragraph" ? firstText(paragraph.children) : "";
  });
}

const firstText = ([first]: PhrasingContent[]): string => (first?.type === "text" ? first.value : "");

describeOnBothDatabases("the text of cautions", (open) => {
  let app: TestApp;

  beforeAll(async () => {
    app = await openTestApp((await open()).data);
    await loadSeeds(app.deps, demo);
  });
  afterAll(() => app.close());

  it("is byte for byte the same in GraphQL, Markdown and HTML, and promises nothing", async () => {
    const seen = new Set<string>();
    for (const { plan } of demo.bundles) {
      const { data, errors } = await app.ask(
        `query ($slug: String!) { plan(publisher: "third-gate-allotments", slug: $slug) {
          scaled(servings: 4) { cautions { code text } } } }`,
        { slug: plan.slug },
      );
      expect(errors).toEqual([]);
      const { scaled } = data?.["plan"] as { scaled: { cautions: { code: string; text: string }[] } };
      const answer = await answerPlan(
        app.deps,
        { publisher: plan.publisher, slug: plan.slug, revision: null },
        { servings: 4, household: {} },
      );
      if (answer?.ok !== true) throw new Error(`there is no answer for ${plan.slug}`);
      const texts = scaled.cautions.map(({ text }) => text);
      expect(texts.length).toBeGreaterThan(2);
      expect(itemsUnder(planMarkdown(answer.value, addresses, null), "Mind in the kitchen")).toEqual(texts);
      const html = mailHtml(answer.value, addresses, null);
      const items = htmlTree(html).elements.filter(({ name }) => name === "li");
      for (const text of texts) {
        expect(items.filter((item) => item.text.startsWith(text))).toHaveLength(1);
        // None of them needs an escape, so the very bytes stand in the mail.
        expect(Buffer.from(html).includes(Buffer.from(text))).toBe(true);
        seen.add(text);
      }
    }
    expect(seen.size).toBeGreaterThan(6);
    for (const text of seen) {
      expect(text.length).toBeLessThan(300);
      expect(text).not.toMatch(/\b(is|are|be|stays?) (perfectly |completely )?safe\b/i);
    }
  });
});
