import { spawnSync } from "node:child_process";

/**
 * npm run laws [-- --operations 10000]
 *
 * The law of `tests/laws/nothing-unpublished-is-seen.test.ts` with as many operations of two publishers as asked: what one has not published is
 * seen by nobody else. `npm test` does some 1,000. Ends with 1 if the law is broken.
 */
const usage = (why) => {
  console.error(`usage: npm run laws -- [--operations N]; ${why}`);
  process.exit(2);
};
const [option, value = "", ...more] = process.argv.length > 2 ? process.argv.slice(2) : ["--operations", "10000"];
const operations = Number(value);
if (option !== "--operations" || more.length > 0) usage(`not known: ${[option, ...more].join(" ")}`);
if (!Number.isInteger(operations) || operations < 1 || operations > 10_000_000)
  usage(`N is a whole number from 1 to 10000000, not "${value}"`);

const started = performance.now();
const { status } = spawnSync(
  process.execPath,
  ["node_modules/vitest/vitest.mjs", "run", "tests/laws/nothing-unpublished-is-seen.test.ts"],
  { stdio: "inherit", env: { ...process.env, PREPWRIGHT_LAW_OPERATIONS: String(operations) } },
);
const seconds = Math.round((performance.now() - started) / 1000);
console.log(JSON.stringify({ law: "nothing unpublished is seen", operations, held: status === 0, seconds }));
process.exit(status ?? 1);
