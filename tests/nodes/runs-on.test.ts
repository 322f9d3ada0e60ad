import { execFileSync } from "node:child_process";
import { expect, it } from "vitest";

/** scripts/test-nodes.mjs names the version that it means to try. */
const meant = process.env["PREPWRIGHT_NODE"];

it("these suites, and what they start, run on the version of Node they are meant to", () => {
  const version = (command: string): string => execFileSync(command, ["-p", "process.versions.node"]).toString();
  const own = process.versions.node.split(".")[0];
  expect([own, version(process.execPath).split(".")[0], version("node").split(".")[0]]).toEqual([meant, meant, meant]);
});
