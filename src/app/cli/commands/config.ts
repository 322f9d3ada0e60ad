import { readSettings } from "../../setup/environment.js";
import { shownValue } from "../../setup/shown-setting.js";
import { withJson, type AddCommand } from "../command.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";

export const addConfig: AddCommand = (program, run) => {
  withJson(program.command("config"))
    .description("show the value of every environment variable, without secrets; exit code 2 if one is wrong")
    .action((options: { json?: boolean }) => run("config", options, () => Promise.resolve().then(show)));
};

function show(): Outcome {
  const read = readSettings();
  if (!read.ok) throw usage(...read.faults);
  const settings = read.settings.map((setting) => ({ ...setting, value: shownValue(setting) }));
  const width = Math.max(...settings.map(({ name }) => name.length));
  return {
    exit: exitCodes.ok,
    result: { settings },
    said: settings.map(
      ({ name, value, from }) => `${name.padEnd(width)}  ${value ?? "-"}${from === "default" ? "  (default)" : ""}`,
    ),
    notes: read.unknown.map((name) => `${name} is set, and is no variable of this program.`),
  };
}
