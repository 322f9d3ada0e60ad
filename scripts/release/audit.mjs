import { spawnSync } from "node:child_process";

/**
 * Asks the registry for advisories on what is installed with the program. Exit code 1: there are some of high or critical severity; 3:
 * the registry did not say, which is no verdict. Packages that are only part of the explorer page run in a browser, in a page that
 * loads nothing from elsewhere; `npm audit` without words lists them too.
 */
const notAnswered = 3;

const { stdout } = spawnSync("npm", ["audit", "--omit=dev", "--json"], { encoding: "utf8", shell: false });
const report = readReport(stdout);
if (report === null) {
  console.error(
    "The registry did not answer what is known of the shipped packages. Ask again where it does: npm run release:audit",
  );
  process.exitCode = notAnswered;
} else {
  const { high = 0, critical = 0, total = 0 } = report;
  console.log(`${total} advisories on shipped packages, of which ${high} high and ${critical} critical.`);
  process.exitCode = high + critical > 0 ? 1 : 0;
}

/** Counts by severity; null: it is no report. */
function readReport(text) {
  try {
    return JSON.parse(text).metadata?.vulnerabilities ?? null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
