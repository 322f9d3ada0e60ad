// @ts-nocheck
import { execFileSync } from "node:child_process";
import { stat } from "node:fs/promises";
import { expect, it } from "vitest";

it("the client is generated only when the schema changed", async () => {
  const generate = () => execFileSync(process.execPath, ["scripts/generate-client.mjs"], { stdio: "pipe" });
  generate();
  const before = await stat("src/persistence/generated/client.ts");
  generate();
  const after = await stat("src/persistence/generated/client.ts");
  expect(after.mtimeMs).toBe(before.mtimeMs);
});
