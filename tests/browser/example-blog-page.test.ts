import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeOnEmbedded } from "../kit/databases.js";
import { accessibilityFaults } from "./accessibility.js";
import { openBrowser, type OpenedBrowser } from "./open-browser.js";
import { openService, type OpenedService } from "./open-service.js";

describeOnEmbedded("the example of a blog page", (open) => {
  let service: OpenedService;
  let browser: OpenedBrowser;
  let blog: Server;

  beforeAll(async () => {
    service = await openService(await open());
    browser = await openBrowser();
    const page = (await readFile("examples/blog-page/index.html", "utf8")).replaceAll(
      "http://127.0.0.1:4000",
      service.address,
    );
    blog = createServer((_, response) => {
      response.writeHead(200, { "content-type": "text/html; charset=utf-8" }).end(page);
    });
    await new Promise<void>((done) => blog.listen(0, "127.0.0.1", done));
  });
  afterAll(async () => {
    await browser.close();
    await new Promise((done) => blog.close(done));
    await service.close();
  });

  it("shows the plan inside the text, under its own policy and without a fault for assistive programs", async () => {
    const said: string[] = [];
    const page = await browser.context.newPage();
    page.on("console", (message) => void said.push(message.text()));
    await page.goto(`http://127.0.0.1:${(blog.address() as AddressInfo).port}/`);
    await page.getByText("People this is for: 4").waitFor();
    const shown = await page.locator("prepwright-plan article").innerText();
    for (const words of ["Roots and barley", "pearl barley", "Food safety"]) expect(shown).toContain(words);
    expect(said.filter((line) => !line.includes("favicon"))).toEqual([]);
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.close();
  });

  it("is a link to the plan where there are no scripts", async () => {
    const plain = await openBrowser({ javaScriptEnabled: false });
    const page = await plain.context.newPage();
    await page.goto(`http://127.0.0.1:${(blog.address() as AddressInfo).port}/`);
    expect(await page.getByRole("link", { name: "Roots and barley, four ways" }).isVisible()).toBe(true);
    await plain.close();
  });
});
