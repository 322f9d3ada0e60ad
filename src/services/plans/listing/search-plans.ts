import { failed, ok, type Path, type Result } from "../../../domain/problem.js";
import { factsIn } from "../../../domain/plan/listing/fact-labels.js";
import type { Deps, ListedPlan, Page, PlanOrder } from "../../deps.js";
import { readPageRequest, type WantedPage } from "../../answers/page-request.js";
import { refuseBadCursor } from "../../refuse-bad-cursor.js";
import { judgedToday } from "./judge-listed.js";
import { readPlanSearch, type PlanSearch } from "./read-plan-search.js";
import type { WantedPlans } from "./wanted-plans.js";

/** A plan of a list, with what holds of it where the list was asked for. */
export interface PlanHit extends ListedPlan {
  readonly region: string;
  readonly markets: readonly string[];
}

/** A page of plans, and what is asked of the whole list only where somebody wants it. */
export interface FoundPlans {
  readonly page: Page<PlanHit>;
  count(): Promise<PlanCount>;
  facets(): Promise<readonly PlanFacet[]>;
}

export interface PlanCount {
  readonly count: number;
  /** false: there are more. */
  readonly isExact: boolean;
}

type FacetKind = "DIET" | "WITHOUT_ALLERGEN" | "LANGUAGE" | "TAG" | "APPLIANCE";

/** How many plans of a list are of each kind; `isExact` false: of the first 10,000 that were found. */
export interface PlanFacet {
  readonly kind: FacetKind;
  readonly values: readonly { readonly value: string; readonly count: number }[];
  readonly isExact: boolean;
}

/** Plans are counted as far as this. */
const mostCounted = 10_000;

/** Values of a facet, the commonest first. */
const mostValues = 50;

const kinds: Readonly<Record<string, FacetKind>> = {
  diet: "DIET",
  free: "WITHOUT_ALLERGEN",
  language: "LANGUAGE",
  tag: "TAG",
  appliance: "APPLIANCE",
};

/**
 * Published plans by what is known of them, each in its newest revision in force. Before a page is answered its plans are held against the rules and
 * foods of today; one that is no longer what was asked for is left out, so that a page may be shorter than was asked. Problems have paths below `path`.
 */
export async function searchPlans(
  deps: Deps,
  input: { readonly filter: WantedPlans; readonly orderBy?: PlanOrder | null | undefined; readonly page: WantedPage },
  path: Path = ["filter"],
): Promise<Result<FoundPlans>> {
  const read = await readPlanSearch(deps, input.filter, path);
  if (!read.ok) return read;
  const search = read.value;
  const request = readPageRequest(input.page);
  if (!request.ok) return request;
  const order = input.orderBy ?? null;
  if (order !== null && search.filter.atHand !== null) {
    const expected = "no order beside `foodsAtHand`, whose share orders the list";
    return failed([{ code: "BAD_SHAPE", path: ["orderBy"], expected, got: order }]);
  }
  const found = await refuseBadCursor(request.value, () =>
    deps.data.planFacts.page(search.filter, order ?? "NEWEST", request.value),
  );
  if (!found.ok) return found;
  const { region, markets } = search;
  let counted: Promise<PlanCount> | null = null;
  const count = (): Promise<PlanCount> => (counted ??= countPlans(deps, search));
  const judged = await judgedToday(deps, found.value.items, search.safety);
  return ok({
    page: { ...found.value, items: judged.map(({ cursor, item }) => ({ cursor, item: { ...item, region, markets } })) },
    count,
    facets: () => facetsOf(deps, search, count),
  });
}

async function countPlans({ data }: Deps, { filter }: PlanSearch): Promise<PlanCount> {
  const count = await data.planFacts.count(filter, mostCounted);
  return { count: Math.min(count, mostCounted), isExact: count <= mostCounted };
}

async function facetsOf({ data }: Deps, search: PlanSearch, count: FoundPlans["count"]): Promise<readonly PlanFacet[]> {
  const [counts, { isExact }] = await Promise.all([data.planFacts.labels(search.filter, mostCounted), count()]);
  const byKind = new Map<FacetKind, Map<string, number>>();
  for (const { label, count } of counts)
    for (const fact of factsIn([label], search.region)) {
      const at = fact.indexOf(" ");
      const kind = kinds[fact.slice(0, at)];
      if (kind === undefined) continue;
      const values = byKind.get(kind) ?? new Map<string, number>();
      const value = fact.slice(at + 1);
      byKind.set(kind, values.set(value, (values.get(value) ?? 0) + count));
    }
  return Object.values(kinds).map((kind) => ({
    kind,
    isExact,
    values: [...(byKind.get(kind) ?? [])]
      .map(([value, count]) => ({ value, count }))
      .toSorted((a, b) => b.count - a.count || (a.value < b.value ? -1 : 1))
      .slice(0, mostValues),
  }));
}
