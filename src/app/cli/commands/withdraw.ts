import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { Option } from "commander";
import { ScheduleWithdrawalDocument, UnpublishPlanDocument, WithdrawPlanDocument } from "../generated/operations.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";
import { scheduledLine, shownScheduled, timeOptions } from "../scheduled-line.js";

interface UnpublishOptions extends ServiceOptions {
  readonly reason: string;
  readonly at?: string;
  readonly zone?: string;
}

interface WithdrawOptions extends UnpublishOptions {
  readonly revision: string;
  readonly then: "previous" | "nothing";
}

export const addWithdraw: AddCommand = (program, run) => {
  withService(program.command("withdraw"))
    .description("withdraw a revision; its own address still shows it, with the reason")
    .argument("<publisher/slug>", "the plan")
    .requiredOption("--revision <number>", "number of the revision")
    .requiredOption("--reason <text>", "reason, shown to readers")
    .addOption(
      new Option("--then <what>", "what the plan's address shows: the previous revision, or only the reason")
        .choices(["previous", "nothing"])
        .default("previous"),
    )
    .action((name: string, options: WithdrawOptions) => run("withdraw", options, () => withdraw(name, options)));
  withService(program.command("unpublish"))
    .description("withdraw a whole plan; its address answers 410 with the reason until it is published again")
    .argument("<publisher/slug>", "the plan")
    .requiredOption("--reason <text>", "reason, shown to readers")
    .option("--at <time>", "time at which to withdraw it, such as 2027-01-06T20:00; requires --zone")
    .option("--zone <name>", "IANA time zone of --at, such as Europe/Berlin")
    .action((name: string, options: UnpublishOptions) => run("unpublish", options, () => unpublish(name, options)));
};

async function unpublish(name: string, { reason, ...options }: UnpublishOptions): Promise<Outcome> {
  const plan = planName(name);
  const time = timeOptions(options);
  if (time !== null) {
    const input = { ...plan, reason, ...time };
    const asked = await asking(options, (service) => service.ask(ScheduleWithdrawalDocument, { input }));
    const { scheduled, problems: wrong } = asked.scheduleWithdrawal;
    if (scheduled === null) return { exit: exitCodes.problems, problems: wrong, result: null };
    return { exit: exitCodes.ok, result: { scheduled: shownScheduled(scheduled) }, said: [scheduledLine(scheduled)] };
  }
  const input = { ...plan, reason };
  const { unpublishPlan } = await asking(options, (service) => service.ask(UnpublishPlanDocument, { input }));
  const { plan: withdrawn, problems } = unpublishPlan;
  if (withdrawn === null) return { exit: exitCodes.problems, problems, result: null };
  return {
    exit: exitCodes.ok,
    result: { ...plan, revision: withdrawn.revision, inForce: null },
    said: [
      `Withdrew ${name} as a whole, revision ${withdrawn.revision} the last. Publish it to put it in force again.`,
    ],
  };
}

async function withdraw(name: string, options: WithdrawOptions): Promise<Outcome> {
  const plan = planName(name);
  if (!/^[1-9]\d{0,8}$/.test(options.revision)) throw usage("--revision must be the number of a revision, such as 2.");
  const then = options.then === "nothing" ? "NOTHING" : "PREVIOUS";
  const input = { ...plan, revision: Number(options.revision), reason: options.reason, then } as const;
  const { withdrawPlan } = await asking(options, (service) => service.ask(WithdrawPlanDocument, { input }));
  const { plan: withdrawn, problems } = withdrawPlan;
  if (withdrawn === null) return { exit: exitCodes.problems, problems, result: null };
  const newest = withdrawn.newest?.revision ?? null;
  const now = newest === null ? "None is in force now." : `Revision ${newest} is in force now.`;
  return {
    exit: exitCodes.ok,
    result: { ...plan, revision: withdrawn.revision, inForce: newest },
    said: [`Withdrew ${name}, revision ${withdrawn.revision}. ${now}`],
  };
}
