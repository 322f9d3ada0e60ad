import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { startServer } from "./start-server.js";

/** The built service, with the turns of its event loop written down. */
export interface RecordedService {
  readonly address: string;
  /** Milliseconds of processor time of each turn of some length since this was asked last. */
  turns(): readonly number[];
  stop(): Promise<void>;
}

/** Starts the service, and waits until it has done what it does in the background after its start. */
export async function startRecorded(environment: Readonly<Record<string, string>>): Promise<RecordedService> {
  const folder = mkdtempSync(join(tmpdir(), "prepwright-turns-"));
  const file = join(folder, "turns");
  writeFileSync(file, "");
  const server = await startServer(
    ["--max-semi-space-size=64", "--import", "./bench/load/record-turns.mjs", "dist/main.js"],
    {
      ...{ LOG_LEVEL: "warn", TURNS: file, PREPWRIGHT_ALLOW_EMBEDDED: "1", PREPWRIGHT_SHED_DELAY_MS: "0" },
      ...{ PREPWRIGHT_POINTS_PER_ADDRESS: "0", PREPWRIGHT_POINTS_PER_TOKEN: "0" },
      NODE_OPTIONS: "--max-old-space-size=256",
      ...environment,
    },
  );
  let read = 0;
  const turns = (): readonly number[] => {
    const written = readFileSync(file, "latin1");
    const own = written.slice(read).split("\n").map(Number);
    read = written.length;
    return own;
  };
  // Five seconds without a long turn.
  for (let seconds = 0; seconds < 5; seconds += 1) {
    await pause(1_000);
    if (Math.max(...turns()) > 15) seconds = 0;
  }
  return {
    address: `http://127.0.0.1:${String(server.port)}`,
    turns,
    stop: async () => {
      await server.stop();
      rmSync(folder, { recursive: true });
    },
  };
}
