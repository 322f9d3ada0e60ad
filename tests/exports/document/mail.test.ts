import { expect, it } from "vitest";
import { runToEnd } from "../../../src/domain/counted-work.js";
import { mailHtmlInSlices } from "../../../src/exports/document/mail-html.js";
import { mailTextInSlices } from "../../../src/exports/document/mail-text.js";
import { planMarkdown } from "../../../src/exports/document/markdown.js";
import { addresses, answerOf, demo } from "../demo-answer.js";
import { htmlTree } from "../html-tree.js";

const stored = { hash: "a".repeat(64), width: 1000, height: 750, placeholder: "#808080" };
const origin = "https://plans.example.org";
const bundle = demo.bundles.find(({ plan }) => plan.slug === "bean-night")!;
const hostile = `"><script>alert(1)</script><img src=x onerror=alert(1)>`;
const withImage = (alt: string, credit: string | null) => ({
  ...bundle,
  plan: { ...bundle.plan, image: { file: "beans.jpg", alt, credit, licence: null, stored } },
});
const html = async (of: typeof bundle, pictures: string | null): Promise<string> =>
  runToEnd(mailHtmlInSlices(await answerOf(of, 4), addresses, null, pictures));

it("fetches nothing unless pictures are asked for", async () => {
  const pictured = withImage("Beans in a pot", "A. Gardener");
  expect(await html(pictured, null)).toBe(await html(bundle, null));
  expect(await html(pictured, null)).not.toMatch(/<img|src=|url\(/);
  expect(await html(bundle, origin)).toBe(await html(bundle, null));
});

it("shows the plan's picture with its text, credit and size where they are asked for", async () => {
  const shown = await html(withImage('Beans "in" a <pot>', "A. <Gardener>"), origin);
  const images = [...shown.matchAll(/<img [^>]*>/g)].map(([tag]) => tag);
  expect(images).toHaveLength(1);
  expect(images[0]).toContain(`src="${origin}/images/${bundle.plan.publisher}/${stored.hash}/640.jpg"`);
  expect(images[0]).toMatch(/alt="Beans (&quot;|&#34;)in(&quot;|&#34;) a &lt;pot&gt;" width="600" height="450"/);
  expect(shown).toContain("A. &lt;Gardener&gt;");
  // parse5, the parser of the HTML standard, finds nothing else that would be fetched or run.
  expect(JSON.stringify(htmlTree(shown))).not.toMatch(/"(script|link|iframe|object|embed)"/);
  expect((await html(withImage(hostile, hostile), origin)).match(/<(img|script)\b/g)).toEqual(["<img"]);
});

it("has a plain-text part that says the same words, without marks", async () => {
  const answer = await answerOf(bundle, 4);
  const text = runToEnd(mailTextInSlices(answer, addresses, "The beans soak for longer."));
  const words = (of: string): readonly string[] =>
    of
      .replace(/[^\p{L}\p{N}]+/gu, " ")
      .trim()
      .split(" ");
  const markdown = planMarkdown(answer, addresses, "The beans soak for longer.");
  // The same words in the same order; marks, boxes and the numbers of steps are of each form.
  const spoken = (of: string) => words(of.replace(/^\s*(\d+[.)]|[-*] \[x\]|\[x\])/gm, ""));
  expect(spoken(text)).toEqual(spoken(markdown));
  expect(text).toContain(`${bundle.plan.title}\n${"=".repeat([...bundle.plan.title].length)}\n`);
  expect(text).not.toMatch(/\\|\*\*|^#/m);
});
