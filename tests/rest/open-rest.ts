import type { Response } from "supertest";
import { openTimeSlicer } from "../../src/services/time-slices.js";
import { loadSeeds } from "../../src/services/drafts/load-seeds.js";
import { demo, openTestApp, type TestApp } from "../graphql/open-test-app.js";
import type { OpenTestDatabase } from "../kit/databases.js";
import { askRest, type Asking, type Method } from "./described-answers.js";

export const publisher = "third-gate-allotments";
export const planOf = (slug: string): string => `/v1/plans/${publisher}/${slug}`;
export const demoSlugs: readonly string[] = demo.bundles.map(({ plan }) => plan.slug);

export interface RestApp extends TestApp {
  /** Asks, and holds the answer to the OpenAPI document. */
  rest(method: Method, url: string, asking?: Asking): Promise<Response>;
  get(url: string, headers?: Readonly<Record<string, string>>): Promise<Response>;
}

/** The application with the demo in it. */
export async function openRest(
  open: OpenTestDatabase,
  options: Parameters<typeof openTestApp>[4] = {},
): Promise<RestApp> {
  const slicer = openTimeSlicer(() => performance.now());
  const app = await openTestApp((await open()).data, undefined, undefined, { slicer }, options);
  const loaded = await loadSeeds(app.deps, demo);
  if (!loaded.ok) throw new Error("the demo was refused");
  return {
    ...app,
    rest: (method, url, asking = {}) => askRest(app.app, method, url, asking),
    get: (url, headers = {}) => askRest(app.app, "GET", url, { headers }),
  };
}
