import type { AskPerson } from "../ask-person.js";
import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { Option } from "commander";
import {
  RevisionsInForceDocument,
  ScheduleWithdrawalDocument,
  UnpublishPlanDocument,
  WithdrawPlanDocument,
} from "../generated/operations.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";
import type { Service } from "../service.js";
import { terminalLine } from "../terminal-line.js";
import { scheduledLine, shownScheduled, timeOptions } from "../scheduled-line.js";

type Then = "previous" | "nothing";

interface UnpublishOptions extends ServiceOptions {
  readonly reason: string;
  readonly at?: string;
  readonly zone?: string;
}

interface WithdrawOptions extends UnpublishOptions {
  readonly revision: string;
  /** Left out: a person is asked, and a program gets what `withdraw` did before there was a choice. */
  readonly then?: Then;
}

export const addWithdraw: AddCommand = (program, run) => {
  withService(program.command("withdraw"))
    .description("withdraw a revision; its own address still shows it, with the reason")
    .argument("<publisher/slug>", "the plan")
    .requiredOption("--revision <number>", "number of the revision")
    .requiredOption("--reason <text>", "reason, shown to readers")
    .addOption(
      new Option(
        "--then <what>",
        "what the plan's address shows: the previous revision, or only the reason (left out: a terminal asks, a script gets previous)",
      ).choices(["previous", "nothing"]),
    )
    .action((name: string, options: WithdrawOptions) =>
      run("withdraw", options, (_, ask) => withdraw(name, options, ask)),
    );
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

async function withdraw(name: string, options: WithdrawOptions, ask: AskPerson | null): Promise<Outcome> {
  const plan = planName(name);
  if (!/^[1-9]\d{0,8}$/.test(options.revision)) throw usage("--revision must be the number of a revision, such as 2.");
  const asked = { ...plan, revision: Number(options.revision) };
  return asking(options, async (service) => {
    const said = options.then ?? (ask === null ? null : await chooseThen(service, name, asked, ask));
    const then = said === "nothing" ? "NOTHING" : "PREVIOUS";
    const { withdrawPlan } = await service.ask(WithdrawPlanDocument, {
      input: { ...asked, reason: options.reason, then },
    });
    const { plan: withdrawn, problems } = withdrawPlan;
    if (withdrawn === null) return { exit: exitCodes.problems, problems, result: null };
    const newest = withdrawn.newest?.revision ?? null;
    const now = newest === null ? "None is in force now." : `Revision ${newest} is in force now.`;
    return {
      exit: exitCodes.ok,
      result: { ...plan, revision: withdrawn.revision, inForce: newest },
      said: [`Withdrew ${name}, revision ${withdrawn.revision}. ${now}`],
    };
  });
}

interface Asked {
  readonly publisher: string;
  readonly slug: string;
  readonly revision: number;
}

/** Asks what readers are to find. null: there is nothing to choose, since the service will refuse it, or no other revision is in force. */
async function chooseThen(service: Service, name: string, asked: Asked, ask: AskPerson): Promise<Then | null> {
  const { plan } = await service.ask(RevisionsInForceDocument, asked);
  if (plan === null || plan.withdrawnAt !== null) return null;
  const others = plan.revisions.edges
    .map(({ node }) => node)
    .filter(({ revision, withdrawnAt }) => withdrawnAt === null && revision !== asked.revision)
    .map(({ revision }) => revision);
  const [newest] = others;
  if (newest === undefined) return null;
  return ask(thenQuestion(name, plan.title, asked.revision, newest), ["previous", "nothing"] as const);
}

const thenQuestion = (name: string, title: string, revision: number, shown: number): string =>
  [
    `Revision ${revision} of "${terminalLine(title)}" (${name}) is to be withdrawn. What do readers find at its address then?`,
    `  previous  Revision ${shown} is shown again, as the plan in force. Readers go on cooking from it.`,
    "  nothing   The plan is withdrawn as a whole: the address says so and gives your reason, until you publish it again.",
    "Type previous or nothing: ",
  ].join("\n");
