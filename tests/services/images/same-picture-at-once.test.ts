import { createHash } from "node:crypto";
import { afterAll, beforeAll, expect, it } from "vitest";
import { receiveImage } from "../../../src/services/images/receive-image.js";
import { readImage, type ReadImage } from "../../../src/imports/images/read-image.js";
import { openServer } from "../../../src/persistence/database/open-server.js";
import type { Data } from "../../../src/services/deps.js";
import { openTestApp, type TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, describeOnServer, type TestDatabase } from "../../kit/databases.js";
import { prepareWriting, publisher } from "../../kit/plan-writer.js";
import { sampleImages } from "../../kit/sample-images.js";
import { imported, exported, openEmpty, openFull, program } from "../archive/archive-of-a-publisher.js";

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
  await Promise.resolve();
}

const countsIn = async (data: Data, hash: string, names: readonly string[]) => ({
  count: await data.images.count(publisher),
  named: (await data.images.byNames(publisher, names)).map((image) => image?.hash === hash),
});

describeOnBothDatabases("the same picture handed in several times at once", (open) => {
  let test: TestApp;

  beforeAll(async () => {
    const database = await open();
    await prepareWriting(database);
    test = await openTestApp(database.data);
  });
  afterAll(() => test.close());

  it("comes in once, under every name, and fails nobody", async () => {
    const { JPEG } = await sampleImages(120, 90);
    const names = ["a.jpg", "b.jpg", "a.jpg", "c.jpg", "b.jpg", "a.jpg"];
    const done = await Promise.all(
      names.map((file) => receiveImage(test.deps, program, { publisher, file, bytes: once(JPEG!) })),
    );
    const hashes = new Set(done.map((each) => (each.ok ? each.value.image.hash : JSON.stringify(each.problems))));
    expect(hashes.size).toBe(1);
    expect(await countsIn(test.deps.data, [...hashes][0]!, ["a.jpg", "b.jpg", "c.jpg"])).toEqual({
      count: 1,
      named: [true, true, true],
    });
    expect(done.filter((each) => each.ok && each.value.created)).toHaveLength(1);
  });
});

/** Something to wait for. */
function gate(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve = (): void => undefined;
  const promise = new Promise<void>((done) => (resolve = done));
  return { promise, resolve };
}

async function kept(bytes: Uint8Array): Promise<{ readonly read: ReadImage; readonly fileHash: string }> {
  const read = await readImage(bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { read: read.value, fileHash: createHash("sha256").update(bytes).digest("hex") };
}

describeOnServer("the same picture decoded by two processes", (open) => {
  it("is added and named by both, whichever comes first", async () => {
    const database = await open();
    await prepareWriting(database);
    const other = await openServer(database.url!);
    try {
      const { PNG } = await sampleImages(110, 90);
      const { read, fileHash } = await kept(PNG!);
      const { hash, width, height, placeholder, format } = read;
      const image = {
        ...{ hash, width, height, placeholder, format, fileHash, createdAt: new Date(0), createdBy: "test" },
        files: [{ width: 0, format, bytes: read.kept }, ...read.made],
      };
      const { promise: isWritten, resolve: written } = gate();
      const { promise: mayEnd, resolve: end } = gate();
      const add = async (data: Data, names: readonly string[]) => {
        await data.images.add(publisher, image);
        for (const name of names) await data.images.name(publisher, name, image, new Date(0));
      };
      const first = database.data.transaction(async (data) => {
        await add(data, ["a.png", "b.png"]);
        written();
        await mayEnd;
      });
      await isWritten;
      const second = other.data.transaction((data) => add(data, ["b.png", "c.png"]));
      const waiting = async () =>
        (
          await database.sql.query(
            `SELECT count(*)::int AS waiting FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND datname = current_database()`,
          )
        ).rows[0]?.["waiting"];
      await expect.poll(waiting, { timeout: 20_000 }).toBe(1);
      end();
      await Promise.all([first, second]);
      expect(await countsIn(other.data, hash, ["a.png", "b.png", "c.png"])).toEqual({
        count: 1,
        named: [true, true, true],
      });
    } finally {
      await other.close();
    }
  });
});

describeOnServer("a picture handed in during an import of the same", (open) => {
  it("waits for the import, and is the picture that came with it", async () => {
    let database: TestDatabase | undefined;
    const [here, there] = [await openFull(open), await openEmpty(async () => (database = await open()))];
    try {
      const { JPEG } = await sampleImages(400, 300);
      const handIn = (test: TestApp, file: string) =>
        receiveImage(test.deps, program, { publisher, file, bytes: once(JPEG!) });
      expect(await handIn(here, "shed.jpg")).toMatchObject({ ok: true });
      const zip = await exported(here);
      const importing = imported(there, zip);
      const locked = async () =>
        (
          await database!.sql.query(
            `SELECT count(*)::int AS locked FROM pg_locks WHERE relation = 'publishers'::regclass AND mode = 'RowShareLock'`,
          )
        ).rows[0]?.["locked"];
      await expect.poll(locked, { timeout: 20_000, interval: 5 }).toBeGreaterThan(0);
      const uploads = ["shed.jpg", "late.jpg"].map((file) => handIn(there, file));
      const [archive, ...pictures] = await Promise.all([importing, ...uploads]);
      expect(archive).toMatchObject({ ok: true });
      expect(pictures).toMatchObject([
        { ok: true, value: { created: false } },
        { ok: true, value: { created: false } },
      ]);
      const count = await here.deps.data.images.count(publisher);
      expect(await there.deps.data.images.count(publisher)).toBe(count);
    } finally {
      await Promise.all([here.close(), there.close()]);
    }
  });
});
