import type { DietStatement } from "../../nutrition/diets.js";
import { isPreheating } from "../../prep-session/heating.js";
import type { PrepSession } from "../../prep-session/session.js";
import type { Caution, CautionsFound } from "../../storage/cautions.js";
import type { StorageAnswer } from "../../storage/guidance.js";
import { hoursUntil } from "../../storage/keeping-window.js";
import { checkChilling } from "./check-chilling.js";
import { checkScaledLines } from "./check-lines.js";
import { checkKeeping } from "./check-keeping.js";
import { checkNamed } from "./check-named.js";
import { checkOvens } from "./check-ovens.js";
import { checkMealSteps, checkSessionSteps } from "./check-session-steps.js";
import { checkTranslations } from "./check-translations.js";
import { coldRuleOf } from "./cold-rule.js";
import type { Finding } from "./finding.js";
import { lineContext } from "../compile/line-context.js";
import type { ScaledPlan } from "../scaled.js";
import type { KeepingRules } from "../../storage/rule.js";

/** What is known of a plan at its own servings, taken as written. */
export interface PlanToCheck {
  readonly scaled: ScaledPlan;
  readonly storage: StorageAnswer;
  readonly cautions: CautionsFound;
  readonly session: PrepSession;
  /** One for every claim that a diet rule exists for. */
  readonly diets: readonly DietStatement[];
  /** The published rules of today, an ISO date. */
  readonly rules: KeepingRules;
  readonly today: string;
}

/** Share of what is made that may be left over before the writer is told. */
export const leftOverLimit = 0.2;

function components({ scaled, rules }: PlanToCheck): Finding[] {
  const { foods } = lineContext(scaled.bundle);
  const preheated = new Set(
    scaled.components.flatMap(({ component, route }) =>
      (route?.steps ?? component.steps).flatMap((step) =>
        isPreheating(step) && step.temperatureC !== null ? [step.temperatureC] : [],
      ),
    ),
  );
  return scaled.components.flatMap((each): Finding[] => {
    const { component, route, lines, used, made, leftOver } = each;
    const path = ["components", component.slug];
    if (used.high === 0) return [{ code: "COMPONENT_NEVER_EATEN", severity: "LOOK", path, component: component.slug }];
    const steps = route?.steps ?? component.steps;
    const share = leftOver.low / made.low;
    return [
      ...checkScaledLines(lines, steps, path, foods),
      ...checkOvens(steps, component.slug, path, preheated),
      ...checkSessionSteps({ steps, lines, batches: each.batches }, coldRuleOf(component, route, rules.classes), path),
      ...(share > leftOverLimit
        ? [
            {
              code: "COMPONENT_LEFT_OVER" as const,
              severity: "LOOK" as const,
              path,
              component: component.slug,
              share,
              limit: leftOverLimit,
            },
          ]
        : []),
    ];
  });
}

function meals({ scaled }: PlanToCheck): Finding[] {
  const { foods } = lineContext(scaled.bundle);
  return scaled.meals.flatMap(({ meal, lines, factor }) => [
    ...checkScaledLines(lines, meal.steps, ["meals", meal.slug], foods),
    ...checkMealSteps({ steps: meal.steps, lines, batches: factor }, ["meals", meal.slug]),
  ]);
}

function keeping({ scaled, storage, rules, today }: PlanToCheck): Finding[] {
  const beyond = scaled.bundle.components.flatMap((component) =>
    checkKeeping(component, rules, today).map((problem): Finding => ({ ...problem, severity: "STOPS" })),
  );
  const mealOf = new Map(scaled.meals.map(({ meal }) => [meal.slug, meal]));
  const late = storage.guidance
    .filter(({ subject }) => subject.kind !== "FOOD")
    .flatMap(({ subject, tooLateFor, days, counts }) =>
      tooLateFor.map((slug): Finding => {
        const meal = mealOf.get(slug);
        return {
          code: "KEPT_TOO_LONG",
          severity: "LOOK",
          path: [subject.kind === "MEAL" ? "meals" : "components", subject.slug],
          subject: subject.slug,
          meal: slug,
          day: meal?.day ?? 0,
          days,
          ...(counts === "HOURS" && meal !== undefined && { hoursAfter: hoursUntil(meal) }),
        };
      }),
    );
  const unknown = storage.unknown
    .filter(({ subject }) => subject.kind === "COMPONENT")
    .map(({ subject }): Finding => ({
      code: "NOBODY_SAYS_HOW_LONG",
      severity: "LOOK",
      path: ["components", subject.slug],
      subject: subject.slug,
    }));
  return [...beyond, ...late, ...unknown];
}

/** A caution that the rules find due and the writer did not name is shown to readers all the same; the writer should know. */
function cautions({ scaled, cautions: found }: PlanToCheck): Finding[] {
  const named = new Map(scaled.components.map(({ component }) => [component.slug, new Set(component.cautions)]));
  const due = ({ code, about }: Caution): Finding[] =>
    about
      .filter(({ kind, slug }) => kind === "COMPONENT" && named.get(slug)?.has(code) === false)
      .map(({ slug }) => ({
        code: "CAUTION_NOT_NAMED",
        severity: "LOOK",
        path: ["components", slug],
        subject: slug,
        caution: code,
      }));
  const unknown = found.unknown.map(({ subject, code }): Finding => ({
    code: "CAUTION_UNKNOWN",
    severity: "LOOK",
    path: ["components", subject.slug, "cautions"],
    subject: subject.slug,
    caution: code,
  }));
  return [...found.cautions.flatMap(due), ...unknown];
}

/** A claim that the facts contradict stops publishing, and so does one that they do not bear out: unknown is never "free from". */
function claims({ scaled, diets }: PlanToCheck): Finding[] {
  return scaled.bundle.plan.claims.flatMap((claim, at): Finding[] => {
    const found = { severity: "STOPS" as const, path: ["claims", at], claim };
    const statement = diets.find(({ diet }) => diet === claim);
    if (statement === undefined) return [{ code: "CLAIM_WITHOUT_RULE", ...found }];
    if (statement.fits === true) return [];
    return statement.fits === false
      ? [{ code: "CLAIM_BROKEN", ...found, foods: statement.breaks }]
      : [{ code: "CLAIM_NOT_KNOWN", ...found, foods: statement.unknown }];
  });
}

function sessionLength({ scaled, session }: PlanToCheck): Finding[] {
  const promised = scaled.bundle.plan.promisedMinutes;
  if (promised === null || session.totalMinutes <= promised) return [];
  return [
    { code: "SESSION_TOO_LONG", severity: "LOOK", path: ["promised-time"], minutes: session.totalMinutes, promised },
  ];
}

/** What readers would complain about, found before they do. In the order of the document; nothing found is an empty list. */
export function checkPlan(plan: PlanToCheck): readonly Finding[] {
  return [
    ...claims(plan),
    ...sessionLength(plan),
    ...checkNamed(plan.scaled.bundle),
    ...meals(plan),
    ...components(plan),
    ...checkChilling(plan.scaled, plan.rules.classes),
    ...keeping(plan),
    ...cautions(plan),
    ...checkTranslations(plan.scaled.bundle),
  ];
}
