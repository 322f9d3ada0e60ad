// @ts-nocheck
import { readdirSync, readFileSync } from "node:fs";

/** The schema as written, one text a file. The folder stands beside this file, in the sources and in the build. */
export function readTypeDefs(): readonly string[] {
  const folder = new URL("./schema/", import.meta.url);
  return readdirSync(folder)
    .filter((name) => name.endsWith(".graphql"))
    .sort()
    .map((name) => readFileSync(new URL(name, folder), "utf8"));
}
