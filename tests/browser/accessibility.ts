import axe, { type AxeResults } from "axe-core";
import type { Page } from "playwright-core";

/** Breaches of WCAG 2.2 A and AA and of axe-core's good practice, each with where it is. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<AxeResults>("axe.run(document)");
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${JSON.stringify(target)}: ${failureSummary ?? ""}`),
  );
}
