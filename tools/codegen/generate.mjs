import { readFile } from "node:fs/promises";
import { generate } from "@graphql-codegen/cli";
import config from "../../codegen.config.ts";

/**
 * Writes the types of resolvers and clients, in the folder of the project. With --check nothing is written: the exit code is 1
 * where a committed file is not what would be.
 */
const check = process.argv.includes("--check");
const files = await generate(
  // Plugins are found beside this file; by default they are looked for beside package.json.
  { ...config, cwd: process.cwd(), silent: true, pluginLoader: (name) => import(name) },
  !check,
);
if (files.length !== Object.keys(config.generates).length) throw new Error("not every file was generated");
if (check) {
  for (const { filename, content } of files) {
    if (content === (await readFile(filename, "utf8"))) continue;
    console.error(`${filename} is not what the schema gives: npm run generate:graphql`);
    process.exitCode = 1;
  }
}
