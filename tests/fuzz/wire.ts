import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { connect, type Socket } from "node:net";
import { parseArgs } from "node:util";
import { addressAttacks, framingAttacks, methodAttacks, type WireAttack } from "../attack/wire-attacks.js";
import { sendWire } from "../attack/wire-client.js";
import { startService } from "../app/processes/service-process.js";
import { diceFrom } from "../kit/arbitrary/dice.js";
import { startPostgres } from "../kit/postgres/start-postgres.js";
import { prepareFuzzedService } from "./fuzzed-service.js";
import { mutations } from "./mutate.js";

/**
 * npm run fuzz:wire -- [--connections 5000] [--seed N]
 *
 * Writes bytes that no client sends to the built service on a real Postgres, cut into pieces and damaged, while hundreds of other connections are
 * half open, or send a byte a second. Wrong is: an answer of 500 or above, an inside of the program shown, an error in the log, a service that
 * ended or no longer answers `/healthz`, or memory that goes on growing. Exits with 1 if there was any.
 */
const { values } = parseArgs({
  options: { connections: { type: "string", default: "5000" }, seed: { type: "string", default: "20261130" } },
});
const wanted = Number(values.connections);
const dice = diceFrom(Number(values.seed));
const atOnce = 8;
const halfOpen = 300;
const slow = 50;
const patience = 40_000;
const mostGrowth = 1.3;

execFileSync(process.execPath, ["scripts/build.mjs"], { stdio: "ignore" });
const server = await startPostgres();
const url = await server.createDatabase("wire");
await prepareFuzzedService(url);
const service = await startService({
  ...{ DATABASE_URL: url, LOG_LEVEL: "warn", NODE_ENV: "production", PREPWRIGHT_SHED_DELAY_MS: "0" },
  NODE_OPTIONS: "--max-old-space-size=256",
});
const port = Number(new URL(service.address).port);

const described = JSON.parse(readFileSync("openapi.json", "utf8")) as { readonly paths: object };
const named: Readonly<Record<string, string>> = {
  publisher: "third-gate-allotments",
  slug: "bean-night",
  revision: "1",
};
const paths = [
  ...["/", "/graphql", "/healthz", "/readyz", "/p/third-gate-allotments", "/p/third-gate-allotments/bean-night"],
  ...Object.keys(described.paths).map((path) => path.replace(/\{(\w+)\}/g, (_, name: string) => named[name] ?? "a")),
];
const attacks = [...framingAttacks, ...methodAttacks(paths), ...addressAttacks(paths)];

function nextAttack(): WireAttack {
  const attack = dice.pick(attacks);
  const whole = Buffer.concat([...attack.pieces]);
  const damaged = dice.chance(0.5) ? (mutations[dice.pick(Object.keys(mutations))]?.(whole, dice) ?? whole) : whole;
  const pieces: Buffer[] = [];
  for (let at = 0; at < damaged.length;) {
    const length = dice.chance(0.7) ? damaged.length : 1 + dice.roll(200);
    pieces.push(damaged.subarray(at, at + length));
    at += length;
  }
  return { name: attack.name, pieces, then: dice.pick(["WAIT", "HALF_CLOSE", "HALF_CLOSE", "RESET"] as const) };
}

const head = Buffer.from(
  `POST /graphql HTTP/1.1\r\nhost: a\r\ncontent-type: application/json\r\nx: ${"y".repeat(4_000)}`,
);

/** A connection that says nothing, or a byte a second; where the service closes it, another is opened. */
function hold(speaks: boolean): { readonly end: () => void } {
  let goes = true;
  let socket: Socket;
  let timer: NodeJS.Timeout | undefined;
  const open = (): void => {
    let at = 0;
    socket = connect(port, "127.0.0.1");
    socket.on("error", () => undefined);
    socket.on("close", () => {
      clearInterval(timer);
      if (goes) open();
    });
    if (speaks) timer = setInterval(() => socket.write(head.subarray(at, (at += 1))), 1_000);
  };
  open();
  return {
    end: () => {
      goes = false;
      clearInterval(timer);
      socket.destroy();
    },
  };
}

const memory = (): number =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${String(service.child.pid)}/status`, "utf8"))?.[1] ?? 0) / 1000;
const held = [
  ...Array.from({ length: halfOpen }, () => hold(false)),
  ...Array.from({ length: slow }, () => hold(true)),
];
const memories: number[] = [];
const statuses = new Map<string, number>();
let [sent, found, logged, open] = [0, 0, 0, 0];

function report(attack: WireAttack, fault: string): void {
  found += 1;
  const bytes = Buffer.concat([...attack.pieces]).toString("latin1");
  console.error(`${attack.name}: ${fault}: ${JSON.stringify(bytes.slice(0, 500))}`);
}

async function sendOn(): Promise<void> {
  while (sent < wanted && found < 20) {
    sent += 1;
    if (sent % 200 === 0) memories.push(memory());
    const attack = nextAttack();
    // What waits for more than was sent is closed by the service in its time; here there are many of those.
    const answer = await sendWire(port, attack, attack.then === "WAIT" ? 500 : patience);
    if (!answer.ended) open += 1;
    for (const status of answer.statuses) statuses.set(String(status), (statuses.get(String(status)) ?? 0) + 1);
    const errors = service.errors.filter((line) => /"level":[56]0/.test(line));
    if (service.child.exitCode !== null) report(attack, "the service ended");
    else if (errors.length > logged) report(attack, `an error in the log: ${errors.at(-1)?.slice(0, 600) ?? ""}`);
    else if (answer.statuses.some((status) => status >= 500)) report(attack, answer.text.slice(0, 300));
    else if (/node_modules|\bat \S+ \(|\/src\//.test(answer.text)) report(attack, "shows an inside");
    else if (sent % 100 === 0 && !(await fetch(`${service.address}/healthz`)).ok) report(attack, "/healthz fails");
    logged = errors.length;
  }
}

await Promise.all(Array.from({ length: atOnce }, sendOn));
for (const each of held) each.end();
const mean = (part: readonly number[]): number => part.reduce((sum, each) => sum + each, 0) / Math.max(1, part.length);
const fifth = Math.floor(memories.length / 5);
const growth = fifth === 0 ? 1 : mean(memories.slice(-fifth)) / mean(memories.slice(fifth, 2 * fifth));
const ended = await service.stop();
await server.stop();
console.log(
  JSON.stringify({
    ...{ name: "fuzz-wire", sent, found, open, growth: Number(growth.toFixed(2)), ended },
    peakMb: Math.round(Math.max(0, ...memories)),
    statuses: Object.fromEntries([...statuses].toSorted(([a], [b]) => (a < b ? -1 : 1))),
  }),
);
process.exit(found > 0 || growth > mostGrowth || ended !== 0 ? 1 : 0);
