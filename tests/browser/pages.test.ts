import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnEmbedded } from "../kit/databases.js";
import { accessibilityFaults } from "./accessibility.js";
import { openBrowser, type OpenedBrowser } from "./open-browser.js";
import { openService, type OpenedService } from "./open-service.js";

const plan = "/p/third-gate-allotments/roots-and-barley";
const household = "servings=7&region=XA&currency=XTS&start=2026-03-01T10:00&zone=Europe/Lisbon";
const beans = `/p/third-gate-allotments/bean-night?${household}`;
const list = `${plan}/list?${household}&plan=third-gate-allotments/bean-night:5`;
const faulty = `${plan}?servings=many&region=Atlantis&zone=Mars&start=2026-03-01T10:00&diet=moonlight`;

describeOnEmbedded("pages in a browser", (open) => {
  let service: OpenedService;
  let browser: OpenedBrowser;
  let plain: OpenedBrowser;

  beforeAll(async () => {
    service = await openService(await open());
    browser = await openBrowser();
    plain = await openBrowser({ javaScriptEnabled: false });
  });
  afterAll(async () => {
    await Promise.all([browser.close(), plain.close()]);
    await service.close();
  });

  async function visit(path: string, { context }: OpenedBrowser = browser): Promise<Page> {
    const page = await context.newPage();
    await page.goto(service.address + path);
    return page;
  }

  const everyPage = [
    ...["/", "/p/third-gate-allotments", plan, beans, list, faulty, "/p/nobody", "/privacy"],
    ...[`${plan}/cook`, `${plan}/fridge-door`, `${plan}/labels`],
  ];

  it.each(everyPage.flatMap((path) => (["light", "dark"] as const).map((scheme) => [path, scheme] as const)))(
    "has nothing that keeps anybody out: %s, %s",
    async (path, scheme) => {
      const page = await visit(path);
      await page.emulateMedia({ colorScheme: scheme });
      // What is folded away is read by somebody too.
      await page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })");
      expect(await accessibilityFaults(page)).toEqual([]);
      await page.close();
    },
  );

  it.each(everyPage.flatMap((path) => [360, 390, 768, 1280].map((width) => [path, width] as const)))(
    "fits: %s at %i pixels",
    async (path, width) => {
      const page = await visit(path);
      await page.setViewportSize({ width, height: 800 });
      await page.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })");
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(width);
      await page.close();
    },
  );

  it("loads nothing from elsewhere and breaks none of its own rules", async () => {
    for (const path of everyPage) {
      const page = await browser.context.newPage();
      const asked: string[] = [];
      const said: string[] = [];
      page.on("request", (request) => void asked.push(request.url()));
      page.on("console", (message) => void said.push(message.text()));
      await page.goto(service.address + path);
      expect(asked.filter((url) => !url.startsWith(`${service.address}/`))).toEqual([]);
      expect(said.filter((text) => !text.includes("the server responded with a status of 4"))).toEqual([]);
      await page.close();
    }
  });

  it("works the plan out for other servings, by the keyboard alone and without a script", async () => {
    const page = await visit(plan, plain);
    const before = await page.locator("#made .row").first().innerText();
    await page.locator(".ask > summary").focus();
    await page.keyboard.press("Enter");
    await page.getByLabel("How many people?").focus();
    await page.keyboard.type("9");
    await page.keyboard.press("Enter");
    await page.waitForURL(/servings=9/);
    expect(await page.locator(".state").innerText()).toContain("9 people");
    expect(await page.locator("#made .row").first().innerText()).not.toBe(before);
    await page.getByRole("button", { name: /one more/ }).click();
    await page.waitForURL(/servings=10/);
    expect(await page.locator(".state").innerText()).toContain("10 people");
    await page.close();
  });

  it("takes a swap and a diet from the form", async () => {
    const page = await visit(plan, plain);
    await page.locator(".ask > summary").click();
    await page.getByLabel("Pearl barley").selectOption("pearl-barley:buckwheat-groats");
    await page.getByRole("button", { name: "Update amounts" }).click();
    await page.waitForURL(/swap=pearl-barley%3Abuckwheat-groats/);
    expect(await page.locator(".changed").innerText()).toContain("buckwheat groats in place of pearl barley");
    // What was chosen is still chosen.
    await page.locator(".ask > summary").click();
    expect(await page.getByLabel("Pearl barley").inputValue()).toBe("pearl-barley:buckwheat-groats");
    // A diet stands in no address.
    await page.getByLabel("Gluten-free").check();
    await page.getByRole("button", { name: "Update amounts" }).click();
    await page.waitForSelector(".verdict :text('gluten-free')");
    expect(page.url()).not.toContain("gluten");
    await page.close();
  });

  it("shows faults beside their fields and says so first", async () => {
    const page = await visit(faulty, plain);
    expect(await page.getByRole("alert").innerText()).toContain("Everything you typed is still here");
    const region = page.getByLabel("Country (sets allergen and storage rules)");
    expect(await region.isVisible()).toBe(true);
    expect(await region.inputValue()).toBe("Atlantis");
    expect(await region.getAttribute("aria-invalid")).toBe("true");
    await page.close();
  });

  it("lets a list be ticked without a script, and remembers the ticks with one", async () => {
    const still = await visit(list, plain);
    await still.locator("[value=butter]").check();
    const crossed = await still.evaluate(
      "getComputedStyle(document.querySelector(':checked + .thing')).textDecorationLine",
    );
    expect(crossed).toBe("line-through");
    await still.close();

    const page = await visit(list);
    await page.locator("[value=butter]").check();
    await page.locator("[value=pearl-barley]").check();
    await page.reload();
    expect(await page.locator("#ticks :checked").count()).toBe(2);
    expect(await page.locator("#count").innerText()).toMatch(/^2 of \d+$/);
    expect(await page.locator("[value=butter]").isChecked()).toBe(true);
    // The same plans for other people keep their ticks, other plans have their own.
    await page.goto(`${service.address}${list.replace("servings=7", "servings=9")}`);
    expect(await page.locator("#ticks :checked").count()).toBe(2);
    const other = await visit(`${plan}/list`);
    expect(await other.locator("#ticks :checked").count()).toBe(0);
    await other.close();
    await page.getByRole("button", { name: "Clear ticks" }).click();
    expect(await page.locator("#ticks :checked").count()).toBe(0);
    await page.getByRole("button", { name: "Undo" }).click();
    expect(await page.locator("#ticks :checked").count()).toBe(2);
    await page.getByRole("button", { name: "Clear ticks" }).click();
    await page.reload();
    expect(await page.locator("#ticks :checked").count()).toBe(0);
    await page.close();
  });

  it("prints a list on at most two sheets, without form and navigation", async () => {
    const page = await visit(list);
    await page.emulateMedia({ media: "print" });
    for (const hidden of [".masthead", "#ticks [type=reset]"])
      expect(await page.locator(hidden).isVisible()).toBe(false);
    expect(await page.getByText("butter").first().isVisible()).toBe(true);
    const paper = await page.pdf({
      format: "A4",
      margin: { top: "12mm", bottom: "12mm", left: "12mm", right: "12mm" },
    });
    const sheets = paper.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? [];
    expect(sheets.length).toBeGreaterThanOrEqual(1);
    expect(sheets.length).toBeLessThanOrEqual(2);
    await page.close();
  });

  it("decides, leads on and shows the first meal on the first screen of a phone, and is short", async () => {
    for (const path of [
      plan,
      beans,
      "/p/third-gate-allotments/lentils-and-greens",
      "/p/third-gate-allotments/eggs-and-oats",
    ]) {
      const page = await visit(path);
      await page.setViewportSize({ width: 390, height: 800 });
      const bottomOf = (selector: string): Promise<number> =>
        page.evaluate<number>(`document.querySelector("${selector}").getBoundingClientRect().bottom`);
      expect([path, (await bottomOf(".verdict")) <= 800, (await bottomOf(".ways")) <= 800]).toEqual([path, true, true]);
      expect(await page.evaluate<number>("document.documentElement.scrollHeight"), path).toBeLessThan(6000);
      await page.goto(`${service.address}${path.split("?")[0]}/list`);
      expect(await page.evaluate<number>("document.documentElement.scrollHeight"), path).toBeLessThan(2500);
      await page.close();
    }
  });

  it("goes through the kitchen view step by step, and comes back to the same step", async () => {
    const page = await visit(`${plan}/cook`);
    await page.getByRole("link", { name: "Start" }).click();
    await page.locator(".now").getByRole("link", { name: "Done" }).click();
    expect(await page.locator(".step.now").getAttribute("id")).toBe("step-2");
    expect(await page.locator(".step:visible").count()).toBe(1);
    await page.goto(`${service.address}${plan}/cook`);
    expect(await page.locator(".step.now").getAttribute("id")).toBe("step-2");
    await page.locator(".now").getByRole("link", { name: "Back" }).click();
    expect(await page.locator(".step.now").getAttribute("id")).toBe("step-1");
    await page.close();
    const still = await visit(`${plan}/cook`, plain);
    expect(await still.locator(".step:visible").count()).toBeGreaterThan(10);
    await still.close();
  });

  it("shows a list that was opened once without a network", async () => {
    const page = await visit(list);
    await page.evaluate("navigator.serviceWorker.ready");
    await page.waitForFunction(
      "caches.open('prepwright-pages-1').then((kept) => kept.match(location.href)).then(Boolean)",
    );
    await page.reload();
    await browser.context.setOffline(true);
    try {
      await page.reload();
      expect(await page.locator("h1").innerText()).toBe("Shopping list");
    } finally {
      await browser.context.setOffline(false);
    }
    await page.close();
  });

  it("prints a plan without form and navigation", async () => {
    const page = await visit(plan);
    await page.emulateMedia({ media: "print" });
    for (const hidden of [".masthead", ".ways", ".onward"]) {
      expect(await page.locator(hidden).first().isVisible()).toBe(false);
    }
    expect(await page.locator("#care").isVisible()).toBe(true);
    await page.close();
  });

  it("shows where the keyboard is, and leads past the navigation", async () => {
    const page = await visit(plan);
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.textContent")).toBe("To the page itself");
    expect(await page.evaluate("document.activeElement.getBoundingClientRect().top >= 0")).toBe(true);
    expect(await page.evaluate("getComputedStyle(document.activeElement).outlineStyle")).toBe("solid");
    await page.close();
  });

  it("moves nothing for readers who want it still", async () => {
    const page = await visit(plan);
    const behaviour = "getComputedStyle(document.documentElement).scrollBehavior";
    await page.emulateMedia({ reducedMotion: "no-preference" });
    expect(await page.evaluate(behaviour)).toBe("smooth");
    await page.emulateMedia({ reducedMotion: "reduce" });
    expect(await page.evaluate(behaviour)).toBe("auto");
    await page.close();
  });
});
