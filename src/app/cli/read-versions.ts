import { DraftVersionsDocument, type DraftVersionsQuery } from "./generated/operations.js";
import type { Service } from "./service.js";

export type DraftVersion = DraftVersionsQuery["drafts"]["edges"][number]["node"];

/** The state of every draft of a publisher. */
export async function readVersions(service: Service, publisher: string): Promise<readonly DraftVersion[]> {
  const found: DraftVersion[] = [];
  let after: string | null = null;
  do {
    const { drafts }: DraftVersionsQuery = await service.ask(DraftVersionsDocument, { publisher, after });
    found.push(...drafts.edges.map(({ node }) => node));
    after = drafts.pageInfo.hasNextPage ? drafts.pageInfo.endCursor : null;
  } while (after !== null);
  return found;
}
