import { existsSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type BrowserContext, type BrowserContextOptions } from "playwright-core";

const program = "/usr/bin/chromium";

export interface OpenedBrowser {
  readonly context: BrowserContext;
  close(): Promise<void>;
}

/** A Chromium of its own, with nothing remembered and nothing sent home. The caller closes it. */
export async function openBrowser(options: BrowserContextOptions = {}): Promise<OpenedBrowser> {
  if (!existsSync(program)) {
    throw new Error(
      `these tests need Chromium at ${program}: apt-get install chromium. All other tests run without it.`,
    );
  }
  const folder = await mkdtemp(join(tmpdir(), "prepwright-chromium-"));
  const context = await chromium.launchPersistentContext(folder, {
    ...options,
    executablePath: program,
    headless: true,
    args: [
      ...["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"],
      ...["--disable-background-networking", "--disable-component-update", "--disable-sync"],
    ],
  });
  return {
    context,
    close: async () => {
      await context.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
