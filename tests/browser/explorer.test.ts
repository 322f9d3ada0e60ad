import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { describeOnEmbedded } from "../kit/databases.js";
import { openBrowser, type OpenedBrowser } from "./open-browser.js";
import { openService, type OpenedService } from "./open-service.js";

describeOnEmbedded("the explorer in a browser", (open) => {
  let service: OpenedService;
  let browser: OpenedBrowser;

  beforeAll(async () => {
    service = await openService(await open());
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    await service.close();
  });

  /** Opens the explorer; `faults` fills with what a reader would see in the console or the network panel. */
  async function visit(width: number): Promise<{ page: Page; faults: string[] }> {
    const page = await browser.context.newPage();
    await page.setViewportSize({ width, height: 800 });
    const faults: string[] = [];
    page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("requestfailed", (asked) => faults.push(`${asked.url()}: ${asked.failure()?.errorText ?? "failed"}`));
    page.on("response", (answer) => answer.status() >= 400 && faults.push(`${answer.url()}: ${answer.status()}`));
    // As somebody who was never here: the explorer remembers what was typed.
    await page.addInitScript("localStorage.clear()");
    await page.goto(`${service.address}/graphql`);
    await page.locator(".graphiql-query-editor").getByText("PlanForAHousehold").waitFor();
    return { page, faults };
  }

  describe.each([1280, 390])("at %i pixels", (width) => {
    it("runs the starter query with its variables", async () => {
      const { page, faults } = await visit(width);
      await page.getByRole("button", { name: /Execute query/ }).click();
      const answer = page.locator(".graphiql-response");
      await answer.getByText('"Roots and barley, four ways"').waitFor();
      expect(await answer.innerText()).not.toContain('"errors"');
      expect(faults).toEqual([]);
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(width);
      await page.close();
    });
  });

  it("completes the names of fields", async () => {
    const { page, faults } = await visit(1280);
    await page.locator(".graphiql-query-editor").getByText("PlanForAHousehold").click();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("{ plan");
    await page.keyboard.press("Control+Space");
    await page.locator(".suggest-widget").getByText("plans").first().waitFor();
    expect(faults).toEqual([]);
    await page.close();
  });

  it("shows the description of a type", async () => {
    const { page, faults } = await visit(1280);
    await page.getByRole("button", { name: /Documentation Explorer/ }).click();
    await page.getByRole("link", { name: "Query" }).click();
    await page.getByText("plans", { exact: true }).first().waitFor();
    expect(faults).toEqual([]);
    await page.close();
  });

  it("says what to do where no script runs", async () => {
    const plain = await openBrowser({ javaScriptEnabled: false });
    const page = await plain.context.newPage();
    await page.goto(`${service.address}/graphql`);
    expect(await page.locator("body").innerText()).toContain("This page needs JavaScript.");
    await plain.close();
  });
});
