import { writeFile } from "node:fs/promises";
import { projectRoot } from "./project-root.js";
import { readShippedDocuments } from "./shipped-data.js";

/** Run by the build: reads and checks what comes with the program, and leaves it beside the bundle as JSON. */
for (const name of [
  "demo",
  "rules",
  "catalogue-edition",
  "catalogue",
  "base-edition",
  "base-foods",
  "base-tables",
] as const) {
  const data = await readShippedDocuments(name, projectRoot());
  await writeFile(new URL(`./${name}.json`, import.meta.url), JSON.stringify(data));
}
