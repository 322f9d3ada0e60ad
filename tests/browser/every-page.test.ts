import type { Page, Response } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { problemAddress, problemKinds } from "../../src/rest/problem-kinds.js";
import { describeOnEmbedded } from "../kit/databases.js";
import { openBrowser, type OpenedBrowser } from "./open-browser.js";
import { openService, type OpenedService } from "./open-service.js";

/** Pages that no page links to: the explorer, what problems of REST lead to, and what a reader gets who is lost. */
const notLinked = [
  "/graphql",
  ...Object.keys(problemKinds).map((kind) => problemAddress(kind)),
  "/nothing-here",
  "/p/nobody/nothing",
];

interface Visited {
  readonly path: string;
  readonly faults: readonly string[];
  readonly links: readonly string[];
}

describeOnEmbedded("every page that the service serves", (open) => {
  let service: OpenedService;
  let browser: OpenedBrowser;

  beforeAll(async () => {
    service = await openService(await open());
    browser = await openBrowser({ viewport: { width: 390, height: 844 } });
  });
  afterAll(async () => {
    await browser.close();
    await service.close();
  });

  /** Opens a page on a phone, and lists what is wrong with it: null where it is no page but a file. */
  async function visit(path: string): Promise<Visited | null> {
    const page = await browser.context.newPage();
    const faults: string[] = [];
    let main: Response | undefined;
    const isMain = (url: string): boolean => url === service.address + path;
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("requestfailed", (asked) => !isMain(asked.url()) && faults.push(`${asked.url()}: failed`));
    page.on("response", (answer) => {
      if (isMain(answer.url())) main = answer;
      else if (answer.status() >= 400) faults.push(`${answer.url()}: ${answer.status()}`);
    });
    // The browser itself notes the status of a page that says something is not there.
    page.on("console", (message) => {
      if (message.type() === "error" && !isMain(message.location().url)) faults.push(message.text());
    });
    try {
      // A file is downloaded instead, which Chromium tells as an aborted visit.
      await page.goto(service.address + path, { waitUntil: "load" }).catch(() => null);
      if (main?.headers()["content-type"]?.startsWith("text/html") !== true) return null;
      const links = await linksOf(page);
      return { path, links, faults: [...faults, ...(await faultsOf(page, main))] };
    } finally {
      await page.close();
    }
  }

  const linksOf = (page: Page): Promise<readonly string[]> =>
    page.evaluate<string[]>(
      "[...document.querySelectorAll('a[href]')].filter((a) => a.origin === location.origin).map((a) => a.pathname + a.search)",
    );

  async function faultsOf(page: Page, main: Response): Promise<readonly string[]> {
    const width = await page.evaluate<number>("document.documentElement.scrollWidth");
    const told = await page.evaluate<[string, string, string]>(
      "[document.documentElement.lang, document.title, document.body.innerText.trim()]",
    );
    return [
      ...(main.status() >= 500 ? [`status ${main.status()}`] : []),
      ...(width > 390 ? [`${width} pixels wide`] : []),
      ...["no language", "no title", "no text"].filter((_, at) => told[at] === ""),
    ];
  }

  it("opens on a phone without an error, a failed request or a line that is too wide", async () => {
    const waiting = ["/", ...notLinked];
    const seen = new Map<string, Visited | null>();
    // Links with other households lead to the same page: one of each is opened.
    const pageOf = (path: string): string => `${path.split("?")[0]}${path.includes("?") ? "?" : ""}`;
    for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) {
      if (seen.has(pageOf(path))) continue;
      const visited = await visit(path);
      seen.set(pageOf(path), visited);
      waiting.push(...(visited?.links ?? []));
    }
    const pages = [...seen.values()].filter((each) => each !== null);
    expect(pages.filter(({ faults }) => faults.length > 0).map(({ path, faults }) => ({ path, faults }))).toEqual([]);
    const paths = pages.map(({ path }) => path.split("?")[0]);
    expect(paths).toEqual(expect.arrayContaining(["/", "/graphql", "/p/third-gate-allotments"]));
    expect(paths.filter((path) => path?.endsWith("/list")).length).toBeGreaterThan(0);
    console.log(`${pages.length} pages opened, and ${seen.size - pages.length} files`);
  });
});
