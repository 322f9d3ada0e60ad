import { Command, CommanderError } from "commander";
import { usualServer } from "./remote-service.js";
import type { Runner } from "./command.js";
import { addCheck } from "./commands/check.js";
import { addConfig } from "./commands/config.js";
import { addDiscard } from "./commands/discard.js";
import { addExport } from "./commands/export.js";
import { addFoods } from "./commands/foods.js";
import { addImage } from "./commands/image.js";
import { addImport } from "./commands/import.js";
import { addInit } from "./commands/init.js";
import { addMigrate } from "./commands/migrate.js";
import { addPreview } from "./commands/preview.js";
import { addPublish } from "./commands/publish.js";
import { addPublisher } from "./commands/publisher.js";
import { addPull } from "./commands/pull.js";
import { addRules } from "./commands/rules.js";
import { addScheduled } from "./commands/scheduled.js";
import { addServe } from "./commands/serve.js";
import { addToken } from "./commands/token.js";
import { addWithdraw } from "./commands/withdraw.js";
import { addWorker } from "./commands/worker.js";
import { CommandFailed, exitCodes, usage, type ExitCode, type Outcome } from "./outcome.js";
import { progressOn } from "./progress.js";
import { showOutcome, type Output } from "./show-outcome.js";

const commands = [
  ...[
    addInit,
    addCheck,
    addPreview,
    addPublish,
    addScheduled,
    addPull,
    addWithdraw,
    addDiscard,
    addImage,
    addImport,
    addExport,
  ],
  ...[addToken, addPublisher, addRules, addFoods],
  ...[addServe, addWorker, addMigrate, addConfig],
];

const endings = `
Environment: PREPWRIGHT_SERVER (${usualServer}), PREPWRIGHT_TOKEN.

Exit codes: 0 success; 1 problems in the input; 2 wrong command line, setting or file; 3 no answer from the service or the
database; 4 no token, or one without the scope; 5 somebody else's work would be overwritten; 70 internal error.
`;

/** Runs one command line, the words after the program's name, and answers with the exit code. */
export async function runProgram(words: readonly string[], version: string, output: Output): Promise<ExitCode> {
  let exit: ExitCode = exitCodes.ok;
  const asJson = words.includes("--json");
  const run: Runner = async (name, { json = false }, work) => {
    // Programs are not asked: they read one object and write nothing.
    const ask = json ? null : (output.ask ?? null);
    const outcome = await work(progressOn(output, json), ask).catch((error: unknown) => failed(error, output));
    exit = outcome.exit;
    showOutcome(name, outcome, json, output);
    await outcome.after?.();
  };
  const complaints: string[] = [];
  const program = new Command("prepwright")
    .description("Check, publish and fetch back meal-prep plans, and run the service that computes them.")
    .version(version)
    .exitOverride()
    .configureOutput({ writeOut: output.out, writeErr: (text) => complaints.push(text) })
    .addHelpText("after", endings);
  for (const add of commands) add(program, run);
  try {
    await program.parseAsync(words, { from: "user" });
    return exit;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return exitCodes.ok;
    const message = complaints.join("").trim();
    if (asJson) showOutcome(words[0] ?? "", failed(usage(message), output), true, output);
    else output.err(`${message}\n`);
    return exitCodes.usage;
  }
}

function failed(error: unknown, { err }: Output): Outcome {
  if (error instanceof CommandFailed) return { exit: error.exit, problems: error.problems, result: null };
  const message = error instanceof Error ? error.message : String(error);
  err(`${error instanceof Error ? (error.stack ?? message) : message}\n`);
  const { problems } = new CommandFailed(exitCodes.fault, "FAULT", `Internal error: ${message}`);
  return { exit: exitCodes.fault, problems, result: null };
}
