import { componentsIn, linesOfComponent } from "../../domain/plan/compile/plan-bundle.js";
import type { Component } from "../../domain/model/component.js";
import type { Data, Draft } from "../../persistence/data.js";

/**
 * The component drafts of a publisher that some slugs lead to, directly or through one another: one read a level.
 * @param written slugs that are not read, because their documents are at hand
 */
export async function gatherComponents(
  data: Data,
  publisher: string,
  slugs: readonly string[],
  written: ReadonlySet<string> = new Set(),
): Promise<readonly Draft<Component>[]> {
  const asked = new Set(written);
  const found: Draft<Component>[] = [];
  let next = slugs;
  for (;;) {
    const level = [...new Set(next)].filter((slug) => !asked.has(slug));
    if (level.length === 0) return found;
    level.forEach((slug) => asked.add(slug));
    const read = await data.components.drafts(level.map((slug) => ({ publisher, slug })));
    const drafts = read.filter((draft) => draft !== null);
    found.push(...drafts);
    next = drafts.flatMap(({ value }) => componentsIn(linesOfComponent(value)));
  }
}
