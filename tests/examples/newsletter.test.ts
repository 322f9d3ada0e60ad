import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { fromMarkdown } from "mdast-util-from-markdown";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openService, type OpenedService } from "../browser/open-service.js";
import { demo } from "../graphql/open-test-app.js";
import { describeOnBothDatabases } from "../kit/databases.js";

const run = promisify(execFile);

describeOnBothDatabases("the example of a newsletter", (open) => {
  let service: OpenedService;
  beforeAll(async () => {
    service = await openService(await open());
  });
  afterAll(() => service.close());

  const issue = (...words: readonly string[]) =>
    run(process.execPath, [
      "--import",
      "tsx",
      "examples/newsletter.ts",
      service.address,
      "third-gate-allotments",
      ...words,
    ]);

  it("holds every plan once, as Markdown that an independent parser reads, with a link to each", async () => {
    const { stdout } = await issue("--servings", "6");
    const { children } = fromMarkdown(stdout);
    const titles = children.flatMap((node) => (node.type === "heading" && node.depth === 1 ? [node] : []));
    expect(titles.length).toBe(demo.plans.length);
    expect(stdout.match(/^For 6 servings\.$/gm)).toHaveLength(demo.plans.length);
    for (const { slug } of demo.plans) {
      expect(stdout).toContain(`<${service.address}/p/third-gate-allotments/${slug}>`);
    }
  });

  it("is a mail of plain text where it is asked for one (RFC 2045, RFC 2047)", async () => {
    const { stdout } = await issue("--mail");
    const [head = "", body = ""] = stdout.split("\r\n\r\n");
    for (const line of stdout.split("\r\n")) expect(line.length).toBeLessThanOrEqual(78);
    const words = [...head.matchAll(/=\?utf-8\?B\?([A-Za-z0-9+/=]+)\?=/g)].map(([, text = ""]) => text);
    const subject = words.map((text) => Buffer.from(text, "base64").toString()).join("");
    expect(demo.plans.map(({ title }) => title)).toContain(subject);
    const text = Buffer.from(body, "base64").toString("utf8");
    for (const { title } of demo.plans) expect(text).toContain(title);
  });

  it("says what is wrong in the service's own words, and when there is nothing to print", async () => {
    await expect(issue("--servings", "0")).rejects.toMatchObject({
      code: 1,
      stderr: expect.stringContaining("servings"),
    });
    await expect(issue("--since", "2999-01-01")).rejects.toMatchObject({
      code: 1,
      stderr: "Nothing was published since 2999-01-01.\n",
    });
  });
});
