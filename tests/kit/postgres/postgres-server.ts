import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  export interface ProvidedContext {
    /** Address of a process-wide helper that makes the templates of this run when they are first asked for. */
    databaseTemplates: string;
  }
}

/**
 * Once for a whole run. Nothing is started before a suite asks for it, so that a run of the pure suites does not wait: `/server`
 * starts a real server with a migrated database to clone, `/embedded` dumps a migrated embedded one.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const started = new Map<string, Promise<{ readonly answer: object; stop(): Promise<void> }>>();
  const start = (what: string) => {
    const known = started.get(what) ?? import("./templates.js").then((templates) => templates.makeTemplate(what));
    started.set(what, known);
    return known;
  };
  const helper = createServer((request, response) => {
    // A connection that idles here may be closed just as a suite, busy for seconds, uses it again.
    response.setHeader("connection", "close");
    start(request.url ?? "").then(
      ({ answer }) => response.end(JSON.stringify(answer)),
      (error: unknown) => response.writeHead(500).end(error instanceof Error ? error.stack : String(error)),
    );
  });
  await new Promise<void>((listening) => helper.listen(0, "127.0.0.1", listening));
  project.provide("databaseTemplates", `http://127.0.0.1:${(helper.address() as AddressInfo).port}`);
  return async () => {
    helper.closeAllConnections();
    await new Promise((closed) => helper.close(closed));
    const all = await Promise.allSettled(started.values());
    await Promise.all(all.map((each) => (each.status === "fulfilled" ? each.value.stop() : undefined)));
  };
}
