// @ts-nocheck
import type { Page } from "../../services/deps.js";

/** A page as a Relay connection. */
export const connection = <Row, Parent>(page: Page<Row>, parentOf: (row: Row) => Parent) => ({
  edges: page.items.map(({ cursor, item }) => ({ cursor, node: parentOf(item) })),
  pageInfo: {
    hasNextPage: page.hasNext,
    hasPreviousPage: page.hasPrevious,
    startCursor: page.items[0]?.cursor ?? null,
    endCursor: page.items.at(-1)?.cursor ?? null,
  },
});
