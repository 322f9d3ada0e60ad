import sharp from "sharp";
import { afterAll, beforeAll, expect, it } from "vitest";
import { imageFormats, imageWidths } from "../../../src/domain/model/image.js";
import { sha256 } from "../../../src/services/archive/archive-entry.js";
import type { TestApp } from "../../graphql/open-test-app.js";
import { describeOnBothDatabases, type TestDatabase } from "../../kit/databases.js";
import { exported, imported, openEmpty, publisher } from "./archive-of-a-publisher.js";

const count = 30;

describeOnBothDatabases("an archive of many small pictures", (open) => {
  let here: TestApp;
  let there: TestApp;
  let database: TestDatabase;

  beforeAll(async () => {
    here = await openEmpty(open);
    there = await openEmpty(async () => (database = await open()));
    const made = { width: 64, height: 64 };
    for (let at = 0; at < count; at += 1) {
      const colour = { r: at, g: 255 - at, b: 40 };
      const plain = sharp({ create: { ...made, channels: 3, background: colour } });
      const kept = await plain.clone().png().toBuffer();
      const files = await Promise.all(
        imageWidths(made).flatMap((width) =>
          imageFormats.map(async (format) => ({
            ...{ width, format },
            bytes: await plain
              .clone()
              .toFormat(format === "JPEG" ? "jpeg" : format === "WEBP" ? "webp" : "avif", { effort: 0 })
              .toBuffer(),
          })),
        ),
      );
      const hash = sha256(kept);
      const image = { hash, fileHash: hash, format: "PNG", ...made, placeholder: "#204060" } as const;
      await here.deps.data.images.add(publisher, {
        ...{ ...image, createdAt: new Date(at * 1_000), createdBy: "test" },
        files: [{ width: 0, format: "PNG", bytes: kept }, ...files],
      });
      await here.deps.data.images.name(publisher, `small/${String(at)}.png`, image, new Date(at * 1_000));
    }
  });
  afterAll(() => Promise.all([here.close(), there.close()]));

  it("comes in with a few statements for each, whatever the number of its files", async () => {
    const zip = await exported(here);
    database.statements.clear();
    expect(await imported(there, zip)).toMatchObject({ ok: true, value: { images: count } });
    // One row, its files, their bytes, its name, what the publisher shows, and looking its publisher up for each.
    expect(database.statements.sent.length / count).toBeLessThan(9);
    expect(await exported(there)).toEqual(zip);
  });
});
