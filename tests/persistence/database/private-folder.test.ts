import { chmodSync, lstatSync, mkdirSync, readdirSync, symlinkSync, writeFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { FolderNotPrivate } from "../../../src/persistence/errors.js";
import { openEmbedded } from "../../../src/persistence/database/open-embedded.js";
import { makePrivateFolder, tightenFolder } from "../../../src/persistence/database/private-folder.js";

let folder: string;
let umask: number;
beforeEach(async () => {
  umask = process.umask();
  folder = await mkdtemp(join(tmpdir(), "prepwright-private-"));
});
afterEach(async () => {
  process.umask(umask);
  await rm(folder, { recursive: true, force: true });
});

const modeOf = (path: string): string => (lstatSync(path).mode & 0o7777).toString(8);

/** Path and mode of all that is not as private as it should be. */
function loose(root: string): readonly string[] {
  const below = readdirSync(root, { recursive: true, encoding: "utf8" }).map((name) => join(root, name));
  return [root, ...below].flatMap((path) => {
    const mode = modeOf(path);
    return mode === (lstatSync(path).isDirectory() ? "700" : "600") ? [] : [`${path} ${mode}`];
  });
}

describe("the folder of the embedded database", () => {
  it.each([0, 0o777])(
    "is its owner's alone under umask %o, while it is open and afterwards, also if it was loose",
    async (mask) => {
      process.umask(mask);
      const dataDir = join(folder, "data");
      const work = async (slug: string): Promise<void> => {
        const opened = await openEmbedded(dataDir);
        try {
          // Enough to make Postgres write files of its own.
          await opened.sql.query(
            "CREATE TABLE IF NOT EXISTS filled (text TEXT); INSERT INTO filled SELECT repeat(md5(n::text), 40) FROM generate_series(1, 3000) n; CHECKPOINT",
          );
          await opened.data.publishers.save({ slug, name: slug });
          expect(loose(dataDir)).toEqual([]);
        } finally {
          await opened.close();
        }
        expect(loose(dataDir)).toEqual([]);
      };
      await work("first");
      // As a copy or an earlier version left it.
      for (const name of readdirSync(dataDir, { recursive: true, encoding: "utf8" })) {
        const path = join(dataDir, name);
        chmodSync(path, lstatSync(path).isDirectory() ? 0o777 : 0o666);
      }
      chmodSync(dataDir, 0o777);
      await work("second");
    },
  );

  it("is made under a umask that takes everything, also from its owner", () => {
    process.umask(0o777);
    const path = join(folder, "made", "below");
    makePrivateFolder(path);
    expect([modeOf(join(folder, "made")), modeOf(path)]).toEqual(["700", "700"]);
  });

  it("may be a link, of which what it leads to is tightened", () => {
    const real = join(folder, "other-disk");
    mkdirSync(real);
    chmodSync(real, 0o755);
    symlinkSync(real, join(folder, "data"));
    makePrivateFolder(join(folder, "data"));
    expect(modeOf(real)).toBe("700");
  });

  it("never tightens what a link below it leads to, and is refused with its path", () => {
    const secret = join(folder, "elsewhere");
    writeFileSync(secret, "");
    chmodSync(secret, 0o644);
    const data = join(folder, "data");
    mkdirSync(join(data, "base"), { recursive: true });
    symlinkSync(secret, join(data, "base", "1"));
    expect(() => tightenFolder(data)).toThrow(FolderNotPrivate);
    expect(() => tightenFolder(data)).toThrow(`${join(data, "base", "1")} is a link`);
    expect(modeOf(secret)).toBe("644");
  });

  it("is refused where it is another user's and open, with what to do", () => {
    // Root may tighten everything, so it tries as nobody; everybody else tries the folder for all.
    const isRoot = process.getuid?.() === 0;
    const path = isRoot ? join(folder, "roots") : tmpdir();
    if (isRoot) {
      chmodSync(folder, 0o755);
      mkdirSync(path);
      chmodSync(path, 0o777);
      process.seteuid?.(65_534);
    }
    try {
      expect(() => makePrivateFolder(path)).toThrow(
        /others may read .* belongs to user 0 and cannot be tightened \(EPERM\)\. Make it this user's own with mode 0700, or name a folder below/,
      );
    } finally {
      if (isRoot) process.seteuid?.(0);
    }
  });
});
