import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { toolFolder } from "./tool-folder.mjs";

/**
 * npm run test:nodes [-- 22 24 26] [-- --whole]
 *
 * Runs the built program and its suites on newer versions of Node than the one that runs `npm test`: which suites, says
 * vitest.nodes.config.ts; with --whole, every suite of `npm test`. Ends with 1 if one version fails, after the others were tried.
 */
const known = ["22", "24", "26"];
const words = process.argv.slice(2);
const whole = words.includes("--whole");
const asked = words.filter((word) => word !== "--whole");
const unknown = asked.filter((word) => !known.includes(word));
if (unknown.length > 0) {
  console.error(`usage: npm run test:nodes -- [--whole] [${known.join("] [")}]; not known: ${unknown.join(", ")}`);
  process.exit(2);
}
if (process.platform !== "linux" || process.arch !== "x64") {
  console.error(`tools/nodes holds Node for linux-x64, and this is ${process.platform}-${process.arch}`);
  process.exit(2);
}

const folder = toolFolder("nodes");
const failed = [];
for (const version of asked.length > 0 ? asked : known) {
  const bin = join(folder, `node_modules/node${version}/bin`);
  const started = performance.now();
  try {
    execFileSync(
      join(bin, "node"),
      ["node_modules/vitest/vitest.mjs", "run", ...(whole ? [] : ["--config", "vitest.nodes.config.ts"])],
      // What suites start as "node" or by a script's first line is this version too.
      { stdio: "inherit", env: { ...process.env, PATH: `${bin}:${process.env.PATH}`, PREPWRIGHT_NODE: version } },
    );
  } catch (error) {
    if (typeof error.status !== "number") throw error;
    failed.push(version);
  }
  console.log(`Node ${version}: ${((performance.now() - started) / 1000).toFixed(0)} s`);
}
if (failed.length > 0) console.error(`failed on Node ${failed.join(", ")}`);
process.exitCode = failed.length > 0 ? 1 : 0;
