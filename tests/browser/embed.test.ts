import { createServer, type Server } from "node:http";
import { readFile } from "node:fs/promises";
import type { AddressInfo } from "node:net";
import type { Page, Request } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnEmbedded } from "../kit/databases.js";
import { accessibilityFaults } from "./accessibility.js";
import { openBrowser, type OpenedBrowser } from "./open-browser.js";
import { openService, type OpenedService } from "./open-service.js";

const plan = "/p/third-gate-allotments/roots-and-barley";

describeOnEmbedded("a plan inside another page", (open) => {
  let service: OpenedService;
  let browser: OpenedBrowser;
  let blog: Server;
  let blogAddress: string;
  let embedded = plan;
  let attributes = "";

  beforeAll(async () => {
    service = await openService(await open());
    browser = await openBrowser();
    // A page that trusts the service with a script, an answer and pictures, and nobody with anything inline or with markup from text.
    const policy = [
      "default-src 'none'",
      `script-src ${service.address}`,
      `connect-src ${service.address}`,
      `img-src ${service.address}`,
      "style-src 'none'",
      "base-uri 'none'",
      "require-trusted-types-for 'script'",
      "trusted-types 'none'",
    ].join("; ");
    blog = createServer((_request, response) => {
      response.writeHead(200, { "content-type": "text/html; charset=utf-8", "content-security-policy": policy });
      response.end(`<!doctype html><html lang="en"><title>A blog</title><main><h1>A blog</h1>
<prepwright-plan src="${service.address}${embedded}" servings="6"${attributes}><a href="${service.address}${plan}">The plan</a></prepwright-plan>
</main><script src="${service.address}/embed.js" async></script></html>`);
    });
    await new Promise<void>((done) => blog.listen(0, "127.0.0.1", done));
    blogAddress = `http://127.0.0.1:${(blog.address() as AddressInfo).port}/`;
  });
  afterAll(async () => {
    await browser.close();
    await new Promise((done) => blog.close(done));
    await service.close();
  });

  const said: string[] = [];

  async function visit(path = plan, more = ""): Promise<Page> {
    embedded = path;
    attributes = more;
    said.splice(0);
    const page = await browser.context.newPage();
    page.on("console", (message) => void said.push(message.text()));
    page.on("pageerror", (error) => void said.push(error.message));
    await page.goto(blogAddress);
    return page;
  }

  it("weighs less than 20 kB", async () => {
    const script = await readFile("dist/browser/embed.js");
    expect(script.byteLength).toBeLessThan(20_000);
    expect(script.toString()).not.toMatch(/\beval\(|new Function|innerHTML/);
  });

  it("shows the plan under a policy that allows nothing inline", async () => {
    const page = await visit(`${plan}?region=XA&currency=XTS`);
    await page.getByText("People this is for: 6").waitFor();
    expect(said).toEqual([]);
    const shown = await page.locator("prepwright-plan article").innerText();
    for (const words of [
      "Roots and barley",
      "pearl barley",
      "Contains",
      "Look at the label",
      "Food safety",
      "not a promise",
    ]) {
      expect(shown).toContain(words);
    }
    // The plan took the place of the link that stood for it.
    expect(await page.getByRole("link", { name: "The plan", exact: true }).isVisible()).toBe(false);
    // Its own style holds, and does not leak.
    const topOf = (element: string) => page.evaluate(`getComputedStyle(${element}).borderTopWidth`);
    expect(await topOf(`document.querySelector("prepwright-plan").shadowRoot.querySelector("article")`)).toBe("9px");
    expect(await topOf(`document.querySelector("main")`)).toBe("0px");
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.close();
  });

  it("is worked out for others, keeps the ticks, and leaves the keyboard where it was", async () => {
    const page = await visit();
    await page.getByText("People this is for: 6").waitFor();
    await page.getByLabel("butter").check();
    const barley = page.locator("prepwright-plan label", { hasText: "carrot" });
    const before = await barley.innerText();
    await page.getByLabel("How many people?").fill("18");
    await page.keyboard.press("Enter");
    await page.getByText("People this is for: 18").waitFor();
    expect(await barley.innerText()).not.toBe(before);
    expect(await page.getByLabel("butter").isChecked()).toBe(true);
    expect(await page.evaluate("document.activeElement.shadowRoot.activeElement.id")).toBe("count");
    await page.close();
  });

  it("makes no link that could run in the page around it, whatever answered", async () => {
    for (const address of [
      "javascript:document.title='taken'",
      "data:text/html,x",
      "blob:x",
      " JaVaScRiPt:x",
      "not an address",
    ]) {
      embedded = plan;
      const page = await browser.context.newPage();
      await page.route(`**${plan}/card*`, async (route) => {
        const answer = await route.fetch();
        await route.fulfill({ response: answer, json: { ...((await answer.json()) as object), page: address } });
      });
      await page.goto(blogAddress);
      await page.getByText("People this is for: 6").waitFor();
      expect(await page.locator("prepwright-plan article a[href]:visible").count()).toBe(0);
      expect(await page.locator("prepwright-plan article").innerText()).toContain("Everything about this plan");
      await page.close();
    }
    const page = await visit();
    await page.getByText("People this is for: 6").waitFor();
    const link = page.getByRole("link", { name: "Everything about this plan" });
    expect(await link.getAttribute("href")).toContain(`${service.address}${plan}`);
    await page.close();
  });

  it("says politely what is wrong, and leaves the link", async () => {
    const page = await visit();
    await page.getByText("People this is for: 6").waitFor();
    await page.getByLabel("How many people?").fill("0");
    await page.keyboard.press("Enter");
    await page.getByText("whole number").waitFor();
    expect(await page.getByRole("link", { name: "The plan", exact: true }).isVisible()).toBe(true);
    await page.close();

    const lost = await visit("/p/third-gate-allotments/no-such-plan");
    await lost.getByText("No plan of this name is in print.").waitFor();
    expect(await lost.getByRole("link", { name: "The plan", exact: true }).isVisible()).toBe(true);
    await lost.close();
  });

  it("offers the link when the service cannot be reached", async () => {
    const page = await visit();
    await page.getByText("People this is for: 6").waitFor();
    await page.route("**/card*", (route) => route.abort());
    await page.evaluate(`document.querySelector("prepwright-plan").setAttribute("servings", "3")`);
    await page.getByText("cannot be reached just now").waitFor();
    expect(await page.getByRole("link", { name: "The plan", exact: true }).isVisible()).toBe(true);
    await page.close();
  });

  const shown = (page: Page): Promise<string> => page.locator("prepwright-plan article").innerText();

  it("always says what is contained, how long it keeps, what comes too late and what is dangerous, in every view", async () => {
    for (const view of ["compact", "list", "whole"]) {
      const page = await visit(`${plan}?region=GB&currency=XTS`, ` view="${view}"`);
      await page.getByText("People this is for: 6").waitFor();
      const words = await shown(page);
      for (const said of ["Allergens", "How long it keeps", "Boiled barley", "Food safety", "in the fridge"])
        expect(words, view).toContain(said);
      expect(words.includes("Shopping list"), view).toBe(view !== "compact");
      expect(await page.locator("prepwright-plan [part=late]").count(), view).toBe(lateIn(await cardOf(page)));
      expect(await accessibilityFaults(page)).toEqual([]);
      await page.close();
    }
  });

  const cardOf = async (page: Page): Promise<{ meals: { late: string[] }[] }> =>
    (await (await page.request.get(`${service.address}${plan}/card?servings=6&region=GB&currency=XTS`)).json()) as {
      meals: { late: string[] }[];
    };
  const lateIn = ({ meals }: { meals: { late: string[] }[] }): number => meals.flatMap(({ late }) => late).length;

  it("is light or dark as it is told, and takes the colours of the page around it", async () => {
    const paperOf = (page: Page) =>
      page.evaluate(
        `getComputedStyle(document.querySelector("prepwright-plan").shadowRoot.querySelector("article")).backgroundColor`,
      );
    for (const scheme of ["light", "dark"] as const) {
      const page = await visit(plan, ` theme="${scheme}"`);
      await page.emulateMedia({ colorScheme: scheme === "light" ? "dark" : "light" });
      await page.setViewportSize({ width: 390, height: 800 });
      await page.getByText("People this is for: 6").waitFor();
      expect(await paperOf(page)).toBe(scheme === "light" ? "rgb(248, 250, 242)" : "rgb(30, 38, 30)");
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
      await page.evaluate(`document.querySelector("prepwright-plan").style.setProperty("--prepwright-paper", "#fff")`);
      expect(await paperOf(page)).toBe("rgb(255, 255, 255)");
      await page.close();
    }
  });

  it("speaks the language it is told to", async () => {
    for (const [lang, label] of [
      ["de", "Für wie viele Personen?"],
      ["fr-CA", "Pour combien de personnes ?"],
      ["es", "¿Para cuántas personas?"],
      ["pl", "Dla ilu osób?"],
      ["xx", "How many people?"],
    ] as const) {
      const page = await visit(plan, ` lang="${lang}"`);
      await page.getByLabel(label).waitFor();
      expect(await page.locator("prepwright-plan article").getAttribute("lang")).toBe(
        lang === "xx" ? "en" : lang.slice(0, 2),
      );
      await page.close();
    }
  });

  it("tells the page around it what was loaded, what a reader changed, and what went wrong", async () => {
    const page = await visit();
    await page.getByText("People this is for: 6").waitFor();
    await page.evaluate(`globalThis.told = []; for (const kind of ["load", "change", "error"])
      document.querySelector("prepwright-plan").addEventListener(kind, ({ type, detail }) => told.push({ type, detail }));`);
    await page.getByLabel("How many people?").fill("9");
    await page.keyboard.press("Enter");
    await page.getByText("People this is for: 9").waitFor();
    await page.getByLabel("butter").check();
    await page.getByLabel("How many people?").fill("1.5");
    await page.keyboard.press("Enter");
    await page.getByText("whole number").waitFor();
    const told = (await page.evaluate("told")) as { readonly type: string; readonly detail: object }[];
    expect(told.map(({ type }) => type)).toEqual(["change", "load", "change", "error"]);
    expect(told[0]?.detail).toEqual({ servings: 9 });
    expect(told[1]?.detail).toMatchObject({ servings: 9, revision: 1 });
    expect(told[2]?.detail).toEqual({ got: ["butter"] });
    expect(told[3]?.detail).toMatchObject({ status: null });
    await page.close();
  });

  it("fetches no picture unless the page asks for it", async () => {
    const asked: string[] = [];
    const listen = (request: Request): void => void asked.push(request.resourceType());
    // Of every page from its first request on.
    browser.context.on("request", listen);
    for (const [attribute, pictures] of [
      ["", 0],
      [' pictures="yes"', 1],
    ] as const) {
      asked.splice(0);
      const page = await visit(plan, attribute);
      await page.getByText("People this is for: 6").waitFor();
      await page.waitForLoadState("networkidle");
      expect(asked.filter((type) => type === "image")).toHaveLength(pictures);
      await page.close();
    }
    browser.context.off("request", listen);
  });

  it("has no address that could run a script", async () => {
    const page = await visit();
    await page.getByText("People this is for: 6").waitFor();
    await page.evaluate(`document.querySelector("prepwright-plan").setAttribute("src", "javascript:alert(1)")`);
    await page.getByText("no address that can be read").waitFor();
    await page.close();
  });
});
