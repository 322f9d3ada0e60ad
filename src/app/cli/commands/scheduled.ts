import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import {
  CancelScheduledDocument,
  ChangeScheduledDocument,
  ViewerDocument,
  type ScheduledPartsFragment,
} from "../generated/operations.js";
import { exitCodes, usage, type Outcome, type ShownProblem } from "../outcome.js";
import { readScheduled } from "../read-scheduled.js";
import { scheduledLine, shownScheduled, timeOptions } from "../scheduled-line.js";
import type { Service } from "../service.js";

interface ScheduledOptions extends ServiceOptions {
  readonly publisher?: string;
  readonly all?: boolean;
  readonly cancel?: string;
  readonly move?: string;
  readonly at?: string;
  readonly zone?: string;
}

export const addScheduled: AddCommand = (program, run) => {
  withService(program.command("scheduled"))
    .description("show which plans are to be published and withdrawn, and which were kept back; move or cancel one")
    .option("--publisher <slug>", "whose they are; left out: whose the token is")
    .option("--all", "also those that were carried out or cancelled")
    .option("--cancel <id>", "cancel one that waits, instead")
    .option("--move <id>", "move one that waits to --at and --zone, instead")
    .option("--at <time>", "when, such as 2026-12-24T06:00")
    .option("--zone <name>", "IANA time zone of --at, such as Europe/Berlin")
    .action((options: ScheduledOptions) =>
      run("scheduled", options, () => asking(options, (service) => scheduled(service, options))),
    );
};

async function scheduled(service: Service, options: ScheduledOptions): Promise<Outcome> {
  const { cancel, move } = options;
  const time = timeOptions(options);
  if (cancel !== undefined && move !== undefined) throw usage("Either --cancel or --move.");
  if ((move === undefined) !== (time === null))
    throw usage("--move needs --at and --zone, which go with nothing else.");
  if (cancel !== undefined)
    return changed((await service.ask(CancelScheduledDocument, { input: { id: cancel } })).cancelScheduled);
  if (move !== undefined && time !== null)
    return changed((await service.ask(ChangeScheduledDocument, { input: { id: move, ...time } })).changeScheduled);
  return show(service, options);
}

function changed({
  scheduled: found,
  problems,
}: {
  readonly scheduled: ScheduledPartsFragment | null;
  readonly problems: readonly ShownProblem[];
}): Outcome {
  if (found === null) return { exit: exitCodes.problems, problems, result: null };
  return { exit: exitCodes.ok, result: { scheduled: shownScheduled(found) }, said: [scheduledLine(found)] };
}

async function show(service: Service, { publisher: told, all = false }: ScheduledOptions): Promise<Outcome> {
  const publisher = told ?? (await service.ask(ViewerDocument, {})).viewer?.publisher?.slug;
  if (publisher === undefined) throw usage("The token is no publisher's own. Name the publisher with --publisher.");
  const found = await readScheduled(service, publisher, all ? [] : ["WAITING", "KEPT_BACK"]);
  return {
    exit: exitCodes.ok,
    result: { publisher, scheduled: found.map(shownScheduled) },
    said: found.flatMap((each) => [scheduledLine(each), ...each.problems.map(({ message }) => `  ${message}`)]),
    notes: found.length === 0 ? ["Nothing is scheduled."] : [],
  };
}
