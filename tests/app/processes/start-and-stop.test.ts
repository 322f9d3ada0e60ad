import { once } from "node:events";
import { execFile, execFileSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startService, type ServiceProcess } from "./service-process.js";

const run = promisify(execFile);

const big = `query ($first: Int!) { plans(first: $first) { edges { node { slug scaled(servings: 7) {
  shoppingList { lines { food { name } uses { asWritten plan { title } } } }
  storage { subject { __typename } basis { source { title } } }
} } } } }`;

async function ask(address: string, query: string, variables: object = {}): Promise<Response> {
  return fetch(`${address}/graphql`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ query, variables }),
  });
}

interface Plans {
  readonly data: {
    readonly plans: {
      readonly edges: readonly { readonly node: { readonly slug: string; readonly revision: number } }[];
    };
  };
}

const plansOf = async (address: string): Promise<Plans["data"]["plans"]["edges"]> => {
  const answer = (await (await ask(address, "{ plans { edges { node { slug revision } } } }")).json()) as Plans;
  return answer.data.plans.edges;
};

describe("the service as a process", () => {
  let folder: string;
  let service: ServiceProcess | undefined;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    folder = await mkdtemp(join(tmpdir(), "service-"));
  });
  afterAll(async () => {
    service?.child.kill("SIGKILL");
    await rm(folder, { recursive: true, force: true });
  });

  it("starts on an empty folder, says where it is, and gives a command whose answer is a plan for seven", async () => {
    service = await startService({ DATA_DIR: folder });
    const command = service.lines[1] ?? "";
    expect(command).toMatch(/^curl /);
    const { stdout } = await run("sh", ["-c", command]);
    const answer = JSON.parse(stdout);
    expect(answer.errors).toBeUndefined();
    const { scaled, problems } = answer.data.plan.scaling;
    expect(problems).toEqual([]);
    expect(scaled.shoppingList.lines.length).toBeGreaterThan(10);
    expect(scaled.components.length).toBeGreaterThan(2);
  });

  it("keeps a second process out of its folder, with a message that says what to do", async () => {
    await expect(startService({ DATA_DIR: folder })).rejects.toThrow(/in use/);
  });

  it("leaves room for the demo as text, which then works in a folder of its own", async () => {
    const { stdout, stderr } = await run(process.execPath, ["dist/demo.js", "--servings", "7"], {
      env: { PATH: process.env["PATH"], DATA_DIR: folder },
    });
    expect(stdout).toMatch(/, for 7\n/);
    expect(stderr).toContain("is in use");
  });

  it("finishes what is being asked when it is told to stop, exits with 0, and takes no more", async () => {
    if (service === undefined) throw new Error("not started");
    // Read as they come: the service waits for whoever has not taken the whole answer yet.
    const answers = Array.from({ length: 20 }, async () => {
      const answer = await ask(service?.address ?? "", big, { first: 100 });
      return { status: answer.status, text: await answer.text() };
    });
    await new Promise((resolve) => setTimeout(resolve, 150));
    const stopped = service.stop("SIGTERM");
    const done = await Promise.allSettled(answers);
    expect(await stopped).toBe(0);
    for (const answer of done) {
      // A connection that was not accepted yet may be refused; one that was accepted gets its whole answer.
      if (answer.status === "rejected") continue;
      expect(answer.value.status).toBe(200);
      expect(answer.value.text).toContain("shoppingList");
    }
    expect(done.some(({ status }) => status === "fulfilled")).toBe(true);
    await expect(ask(service.address, "{ __typename }")).rejects.toThrow();
  });

  it("finds its data again at the second start", async () => {
    service = await startService({ DATA_DIR: folder });
    expect((await plansOf(service.address)).map(({ node }) => node.revision)).toEqual([1, 1, 1, 1]);
    expect(service.errors.join()).not.toContain("demo data loaded");
  });

  it("starts again after it was killed at once", async () => {
    const child = service?.child;
    if (child === undefined) throw new Error("no service");
    const gone = once(child, "exit");
    child.kill("SIGKILL");
    await gone;
    service = await startService({ DATA_DIR: folder });
    expect(await plansOf(service.address)).toHaveLength(4);
  });

  it("serves the page to a browser and JSON to everybody else", async () => {
    const browser = await fetch(`${service?.address}/graphql`, { headers: { accept: "text/html,*/*" } });
    expect(browser.headers.get("content-type")).toContain("text/html");
    const client = await fetch(`${service?.address}/graphql`);
    expect(client.headers.get("content-type")).toContain("json");
  });

  it("stops on Ctrl-C", async () => {
    expect(await service?.stop("SIGINT")).toBe(0);
  });

  it("lists all faults of the environment and exits with 2", async () => {
    const start = startService({ PORT: "x", LOG_LEVEL: "loud", NODE_ENV: "production" });
    await expect(start).rejects.toThrow(/PORT[\s\S]*LOG_LEVEL[\s\S]*DATABASE_URL/);
  });

  it("prints the main job as text", async () => {
    const { stdout } = await run(process.execPath, ["dist/demo.js", "--servings", "7"], {
      env: { PATH: process.env["PATH"], DATA_DIR: folder },
    });
    expect(stdout).toMatch(/, for 7\n/);
    for (const part of ["Make ahead", "Eat", "Buy", "Keep"]) expect(stdout).toContain(`\n${part}\n`);
    expect(stdout).not.toMatch(/undefined|NaN|\[object/);
  });

  it.each([
    [["--servings", "0"], /0 servings cannot be computed/],
    [["--plan", "nobody/nothing"], /there is no such plan/],
    [["--measures", "CUPS"], /--measures must be one of/],
  ])("says what is wrong with %j and exits with 2", async (args, message) => {
    const failed = await run(process.execPath, ["dist/demo.js", ...args], {
      env: { PATH: process.env["PATH"], DATA_DIR: folder },
    }).catch((error: { code: number; stderr: string }) => error);
    expect(failed).toMatchObject({ code: 2, stderr: expect.stringMatching(message) });
  });
});
