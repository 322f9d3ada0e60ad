import { asking, withService, type AddCommand, type ServiceOptions } from "../command.js";
import { WithdrawPlanDocument } from "../generated/operations.js";
import { exitCodes, usage, type Outcome } from "../outcome.js";
import { planName } from "../plan-name.js";

interface WithdrawOptions extends ServiceOptions {
  readonly revision: string;
  readonly reason: string;
}

export const addWithdraw: AddCommand = (program, run) => {
  withService(program.command("withdraw"))
    .description("take a revision out of force; its own address goes on saying why")
    .argument("<publisher/slug>", "the plan")
    .requiredOption("--revision <number>", "which revision")
    .requiredOption("--reason <text>", "why, for readers")
    .action((name: string, options: WithdrawOptions) => run("withdraw", options, () => withdraw(name, options)));
};

async function withdraw(name: string, options: WithdrawOptions): Promise<Outcome> {
  const plan = planName(name);
  if (!/^[1-9]\d{0,8}$/.test(options.revision)) throw usage("--revision must be the number of a revision, such as 2.");
  const input = { ...plan, revision: Number(options.revision), reason: options.reason };
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
