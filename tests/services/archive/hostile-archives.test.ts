import { execFileSync } from "node:child_process";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, expect, it, onTestFinished, vi } from "vitest";
import { sha256 } from "../../../src/services/archive/archive-entry.js";
import { problemText } from "../../../src/exports/sentences/problem-text.js";
import type { TestApp } from "../../graphql/open-test-app.js";
import { describeOnEmbedded } from "../../kit/databases.js";
import { json, parsed, relisted, unpacked, zipOf, type Files, type Json } from "./archive-files.js";
import { exported, imported, openEmpty, openFull, publisher } from "./archive-of-a-publisher.js";

/** A frozen document that says something else, with its checksum in its revision and in the list. */
function refrozen(files: Files, change: (document: string) => string): Files {
  const document = Buffer.from(change(String(files.get("plans/gone/1.json"))));
  const revision = { ...parsed(files, "plans/gone/1.revision.json"), checksum: sha256(document) };
  return relisted(new Map([...files, ["plans/gone/1.json", document], ["plans/gone/1.revision.json", json(revision)]]));
}

const without = (files: Files, name: string): Files => new Map([...files].filter(([each]) => each !== name));

const replacedInBytes = (zip: Buffer, from: string, to: string): Buffer => {
  expect(to).toHaveLength(from.length);
  return Buffer.from(zip.toString("latin1").replaceAll(from, to), "latin1");
};

/** Changes a field of every entry of the directory. */
function patchedDirectory(zip: Buffer, offset: number, bytes: readonly number[]): Buffer {
  const copy = Buffer.from(zip);
  for (let at = copy.indexOf("PK\x01\x02", 0, "latin1"); at >= 0; at = copy.indexOf("PK\x01\x02", at + 4, "latin1"))
    bytes.forEach((byte, index) => (copy[at + offset + index] = byte));
  return copy;
}

describeOnEmbedded("an archive that no export wrote", (open) => {
  let there: TestApp;
  let zip: Buffer;
  let files: Files;

  beforeAll(async () => {
    const here = await openFull(open);
    zip = await exported(here);
    files = await unpacked(zip);
    await here.close();
    there = await openEmpty(open);
  });
  afterAll(() => there.close());

  /** Refused with a sentence, and nothing of it is there. */
  async function refusal(archive: Uint8Array): Promise<string> {
    const done = await imported(there, archive);
    if (done.ok) throw new Error("it was taken");
    expect(await there.deps.data.archives.isEmpty(publisher)).toBe(true);
    expect((await there.deps.data.publishers.bySlugs([publisher]))[0]?.name).toBe("Not named yet");
    const [problem] = done.problems;
    const message = problemText(problem!);
    expect(message).toMatch(/^archive.*: [A-Z"].*\.$/);
    expect(message).not.toMatch(/\.\s*\.(?: |$)/);
    return problem?.code === "BAD_ARCHIVE" ? problem.fault.kind : `${String(problem?.code)} ${message}`;
  }
  const packed = (changed: Files): Promise<Buffer> => zipOf(changed);

  it("is refused where it is no zip file, or cut off", async () => {
    for (const bytes of [
      Buffer.alloc(0),
      Buffer.from("PK"),
      Buffer.alloc(100_000, "x"),
      zip.subarray(0, zip.length - 30),
    ])
      expect(await refusal(bytes)).toBe("NOT_A_ZIP");
  });

  it("is refused where a name leads elsewhere, or is none that an export writes", async () => {
    const bad = [
      ["discarded.json", "../carded.json"],
      ["discarded.json", "/tmp/arde.json"],
      ["discarded.json", "C:/carded.json"],
      ["discarded.json", "a\\scarded.json"],
      ["discarded.json", "discarded.jso\0"],
      ["discarded.json", "DISCARDED.json"],
      ["drafts/packs/kale.yaml", "drafts/packs/../k.yaml"],
      ["drafts/packs/kale.yaml", "drafts/packs//kal.yaml"],
    ] as const;
    for (const [from, to] of bad)
      expect(["NOT_A_ZIP", "NAME_NOT_KNOWN"]).toContain(await refusal(replacedInBytes(zip, from, to)));
  });

  it("is refused where an entry is a link, is encrypted, or is there twice", async () => {
    const link = [...files].map(
      ([name, bytes]) => [name, bytes, name === "discarded.json" ? { mode: 0o120777 } : {}] as const,
    );
    expect(await refusal(await zipOf(link))).toBe("NOT_A_FILE");
    expect(await refusal(patchedDirectory(zip, 8, [1, 0]))).toBe("ENCRYPTED");
    expect(await refusal(await zipOf([...files, ["discarded.json", Buffer.from("[]")]]))).toBe("TWICE");
  });

  it("is refused where it unpacks to far more than it is, before it is unpacked", async () => {
    const zeros = (size: number): Files => new Map([...files, ["webhooks.json", Buffer.alloc(size)]]);
    expect(await refusal(await packed(relisted(zeros(40_000_000))))).toBe("TOO_MUCH");
    const small: Files = new Map([
      ["manifest.json", files.get("manifest.json")!],
      ["webhooks.json", Buffer.alloc(10_000_000)],
    ]);
    expect(await refusal(await packed(small))).toBe("TOO_MUCH");
    // The directory says that one byte comes out.
    expect(await refusal(patchedDirectory(await packed(relisted(zeros(5_000_000))), 24, [1, 0, 0, 0]))).toBe(
      "NOT_A_ZIP",
    );
  });

  it("is refused where it has 100,000 entries", async () => {
    const script = `import zipfile,sys
with zipfile.ZipFile(sys.stdout.buffer, "w") as z:
    for n in range(100000): z.writestr(f"plans/a/{n + 1}.json", b"")`;
    const many = execFileSync("python3", ["-c", script], { maxBuffer: 64 * 1024 * 1024 });
    expect(await refusal(many)).toBe("TOO_MUCH");
  });

  it("is refused where its list and its files differ", async () => {
    expect(await refusal(await packed(without(files, "manifest.json")))).toBe("NO_MANIFEST");
    expect(await refusal(await packed(without(files, "discarded.json")))).toBe("MISSING");
    expect(await refusal(await packed(new Map([...files, ["plans/new/1.json", json({})]])))).toBe("NOT_LISTED");
    expect(await refusal(await packed(new Map([...files, ["discarded.json", Buffer.from("[] ")]])))).toBe("ALTERED");
    expect(await refusal(await packed(relisted(without(files, "drafts/plan/barley-and-carrots.yaml"))))).toBe(
      "MISSING",
    );
    expect(await refusal(await packed(relisted(without(files, "plans/beans/2.json"))))).toBe("MISSING");
    const gap = without(without(files, "plans/beans/2.json"), "plans/beans/2.revision.json");
    expect(await refusal(await packed(relisted(gap)))).toBe("NUMBER_MISSING");
  });

  it("is refused where its list is of a later version, of another publisher, or no list", async () => {
    const manifest = parsed(files, "manifest.json");
    const withManifest = (value: Buffer): Files => new Map([...files, ["manifest.json", value]]);
    expect(await refusal(await packed(withManifest(json({ ...manifest, version: 3 }))))).toBe("OTHER_VERSION");
    expect(await refusal(await packed(withManifest(json({ ...manifest, publisher: "other" }))))).toBe(
      "OTHER_PUBLISHER",
    );
    for (const text of ["", "null", "[]", "{", '{"files":[]}', "\u0000"])
      expect(await refusal(await packed(withManifest(Buffer.from(text))))).toBe("CONTENT");
  });

  it("is refused where a frozen document was changed, whatever else was changed with it", async () => {
    const other = new Map([
      ...files,
      ["plans/gone/1.json", Buffer.from(String(files.get("plans/gone/1.json")).replace("Gone", "Done"))],
    ]);
    expect(await refusal(await packed(relisted(other)))).toBe("ALTERED");
    // Not the one text for this value.
    expect(await refusal(await packed(refrozen(files, (text) => text.replace("{", "{ "))))).toBe("ALTERED");
    expect(
      await refusal(await packed(refrozen(files, (text) => text.replace('"serves":', '"serves":"many","x":')))),
    ).toBe("ALTERED");
    expect(
      await refusal(await packed(refrozen(files, (text) => text.replace(/"serves":\d+/, '"serves":"many"')))),
    ).toBe("CONTENT");
    expect(await refusal(await packed(refrozen(files, (text) => text.replace('"slug":"gone"', '"slug":"went"'))))).toBe(
      "CONTENT",
    );
    const nameless = refrozen(files, (text) => text.replace(/"foods":\[.*\],"plan"/s, '"foods":[],"plan"'));
    expect(await refusal(await packed(nameless))).toBe("CONTENT");
  });

  it("is refused where a draft, a note or a webhook is none", async () => {
    const changed = async (name: string, change: (value: Json) => unknown): Promise<string> =>
      refusal(await packed(relisted(new Map([...files, [name, json(change(parsed(files, name)))]]))));
    const draft = "drafts/plan/barley-and-carrots.draft.json";
    expect(await changed(draft, (value) => ({ ...value, value: { ...(value["value"] as Json), meals: "none" } }))).toBe(
      "CONTENT",
    );
    expect(await changed(draft, (value) => ({ ...value, value: { ...(value["value"] as Json), slug: "else" } }))).toBe(
      "CONTENT",
    );
    expect(await changed(draft, (value) => ({ ...value, version: 0 }))).toBe("CONTENT");
    expect(await changed(draft, (value) => ({ ...value, more: 1 }))).toBe("CONTENT");
    const revision = "plans/beans/1.revision.json";
    expect(await changed(revision, (value) => ({ ...value, publishedAt: "yesterday" }))).toBe("CONTENT");
    expect(await changed(revision, (value) => ({ ...value, changeNote: "a\0b" }))).toBe("CONTENT");
    const webhooks = (url: string) =>
      changed("webhooks.json", () => [{ url, kinds: [], createdAt: "2026-02-01T10:00:00.000Z" }]);
    for (const url of ["https://127.0.0.1/", "http://hooks.example.org/", "file:///etc/passwd", "https://[::1]/"])
      expect(await webhooks(url)).toMatch(/^BAD_SHAPE/);
    const feed = (change: Json) =>
      changed("feeds.json", () => {
        const [first] = JSON.parse(String(files.get("feeds.json"))) as [Json & { settings: Json }];
        return [{ ...first, settings: { ...first.settings, ...change } }];
      });
    for (const change of [{ region: "UK" }, { currency: "ZZZ" }]) expect(await feed(change)).toBe("CONTENT");
    expect(await changed("publisher.json", (value) => ({ ...value, name: "" }))).toMatch(/^BAD_SHAPE|^TOO/);
    expect(await changed("publisher.json", (value) => ({ ...value, says: { kind: "publisher", slug: "other" } }))).toBe(
      "OTHER_PUBLISHER",
    );
  });

  it("is refused where a picture is none, is another, or is not there in a width that readers may ask for", async () => {
    const [original = ""] = [...files.keys()].filter((name) => /original\.jpeg$/.test(name));
    const small = original.replace("original.jpeg", "320.webp");
    const changed = (name: string, bytes: Buffer): Promise<string> =>
      packed(relisted(new Map([...files, [name, bytes]]))).then(refusal);
    const page = Buffer.from("<!doctype html><script>alert(1)</script>");
    expect(await changed(small, page)).toBe("CONTENT");
    expect(await changed(small, Buffer.concat([files.get(small)!.subarray(0, 40), page]))).toBe("CONTENT");
    expect(await changed(small, files.get(small.replace("320", "400"))!)).toBe("CONTENT");
    expect(await changed(original, files.get(small)!)).toBe("ALTERED");
    expect(await refusal(await packed(relisted(without(files, small))))).toBe("MISSING");
    const record = original.replace("/original.jpeg", ".json");
    const named = {
      ...parsed(files, record),
      names: [{ name: "../../etc/passwd", updatedAt: "2026-02-01T10:00:00.000Z" }],
    };
    expect(await changed(record, json(named))).toBe("CONTENT");
  });

  it("with any of its bytes changed is refused, or is what it was", async () => {
    // A folder of this test's own: other tests spool archives at the same time.
    const folder = await mkdtemp(join(tmpdir(), "prepwright-hostile-"));
    onTestFinished(async () => {
      vi.unstubAllEnvs();
      await rm(folder, { recursive: true });
    });
    vi.stubEnv("TMPDIR", folder);
    await fc.assert(
      fc.asyncProperty(fc.nat(zip.length - 1), fc.integer({ min: 1, max: 255 }), async (at, by) => {
        const flipped = Buffer.from(zip);
        flipped[at] = flipped[at]! ^ by;
        const tried = await imported(there, flipped, true);
        expect(tried.ok ? tried.value.revisions : tried.problems[0]?.code).toSatisfy(
          (answer) => answer === 9 || answer === "BAD_ARCHIVE",
        );
      }),
      { numRuns: 15 },
    );
    expect(await there.deps.data.archives.isEmpty(publisher)).toBe(true);
    expect(await readdir(folder)).toEqual([]);
  }, 180_000);
});
