#!/usr/bin/env node
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { projectRoot } from "../setup/project-root.js";
import { askPersonOn } from "./ask-person.js";
import { runProgram } from "./program.js";

/** The command line. The exit code is set, not forced, so that what is being written is written to its end. */
const { version } = JSON.parse(await readFile(join(projectRoot(), "package.json"), "utf8")) as { version: string };
process.exitCode = await runProgram(process.argv.slice(2), version, {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  isTerminal: process.stderr.isTTY,
  ask: process.stdin.isTTY && process.stderr.isTTY ? askPersonOn(process.stdin, process.stderr) : null,
});
