import { ScheduledDocument, type ScheduledPartsFragment, type ScheduledQuery } from "./generated/operations.js";
import type { ScheduledQueryVariables } from "./generated/operations.js";
import type { Service } from "./service.js";

/** What of a publisher is scheduled; `states` empty: what was, too. */
export async function readScheduled(
  service: Service,
  publisher: string,
  states: NonNullable<ScheduledQueryVariables["states"]>,
): Promise<readonly ScheduledPartsFragment[]> {
  const found: ScheduledPartsFragment[] = [];
  let after: string | null = null;
  do {
    const { scheduled }: ScheduledQuery = await service.ask(ScheduledDocument, { publisher, states, after });
    found.push(...scheduled.edges.map(({ node }) => node));
    after = scheduled.pageInfo.hasNextPage ? scheduled.pageInfo.endCursor : null;
  } while (after !== null);
  return found;
}
