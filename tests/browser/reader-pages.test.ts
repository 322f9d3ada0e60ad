import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnEmbedded } from "../kit/databases.js";
import { accessibilityFaults } from "./accessibility.js";
import { paleTexts, smallTargets } from "./legibility.js";
import { openBrowser, type OpenedBrowser } from "./open-browser.js";
import { openService, type OpenedService } from "./open-service.js";

const shelf = "/p/third-gate-allotments";
const plans = ["roots-and-barley", "bean-night", "lentils-and-greens", "eggs-and-oats"].map(
  (slug) => `${shelf}/${slug}`,
);
const [plan = ""] = plans;
const languages = ["en", "de", "fr", "es", "pl"] as const;
const paper = { format: "A4", margin: { top: "12mm", bottom: "12mm", left: "12mm", right: "12mm" } } as const;

describeOnEmbedded("pages as readers meet them", (open) => {
  let service: OpenedService;
  let browser: OpenedBrowser;

  beforeAll(async () => {
    service = await openService(await open());
    browser = await openBrowser({ viewport: { width: 390, height: 800 } });
  });
  afterAll(async () => {
    await browser.close();
    await service.close();
  });

  async function visit(path: string, { context }: OpenedBrowser = browser): Promise<Page> {
    const page = await context.newPage();
    await page.goto(service.address + path);
    return page;
  }

  async function inBrowser(
    options: BrowserContextOptions,
    visits: (own: OpenedBrowser) => Promise<void>,
  ): Promise<void> {
    const own = await openBrowser({ viewport: { width: 390, height: 800 }, ...options });
    try {
      await visits(own);
    } finally {
      await own.close();
    }
  }

  const unfold = (page: Page): Promise<unknown> =>
    page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })");

  it.each([
    ...plans.slice(0, 2),
    `${plan}/list`,
    `${plan}/cook#step-2`,
    `${plan}/labels`,
    "/",
    shelf,
    "/privacy",
    `${plan}?servings=x`,
  ])("can be read and pressed: %s", async (path) => {
    const page = await visit(path);
    await unfold(page);
    expect(await smallTargets(page)).toEqual([]);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect([colorScheme, await paleTexts(page)]).toEqual([colorScheme, []]);
    }
    await page.close();
  });

  const heights: string[] = [];
  afterAll(() => console.log(heights.join("\n")));

  it.each(languages)(
    "is short, decides on the first screen and marks what is in another language: %s",
    async (locale) => {
      await inBrowser({ locale }, async (own) => {
        for (const path of plans) {
          const page = await visit(path, own);
          const bottom = (selector: string): Promise<number> =>
            page.evaluate<number>(`document.querySelector("${selector}").getBoundingClientRect().bottom`);
          expect([path, (await bottom(".ways")) <= 800, (await bottom(".verdict")) <= 800]).toEqual([path, true, true]);
          const height = await page.evaluate<number>("document.documentElement.scrollHeight");
          expect(height, path).toBeLessThan(6000);
          expect(await page.evaluate("document.documentElement.lang")).toBe(locale);
          // The writer wrote in English.
          const marks = await page.evaluate<string[]>(
            "[...document.querySelectorAll('main [lang]:not(.tongues *)')].map((each) => each.lang)",
          );
          expect(new Set(marks.map((mark) => mark.split("-")[0]))).toEqual(new Set(locale === "en" ? [] : ["en"]));
          if (path === plan) expect(await accessibilityFaults(page)).toEqual([]);
          await page.goto(`${service.address}${path}/list`);
          const list = await page.evaluate<number>("document.documentElement.scrollHeight");
          expect(list, `${path}/list`).toBeLessThan(2500);
          heights.push(`${locale} ${path}: ${height} px, list ${list} px`);
          await page.close();
        }
      });
    },
  );

  it("weighs little, and its largest part is soon there", async () => {
    const page = await browser.context.newPage();
    // The first answer of a service that was just started is no measure of it.
    await page.goto(service.address + plan);
    for (const path of [plan, `${plan}/list`, `${plan}/cook`]) {
      await page.goto(service.address + path, { waitUntil: "networkidle" });
      const bytes = await page.evaluate<number>(
        `["navigation", "resource"].flatMap((kind) => performance.getEntriesByType(kind)).filter(({ initiatorType }) => initiatorType !== "img")
          .reduce((sum, { encodedBodySize }) => sum + encodedBodySize, 0)`,
      );
      const largest = await page.evaluate<number>(
        `new Promise((done) => new PerformanceObserver((list) => done(list.getEntries().at(-1).startTime))
          .observe({ type: "largest-contentful-paint", buffered: true }))`,
      );
      console.log(
        `${path}: ${Math.ceil(bytes / 1024)} kB without pictures, largest paint after ${Math.round(largest)} ms`,
      );
      expect(bytes, path).toBeGreaterThan(0);
      expect(bytes, path).toBeLessThan(150 * 1024);
    }
    await page.close();
  });

  it("runs timers that outlive the page, and keeps the screen awake", async () => {
    const page = await browser.context.newPage();
    await page.addInitScript(
      "window.asked = []; navigator.wakeLock.request = async (kind) => void window.asked.push(kind)",
    );
    await page.goto(`${service.address}${plan}/cook`);
    expect(await page.evaluate("window.asked")).toEqual(["screen"]);
    const step = page.locator(".step:has(.timer)").first();
    const id = await step.getAttribute("id");
    await page.goto(`${service.address}${plan}/cook#${id}`);
    expect(await page.evaluate("scrollY")).toBe(0);
    await step.locator(".timer button").click();
    const timer = page.locator("#timers [role=timer]");
    expect(await timer.innerText()).toMatch(/: (\d+:)?\d+:\d\d$/);
    await page.reload();
    expect(await timer.innerText()).toMatch(/: (\d+:)?\d+:\d\d$/);
    // As if the time had passed while the page was closed.
    await page.evaluate(
      "(() => { const key = Object.keys(localStorage).find((each) => each.endsWith(' timers')); const [first] = JSON.parse(localStorage[key]); localStorage[key] = JSON.stringify([{ ...first, ends: Date.now() - 1000 }]); })()",
    );
    await page.reload();
    expect(await page.locator("#timers [role=alert]").innerText()).not.toMatch(/\d:\d\d$/);
    await page.locator("#timers button").click();
    expect(await page.locator("#timers p").count()).toBe(0);
    await page.reload();
    expect(await page.locator("#timers p").count()).toBe(0);
    await page.close();
  });

  it("leads through every dish with every caution also where the steps fit no order", async () => {
    const page = await visit(`${plan}/cook?appliance=hob-ring:0`);
    expect(await page.locator("#start .flag").isVisible()).toBe(true);
    expect(await page.locator("#start .caution").allInnerTexts()).toContainEqual(
      expect.stringMatching(/garlic.* under oil/),
    );
    await page.getByRole("link", { name: "Start" }).click();
    const titles: string[] = [];
    for (;;) {
      titles.push(await page.locator(".step.now h2").innerText());
      if ((await page.locator(".step.now").getAttribute("id")) === "away") break;
      await page.locator(".step.now .on").click();
    }
    expect(titles).toContain("Boiled barley");
    expect(titles).toContain("Barley broth with kale");
    await page.close();
  });

  it("begins at the start again when everything was put away", async () => {
    const page = await visit(`${plan}/cook#away`);
    expect(await page.locator(".step.now").getAttribute("id")).toBe("away");
    await page.goto(`${service.address}${plan}/cook`);
    expect(await page.locator(".step.now").getAttribute("id")).toBe("start");
    await page.close();
  });

  it("keeps nothing of an answer that tells of diets", async () => {
    await inBrowser({}, async (own) => {
      const page = await visit(plan, own);
      await page.locator(".ask > summary").click();
      await page.getByLabel("Gluten-free").check();
      await page.getByRole("button", { name: "Update amounts" }).click();
      await page.locator(".ways").getByRole("button", { name: "Shopping list" }).click();
      expect(await page.locator(".count").innerText()).toContain("gluten-free");
      await page.waitForLoadState("networkidle");
      expect(await page.evaluate("caches.keys()")).toEqual([]);
      // Another list is kept, and an old address with a diet in it is not.
      await page.goto(`${service.address}${plan}/list`);
      await page.evaluate("navigator.serviceWorker.ready");
      await page.goto(`${service.address}${plan}/list?diet=gluten-free`);
      await page.goto(`${service.address}${plan}/cook`);
      const kept = await page.evaluate<string[]>(
        "caches.open('prepwright-pages-1').then((kept) => kept.keys()).then((keys) => keys.map(({ url }) => url))",
      );
      expect(kept.some((url) => url.endsWith("/cook"))).toBe(true);
      expect(kept.filter((url) => url.includes("diet"))).toEqual([]);
    });
  });

  it.each([
    [`${plan}/list`, 1],
    [`${shelf}/bean-night/list`, 1],
    [`${plan}/fridge-door`, 1],
    [`${plan}/labels`, 1],
    [`${plan}/cook`, 2],
  ] as const)("prints on few sheets: %s", async (path, most) => {
    const page = await visit(path);
    await page.emulateMedia({ media: "print" });
    const sheets = (await page.pdf(paper)).toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? [];
    expect(sheets.length).toBeGreaterThanOrEqual(1);
    expect(sheets.length).toBeLessThanOrEqual(most);
    await page.close();
  });
});
