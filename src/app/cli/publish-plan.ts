import { CorrectPlanDocument, PublishPlanDocument, type PublishPlanMutation } from "./generated/operations.js";
import type { ShownProblem } from "./outcome.js";
import type { Service } from "./service.js";

export interface PublishedPlan {
  readonly slug: string;
  readonly title: string;
  readonly revision: number;
  /** false: the newest revision said exactly this already. */
  readonly created: boolean;
}

type PlanPublished =
  | { readonly ok: true; readonly plan: PublishedPlan }
  | { readonly ok: false; readonly problems: readonly ShownProblem[] };

interface Wanted {
  readonly publisher: string;
  readonly slug: string;
  readonly expectedVersion: number;
}

/** Publishes a draft, with a note for readers where the plan was published before: a first revision corrects nothing. */
export async function publishPlan(service: Service, wanted: Wanted, note: string | null): Promise<PlanPublished> {
  if (note !== null) {
    const { correctPlan } = await service.ask(CorrectPlanDocument, { input: { ...wanted, changeNote: note } });
    const nothingToCorrect = correctPlan.problems.some(({ code }) =>
      ["UNKNOWN_PLAN", "NOTHING_CHANGED"].includes(code),
    );
    if (!nothingToCorrect) return published(correctPlan);
  }
  const { publishPlan: answer } = await service.ask(PublishPlanDocument, { input: wanted });
  return published(answer);
}

function published({ plan, created, problems }: PublishPlanMutation["publishPlan"]): PlanPublished {
  if (plan === null) return { ok: false, problems };
  return { ok: true, plan: { ...plan, created: created ?? false } };
}
