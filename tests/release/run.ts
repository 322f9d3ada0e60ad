import { spawn, spawnSync, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";

/** Runs a program to its end; its standard output. Throws with all that it said if it fails. */
export function run(
  command: string,
  words: readonly string[],
  options: { readonly cwd: string; readonly env?: Record<string, string> },
): string {
  const env = { ...process.env, ...options.env };
  const { status, stdout, stderr } = spawnSync(command, words, {
    cwd: options.cwd,
    env,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  if (status !== 0) throw new Error(`${command} ${words.join(" ")} ended with ${status}:\n${stdout}\n${stderr}`);
  return stdout;
}

export interface Started {
  readonly child: ChildProcess;
  readonly address: string;
  /** Milliseconds from start to the address. */
  readonly startedIn: number;
  /** By SIGTERM; the exit code. */
  stop(): Promise<number | null>;
}

/** Starts a service and waits for the line with its address. */
export async function start(
  command: string,
  words: readonly string[],
  options: { readonly cwd: string; readonly env: Record<string, string> },
): Promise<Started> {
  const begin = performance.now();
  const child = spawn(command, words, {
    cwd: options.cwd,
    // However busy the machine is that tests this, nothing is turned away.
    env: { PATH: process.env["PATH"], PREPWRIGHT_SHED_DELAY_MS: "0", ...options.env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const errors: string[] = [];
  createInterface({ input: child.stderr }).on("line", (line) => errors.push(line));
  const output = createInterface({ input: child.stdout });
  const exit = once(child, "exit");
  const [line] = (await Promise.race([
    once(output, "line"),
    exit.then(() => Promise.reject(new Error(`it ended: ${errors.join("\n")}`))),
  ])) as [string];
  const address = /^Prepwright is at (http:\/\/\S+)$/.exec(line)?.[1];
  if (address === undefined) throw new Error(`not the first line it should be: ${line}`);
  return {
    child,
    address,
    startedIn: performance.now() - begin,
    stop: async () => {
      child.kill("SIGTERM");
      await exit;
      return child.exitCode;
    },
  };
}

/** What a reader would look at first: the plan for seven over GraphQL and REST, a page, the explorer and the element for blogs. */
export async function askAround(address: string): Promise<Record<string, unknown>> {
  const query = `{ plan(publisher: "third-gate-allotments", slug: "bean-night") { scaled(servings: 7) { shoppingList { lines { need { text } } } } } }`;
  const asked = await fetch(`${address}/graphql`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ query }),
  });
  const { data } = (await asked.json()) as { data: { plan: { scaled: { shoppingList: { lines: unknown[] } } } } };
  const statuses: Record<string, unknown> = { lines: data.plan.scaled.shoppingList.lines.length };
  for (const [path, accept] of [
    ["/v1/plans/third-gate-allotments/bean-night?servings=7", "application/json"],
    ["/p/third-gate-allotments/bean-night", "text/html"],
    ["/graphql", "text/html"],
    ["/embed.js", "*/*"],
    ["/schemas/plan.json", "*/*"],
    ["/readyz", "*/*"],
  ] as const) {
    const answer = await fetch(`${address}${path}`, { headers: { accept } });
    const text = await answer.text();
    statuses[path] = [answer.status, text.length > 10];
  }
  return statuses;
}

/** What `askAround` finds where everything is there. */
export const everything = {
  lines: 22,
  "/v1/plans/third-gate-allotments/bean-night?servings=7": [200, true],
  "/p/third-gate-allotments/bean-night": [200, true],
  "/graphql": [200, true],
  "/embed.js": [200, true],
  "/schemas/plan.json": [200, true],
  "/readyz": [200, true],
};
