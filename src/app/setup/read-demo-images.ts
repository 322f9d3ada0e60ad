import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { parse } from "yaml";
import { z } from "zod";
import type { ImageUse } from "../../domain/model/image.js";

/** The picture of a plan of the demo. */
export interface DemoImage {
  /** Slug. */
  readonly plan: string;
  readonly image: ImageUse;
  /** The file, base64. */
  readonly base64: string;
}

const schema = z.record(
  z.string(),
  z.strictObject({ file: z.string(), alt: z.string(), credit: z.string(), licence: z.string() }),
);

/** Reads `images.yaml` below a folder and the files that it names. */
export async function readDemoImages(folder: string): Promise<readonly DemoImage[]> {
  const named = schema.parse(parse(await readFile(join(folder, "images.yaml"), "utf8")));
  return Promise.all(
    Object.entries(named).map(async ([plan, image]) => ({
      plan,
      image,
      base64: (await readFile(join(folder, image.file))).toString("base64"),
    })),
  );
}
