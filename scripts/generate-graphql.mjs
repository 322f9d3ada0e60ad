import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { toolFolder } from "./tool-folder.mjs";

/** Writes the types of resolvers and clients; with --check it only compares. */
const script = join(toolFolder("codegen"), "generate.mjs");
try {
  execFileSync(process.execPath, ["--import", "tsx", script, ...process.argv.slice(2)], { stdio: "inherit" });
} catch (error) {
  if (typeof error.status !== "number") throw error;
  process.exitCode = error.status;
}
