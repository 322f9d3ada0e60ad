import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { chmod, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { text as textOf } from "node:stream/consumers";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readDrafts } from "../../../src/app/cli/read-drafts.js";
import type { Service } from "../../../src/app/cli/service.js";
import { newTokenParts, tokenText } from "../../../src/services/access/token-text.js";
import { planText } from "../../kit/plan-writer.js";
import { sampleImages } from "../../kit/sample-images.js";
import { runCliJson } from "./run-cli.js";

interface Draft {
  readonly kind: unknown;
  readonly slug: unknown;
  readonly version: unknown;
  readonly document: { readonly text: unknown; readonly format: unknown };
}

/** What a service answers that is not ours, or not ours any more. */
interface Answers {
  readonly plan: Draft;
  readonly component?: Draft;
  readonly picture?: { readonly file: string; readonly bytes: Buffer };
}

describe("pull, whatever a service answers and whatever lies in the folder", () => {
  const servers: Server[] = [];
  let outside: string;
  let root: string;
  let picture: Buffer;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    root = await mkdtemp(join(tmpdir(), "prepwright-stranger-"));
    outside = join(root, "outside");
    await mkdir(outside);
    picture = (await sampleImages())["PNG"]!;
  });
  afterAll(async () => {
    for (const server of servers) server.close();
    await rm(root, { recursive: true, force: true });
  });

  const publisher = { region: null, currency: null, languages: [], description: null };
  const draft = (change: object = {}): Draft => ({
    ...{ kind: "PLAN", slug: "salad-week", version: 1 },
    document: { text: planText("salad-week", "A salad"), format: "YAML" },
    ...change,
  });
  const withPicture = (file: string): Draft =>
    draft({
      document: {
        text: `${planText("salad-week", "A salad")}image: { file: ${file}, alt: A salad }\n`,
        format: "YAML",
      },
    });

  async function service({ plan, component, picture: sent }: Answers): Promise<Record<string, string>> {
    const hash = sent === undefined ? "" : createHash("sha256").update(sent.bytes).digest("hex");
    const original = `/images/a/${hash}/original.png`;
    const answers: readonly (readonly [string, object])[] = [
      ["PlanDraftText", { draft: { ...plan, publisher } }],
      ["ComponentDraftText", { draft: component ?? null }],
      ["DraftVersions", { drafts: { edges: [], pageInfo: { hasNextPage: false, endCursor: null } } }],
      [
        "UploadedImages",
        { uploadedImages: sent === undefined ? [] : [{ file: sent.file, hash, fileHash: hash, original }] },
      ],
    ];
    const server = createServer((request, response) => {
      if (request.method === "GET") return void response.end(request.url === original ? sent?.bytes : "none");
      return void textOf(request).then((body) => {
        const { query } = JSON.parse(body) as { query: string };
        const found = answers.find(([name]) => query.includes(`query ${name}(`));
        response.end(JSON.stringify({ data: found?.[1] ?? {} }));
      });
    });
    servers.push(server);
    await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
    const { port } = server.address() as AddressInfo;
    return { PREPWRIGHT_SERVER: `http://127.0.0.1:${port}`, PREPWRIGHT_TOKEN: tokenText(newTokenParts()) };
  }

  /** Into a folder of its own, prepared first; what came of it, and all that lies in the folder and outside. */
  async function pulled(answers: Answers, prepare: (to: string) => Promise<unknown> = mkdir, ...more: string[]) {
    const to = join(await mkdtemp(join(root, "pull-")), "to");
    await prepare(to);
    const { exit, answer, err } = await runCliJson(
      ["pull", "a/salad-week", "--to", to, ...more],
      await service(answers),
    );
    const files = await readdir(to, { recursive: true }).catch(() => []);
    expect(await readdir(outside)).toEqual([]);
    const code = answer.problems[0]?.code ?? null;
    return { to, exit, code, message: answer.problems[0]?.message ?? err, files: files.toSorted() };
  }

  it("writes the draft and its picture where all is well", async () => {
    const file = "photos/salad.png";
    const done = await pulled({ plan: withPicture(file), picture: { file, bytes: picture } });
    expect(done).toMatchObject({ exit: 0, files: ["photos", file, "salad-week.plan.yaml"] });
    expect((await readFile(join(done.to, file))).equals(picture)).toBe(true);
  });

  it("writes nothing of a draft whose slug, kind or format would lead elsewhere, or are none", async () => {
    const changes = (value: unknown): readonly object[] => [
      { slug: value },
      { kind: value },
      { document: { text: "x", format: value } },
    ];
    for (const change of changes("../../evil"))
      expect([change, await pulled({ plan: draft(change) })]).toMatchObject([
        change,
        { exit: 3, code: "NOT_A_SERVICE", files: [] },
      ]);
    const bad = ["/etc/evil", "a/../../b", "..", "", "a\0b", "x\ny", "C:\\x", "plan.", "ﬀ", 7, null, ["PLAN"]];
    const others = [{ version: "1" }, { document: null }, { document: { text: { a: 1 }, format: "YAML" } }];
    for (const change of [...bad.flatMap(changes), ...others]) {
      const ask = () => Promise.resolve({ draft: { ...draft(change), publisher } });
      const read = readDrafts({ ask } as unknown as Service, { publisher: "a", slug: "salad-week" });
      await expect(read, JSON.stringify(change)).rejects.toMatchObject({ problems: [{ code: "NOT_A_SERVICE" }] });
    }
  });

  it("takes a kind and a format that a later service has", async () => {
    const done = await pulled({ plan: draft({ kind: "WEEK", document: { text: "a = 1", format: "TOML" } }) });
    expect(done).toMatchObject({ exit: 0, files: ["salad-week.week.toml"] });
  });

  it("writes no second draft over the first", async () => {
    const text = planText("salad-week", "A salad").replace("food: carrot", "component: boiled-barley");
    const plan = draft({ document: { text, format: "YAML" } });
    expect(await pulled({ plan, component: draft() })).toMatchObject({ exit: 3, code: "NOT_A_SERVICE", files: [] });
  });

  it("fetches nothing that is no picture, and lets none take the place of a document or a folder", async () => {
    for (const bytes of [
      Buffer.from("#!/bin/sh\n"),
      Buffer.from("<svg xmlns='http://www.w3.org/2000/svg'/>"),
      Buffer.alloc(0),
    ]) {
      const done = await pulled({ plan: withPicture("tool.png"), picture: { file: "tool.png", bytes } });
      expect(done).toMatchObject({ exit: 3, code: "NOT_A_SERVICE" });
      expect(done.files).not.toContain("tool.png");
    }
    for (const file of ["salad-week.plan.yaml", "Salad-Week.PLAN.yaml", "salad-week.plan.yaml/a.png"]) {
      const done = await pulled({ plan: withPicture(file), picture: { file, bytes: picture } });
      expect([file, done]).toMatchObject([file, { exit: 5, code: "NAME_TAKEN", files: [] }]);
    }
  });

  it("follows no link, and says where a file or folder is in the way", async () => {
    const file = "photos/salad.png";
    const answers = { plan: withPicture(file), picture: { file, bytes: picture } };
    const prepared: readonly ((to: string) => Promise<unknown>)[] = [
      (to) => symlink(join(outside, "plan.yaml"), join(to, "salad-week.plan.yaml")),
      (to) => mkdir(join(to, "salad-week.plan.yaml")),
      (to) => symlink(outside, join(to, "photos")),
      (to) => writeFile(join(to, "photos"), "a file"),
    ];
    for (const [at, prepare] of prepared.entries()) {
      const done = await pulled(answers, async (to) => (await mkdir(to), prepare(to)), "--overwrite");
      expect([at, done]).toMatchObject([at, { exit: 5, code: "OUTSIDE_FOLDER" }]);
      expect(done.files).toHaveLength(1);
    }
  });

  it("says so where there can be no folder, or nothing may be written", async () => {
    const file = await pulled({ plan: draft() }, (to) => writeFile(to, "a file"));
    expect(file).toMatchObject({ exit: 5, code: "OUTSIDE_FOLDER" });
    const below = join(root, "file");
    await writeFile(below, "a file");
    for (const words of [["pull", "a/salad-week", "--to"], ["init"]])
      expect((await runCliJson([...words, join(below, "deep")], await service({ plan: draft() }))).exit).toBeOneOf([
        2, 5,
      ]);
    // Whoever is root writes everywhere.
    if (process.getuid?.() === 0) return;
    const closed = await pulled({ plan: draft() }, async (to) => (await mkdir(to), chmod(to, 0o500)));
    expect(closed).toMatchObject({ exit: 2, code: "CANNOT_WRITE" });
  });
});
