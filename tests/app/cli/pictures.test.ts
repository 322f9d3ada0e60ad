import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { prepareWriting, planText, publisher } from "../../kit/plan-writer.js";
import { describeOnEmbedded, type TestDatabase } from "../../kit/databases.js";
import { sampleImages } from "../../kit/sample-images.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { runCli, runCliJson } from "./run-cli.js";

describeOnEmbedded("pictures from the command line", (open) => {
  let app: TestApp;
  let database: TestDatabase;
  let folder: string;
  let writer: Record<string, string>;

  beforeAll(async () => {
    execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
    folder = await mkdtemp(join(tmpdir(), "prepwright-pictures-"));
    await mkdir(join(folder, "photos"));
    database = await open();
    const token = await prepareWriting(database);
    app = await openTestApp(database.data);
    await app.app.listen({ port: 0, host: "127.0.0.1" });
    const { port } = app.app.server.address() as AddressInfo;
    writer = { PREPWRIGHT_SERVER: `http://127.0.0.1:${port}`, PREPWRIGHT_TOKEN: token };
  });
  afterAll(async () => {
    await app.close();
    await rm(folder, { recursive: true, force: true });
  });

  const write = async (name: string, content: string | Uint8Array): Promise<string> => {
    const path = join(folder, name);
    await writeFile(path, content);
    return path;
  };
  const plan = (file: string): Promise<string> =>
    write("plan.yaml", `${planText("salad-week", "A salad")}image: { file: ${file}, alt: A salad of carrots }\n`);
  const hashOf = async (): Promise<string | undefined> =>
    (
      (await app.ask(`{ plan(publisher: "${publisher}", slug: "salad-week") { image { hash } } }`)).data?.["plan"] as {
        image: { hash: string } | null;
      } | null
    )?.image?.hash;

  it("are handed in when they are new, and nothing twice", async () => {
    const { PNG, WebP } = await sampleImages(120, 90);
    await write("photos/salad.png", PNG!);
    const path = await plan("photos/salad.png");
    const first = await runCliJson(["publish", path], writer);
    expect([first.exit, first.answer.problems, first.answer.result]).toMatchObject([0, [], { images: 1, saved: 1 }]);
    const hash = await hashOf();
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
    const again = await runCliJson(["publish", path], writer);
    expect([again.exit, again.answer.result]).toMatchObject([
      0,
      { saved: 0, plans: [{ revision: 1, created: false }] },
    ]);
    expect(again.answer.result).not.toHaveProperty("images");
    await write("photos/salad.png", WebP!);
    const other = await runCliJson(["publish", path], writer);
    expect(other.answer.result).toMatchObject({ images: 1, saved: 0, plans: [{ revision: 2, created: true }] });
    expect(await hashOf()).not.toBe(hash);
  });

  it("that were handed in before need not lie beside the document", async () => {
    await rm(join(folder, "photos/salad.png"));
    const path = await plan("photos/salad.png");
    const { exit, answer } = await runCliJson(["check", path, "--offline"]);
    expect([exit, answer.problems]).toEqual([0, []]);
    const published = await runCliJson(["publish", path], writer);
    expect([published.exit, published.answer.problems]).toEqual([0, []]);
  });

  it("that are nowhere, no pictures, or lie outside the folder are named at their place, and nothing is saved", async () => {
    await write("text.png", "no picture at all");
    await write("drawing.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
    await symlink("/etc/hostname", join(folder, "link.png"));
    for (const [file, code, more] of [
      ["nowhere.png", "UNKNOWN_IMAGE", "nowhere.png"],
      ["text.png", "IMAGE_REFUSED", "not a picture"],
      ["drawing.svg", "IMAGE_REFUSED", "an SVG"],
      ["link.png", "IMAGE_REFUSED", "out of the document's folder"],
      ["../salad.png", "BAD_SHAPE", "beside or below"],
    ] as const) {
      const path = await plan(file);
      const { exit, answer } = await runCliJson(["publish", path], writer);
      expect([file, exit, answer.problems[0]]).toMatchObject([file, 1, { code, file: path, line: 15 }]);
      expect(answer.problems[0]?.message).toContain(more);
    }
  });

  it("are pulled beside their documents under their names, and only what is not there yet", async () => {
    const { JPEG, PNG } = await sampleImages(130, 90);
    await write("photos/salad.png", PNG!);
    await write("gate.jpg", JPEG!);
    await plan("photos/salad.png");
    const says = await write(
      "publisher.yaml",
      `kind: publisher\nslug: ${publisher}\nimage: { file: gate.jpg, alt: A gate }\n`,
    );
    expect((await runCli(["publish", join(folder, "plan.yaml"), says], writer)).exit).toBe(0);
    const hash = await hashOf();
    const to = await mkdtemp(join(tmpdir(), "prepwright-pulled-"));
    try {
      const reader = { ...writer, PREPWRIGHT_TOKEN: await app.tokenFor(publisher, ["READ_DRAFTS"]) };
      const pull = (...more: readonly string[]) =>
        runCliJson(["pull", `${publisher}/salad-week`, "--to", to, ...more], reader);
      const written = (run: Awaited<ReturnType<typeof pull>>) =>
        (run.answer.result?.["images"] as { file: string; hash: string; written: boolean }[])
          .map((image) => `${image.file} ${image.written}`)
          .toSorted();
      const first = await pull();
      expect([first.exit, written(first)]).toEqual([0, ["gate.jpg true", "photos/salad.png true"]]);
      const bytes = await readFile(join(to, "photos/salad.png"));
      expect(createHash("sha256").update(bytes).digest("hex")).toBe(hash);
      expect(written(await pull())).toEqual(["gate.jpg false", "photos/salad.png false"]);
      // The file that was handed in is the same picture as the one that is kept.
      await writeFile(join(to, "gate.jpg"), JPEG!);
      expect(written(await pull())).toEqual(["gate.jpg false", "photos/salad.png false"]);
      // Published from there nothing changes and nothing is handed in.
      const files = (await readdir(to)).filter((name) => name.endsWith(".yaml")).map((name) => join(to, name));
      const again = await runCliJson(["publish", ...files], writer);
      expect([again.exit, again.answer.result]).toMatchObject([0, { plans: [{ created: false }] }]);
      expect(again.answer.result).not.toHaveProperty("images");
      await writeFile(join(to, "gate.jpg"), "mine");
      const refused = await pull();
      expect([refused.exit, refused.answer.problems.map(({ code }) => code)]).toEqual([5, ["FILE_DIFFERS"]]);
      expect(await readFile(join(to, "gate.jpg"), "utf8")).toBe("mine");
      expect(written(await pull("--overwrite"))).toEqual(["gate.jpg true", "photos/salad.png false"]);
    } finally {
      await rm(to, { recursive: true });
    }
  });

  it("are never pulled to where a link leads", async () => {
    const outside = await mkdtemp(join(tmpdir(), "prepwright-outside-"));
    try {
      for (const make of [
        (to: string) => symlink(outside, join(to, "photos")),
        async (to: string) => {
          await mkdir(join(to, "photos"));
          await symlink(join(outside, "salad.png"), join(to, "photos/salad.png"));
        },
      ]) {
        const to = await mkdtemp(join(folder, "linked-"));
        await make(to);
        const { exit, answer } = await runCliJson(
          ["pull", `${publisher}/salad-week`, "--to", to, "--overwrite"],
          writer,
        );
        expect([exit, answer.problems.map(({ code }) => code)]).toEqual([5, ["OUTSIDE_FOLDER"]]);
        expect(await readdir(outside)).toEqual([]);
      }
    } finally {
      await rm(outside, { recursive: true });
    }
  });

  it("as they are kept are for who reads the publisher's drafts alone", async () => {
    const asked = `{ uploadedImages(publisher: "${publisher}", files: ["photos/salad.png"]) { original } }`;
    const { original } = (
      (await app.ask(asked, {}, writer["PREPWRIGHT_TOKEN"])).data as { uploadedImages: { original: string }[] }
    ).uploadedImages[0]!;
    const get = async (token: string | null, path = original) => {
      const headers = token === null ? {} : { authorization: `Bearer ${token}` };
      return app.app.inject({ method: "GET", url: path, headers });
    };
    const reader = await app.tokenFor(publisher, ["READ_DRAFTS"]);
    const found = await get(reader);
    expect([found.statusCode, found.headers["content-type"], found.headers["cache-control"]]).toEqual([
      ...[200, "image/png", "no-store"],
    ]);
    expect((await get(null)).statusCode).toBe(401);
    expect((await get(await app.tokenFor(publisher, ["WRITE", "PUBLISH", "ADMIN"]))).statusCode).toBe(403);
    expect((await get(await app.tokenFor(null, ["READ_DRAFTS"]))).statusCode).toBe(200);
    expect((await get(reader, original.replace("png", "jpg"))).statusCode).toBe(404);
    expect((await get(reader, original.replace(publisher, "nobody"))).statusCode).toBe(403);
  });

  it("are removed for good", async () => {
    const hash = (await hashOf()) ?? "";
    const removed = await runCliJson(["remove-image", publisher, hash], writer);
    expect([removed.exit, removed.answer.result]).toEqual([0, { publisher, hash }]);
    expect(await hashOf()).toBeUndefined();
    expect((await runCliJson(["remove-image", publisher, hash], writer)).answer.problems[0]?.code).toBe(
      "UNKNOWN_IMAGE",
    );
    expect((await runCliJson(["remove-image", publisher, "x"], writer)).exit).toBe(2);
  });
});
