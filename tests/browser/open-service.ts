import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp } from "../graphql/open-test-app.js";
import type { TestDatabase } from "../kit/databases.js";

export interface OpenedService {
  /** `http://127.0.0.1:12345` */
  readonly address: string;
  close(): Promise<void>;
}

/** The real application with the demo in it, listening on a free port. */
export async function openService({ data }: TestDatabase): Promise<OpenedService> {
  const test = await openTestApp(data);
  await loadSeeds(test.deps, demo);
  const address = await test.app.listen({ port: 0, host: "127.0.0.1" });
  return { address, close: () => test.close() };
}
