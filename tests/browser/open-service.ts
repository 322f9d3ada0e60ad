import { projectRoot } from "../../src/app/setup/project-root.js";
import { seedDatabase } from "../../src/app/setup/seed-database.js";
import { openTestApp } from "../graphql/open-test-app.js";
import type { TestDatabase } from "../kit/databases.js";

export interface OpenedService {
  /** `http://127.0.0.1:12345` */
  readonly address: string;
  close(): Promise<void>;
}

/** The real application with the demo and its pictures in it, listening on a free port. */
export async function openService({ data }: TestDatabase): Promise<OpenedService> {
  const test = await openTestApp(data);
  await seedDatabase(test.deps, projectRoot());
  const address = await test.app.listen({ port: 0, host: "127.0.0.1" });
  return { address, close: () => test.close() };
}
