import { createHash } from "node:crypto";
import { mkdir, writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { diceFrom } from "../kit/arbitrary/dice.js";
import { mutations } from "./mutate.js";
import { fuzzTargets } from "./targets.js";

/**
 * npm run fuzz -- [--seconds 60] [--files N] [--seed N]
 *
 * Gives damaged files to every reader of files from outside. A file that makes one throw, lose a row or take too long is kept in
 * tests/fixtures/imports/found, where the tests read it for ever. Exits with 1 if there was any.
 */
const { values } = parseArgs({
  options: {
    seconds: { type: "string", default: "60" },
    files: { type: "string", default: "1000000" },
    seed: { type: "string", default: "20261125" },
  },
});
const kept = "tests/fixtures/imports/found";
/** The longest one file may take, in milliseconds of processor time: other things may run beside. */
const patience = 5_000;
const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

const dice = diceFrom(Number(values.seed));
const targets = await fuzzTargets();
const end = performance.now() + Number(values.seconds) * 1000;
let files = 0;
let found = 0;
let slowest = 0;
while (performance.now() < end && files < Number(values.files)) {
  const target = dice.pick(targets);
  const chosen = Array.from({ length: 1 + dice.roll(3) }, () => dice.pick(Object.keys(mutations)));
  const bytes = chosen.reduce<Buffer>((file, name) => mutations[name]?.(file, dice) ?? file, dice.pick(target.seeds));
  const start = cpu();
  let fault: string | null = null;
  try {
    await target.read(bytes);
  } catch (error) {
    fault = error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
  const took = cpu() - start;
  if (took > slowest) console.error(`${target.name} (${chosen.join(", ")}): ${String(Math.round(took))} ms`);
  if (took > patience) fault ??= `took ${String(Math.round(took))} ms`;
  slowest = Math.max(slowest, took);
  files += 1;
  if (fault === null) continue;
  found += 1;
  const name = `${target.name}-${createHash("sha256").update(bytes).digest("hex").slice(0, 12)}`;
  await mkdir(kept, { recursive: true });
  await writeFile(`${kept}/${name}`, bytes.subarray(0, 5_000_000));
  console.error(`${name} (${chosen.join(", ")}): ${fault}`);
  if (found >= 20) break;
}
const peak = Math.round((process.resourceUsage().maxRSS * 1024) / 1e6);
console.log(
  JSON.stringify({
    name: "fuzz",
    files,
    found,
    slowestMs: Math.round(slowest),
    peakMb: peak,
    seed: Number(values.seed),
  }),
);
process.exit(found > 0 ? 1 : 0);
