import { noHousehold, type Household } from "../../domain/model/household.js";
import type { PlanBundle } from "../../domain/model/plan.js";
import type { RuleSet } from "../../domain/plan/compile/rule-set.js";
import { asFrozen } from "../../domain/plan/review/foods-today.js";
import { eatenFoods } from "../../domain/plan/contents/eaten.js";
import { reviewPlan, type ReviewedDifference } from "../../domain/plan/review/review-plan.js";
import type { ComputedPlan } from "../../domain/plan/compile/plan-facts.js";
import { planStorage } from "../../domain/plan/plan-storage.js";
import { scalePlan } from "../../domain/plan/scale-plan.js";
import { shop } from "../../domain/plan/shop.js";
import { ok, type Result } from "../../domain/problem.js";
import { isKeepingClass } from "../../domain/storage/keeping-classes.js";
import type { Deps, RevisionInForce, RevisionSummary } from "../deps.js";
import { rulesToday, type KnownRules } from "../rules/find-rules.js";
import { readToday } from "../answers/scale-for-reader.js";
import { publisherReader, resolveRegion } from "../answers/resolve-region.js";
import { stateContents } from "../answers/state-contents.js";
import { utcDay } from "../../domain/utc-day.js";

/** Revisions read at a time. */
const pageSize = 20;
/** Most differences that are kept of one revision; the less safe ones come first. */
const mostDifferences = 200;

interface Reviewed {
  readonly reviewed: number;
  /** Revisions of which something else is told since their last review. */
  readonly changed: number;
  /** Those of them that became less safe. */
  readonly lessSafe: number;
  /** The plans of these revisions, as `publisher/slug`. */
  readonly lessSafePlans: readonly string[];
  /** Ids of revisions that cannot be computed today. */
  readonly failed: readonly string[];
}

/**
 * Computes every revision in force as it was frozen and with what is known today, and notes what readers find otherwise who give
 * no region: then by the one its publisher had when it was published, now by today's. A revision of which something else is found than at its last review is told of in the changes, and to webhooks. Done twice, the second
 * time changes nothing. Documents stay as they are.
 */
export async function reviewRevisions(deps: Deps): Promise<Reviewed> {
  const { data, log } = deps;
  const rules = await rulesToday(deps);
  const failed: string[] = [];
  const lessSafePlans: string[] = [];
  let [reviewed, changed, lessSafe] = [0, 0, 0];
  let after: string | null = null;
  do {
    const page: Awaited<ReturnType<typeof data.reviews.inForce>> = await data.reviews.inForce(after, pageSize);
    const ids = page.map(({ id }) => id);
    const [summaries, bundles] = await Promise.all([data.revisions.summariesByIds(ids), data.revisions.bundles(ids)]);
    for (const [at, summary] of summaries.entries()) {
      const [bundle, known] = [bundles[at], page[at]];
      if (summary === null || bundle === null || bundle === undefined || known === undefined) continue;
      const { id: revision, publisher, slug } = summary;
      const found = await review(deps, summary, bundle, rules, known);
      if (!found.ok) {
        failed.push(revision);
        log.error({ revision, publisher, slug, problems: found.problems }, "a published plan cannot be computed");
        continue;
      }
      const differences = found.value.slice(0, mostDifferences);
      const isLessSafe = differences.some((each) => each.lessSafe);
      reviewed++;
      if (!(await data.reviews.save({ revisionId: revision, differences, lessSafe: isLessSafe, at: deps.clock() })))
        continue;
      changed++;
      if (isLessSafe) lessSafe++;
      if (isLessSafe) lessSafePlans.push(`${publisher}/${slug}`);
      const facts = { revision, publisher, slug, number: summary.revision, differences: differences.length };
      if (isLessSafe) log.warn(facts, "a published plan became less safe than published");
      else log.info(facts, "a published plan changed for its readers");
    }
    after = ids.length < pageSize ? null : (ids.at(-1) ?? null);
  } while (after !== null);
  log.info({ reviewed, changed, lessSafe, failed: failed.length }, "published plans reviewed");
  // Pages come in the order of ids, which says nothing to anybody.
  return { reviewed, changed, lessSafe, lessSafePlans: lessSafePlans.toSorted(), failed };
}

async function review(
  deps: Deps,
  { ruleSet }: RevisionSummary,
  bundle: PlanBundle,
  rules: KnownRules,
  { asBy010, publisherThen }: RevisionInForce,
): Promise<Result<readonly ReviewedDifference[]>> {
  const then = ruleSet === null ? rules : ((await rulesOf(deps, ruleSet)) ?? rules);
  const readPublishers = publisherReader(deps);
  const reader = await resolveRegion(noHousehold, [bundle], rules, readPublishers);
  const readerThen = await resolveRegion(noHousehold, [bundle], then, async (slugs) =>
    (await readPublishers(slugs)).map((publisher) => publisher && { ...publisher, ...publisherThen }),
  );
  const today = await readToday(deps, [bundle], reader, rules);
  const before = computed(deps, bundle, readerThen, then, asFrozen);
  if (!before.ok) return before;
  const after = computed(deps, bundle, reader, rules, today);
  if (!after.ok) return after;
  return ok(
    reviewPlan({
      before: before.value,
      after: { ...after.value, eaten: eatenFoods(after.value.scaled) },
      servings: bundle.plan.serves,
      asBy010,
      isClass: (code) => isKeepingClass(code, rules.safety.classes),
    }),
  );
}

async function rulesOf({ data, knownRules }: Deps, id: string): Promise<RuleSet | null> {
  const known = knownRules.get(id) ?? (await data.ruleSets.contents([id]))[0] ?? null;
  if (known !== null) knownRules.set(id, known);
  return known;
}

function computed(
  { clock }: Deps,
  bundle: PlanBundle,
  household: Household,
  rules: RuleSet,
  facts: Parameters<typeof scalePlan>[3],
): Result<ComputedPlan> {
  const scaled = scalePlan(bundle, bundle.plan.serves, household, facts);
  if (!scaled.ok) return scaled;
  const { keeping, classes } = rules.safety;
  const { region, regions } = household;
  const today = utcDay(clock());
  return ok({
    scaled: scaled.value,
    // Prices are those that were frozen on both sides: a dearer egg is no news about the plan.
    list: shop([scaled.value], household),
    storage: planStorage(scaled.value, {
      rules: keeping,
      classes,
      region,
      ...(regions && { regions }),
      today,
      session: null,
    }),
    contents: stateContents(scaled.value, household, rules, clock),
  });
}
