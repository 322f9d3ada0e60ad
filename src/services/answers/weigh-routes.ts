import type { Money } from "../../domain/model/amount.js";
import type { PlanAnswer } from "../../domain/plan/plan-answer.js";
import { shopInSlices } from "../../domain/plan/shop.js";
import { moneyOf, moneyParts } from "../../domain/shopping/money.js";
import type { RouteDifferences } from "../../exports/page/parts/ways-part.js";
import type { Deps, PublishedRevision } from "../deps.js";
import { runInSlices } from "../time-slices.js";
import { prepSessionsInSlices } from "./plan-prep-session.js";
import { scaleForReader, type Asked } from "./scale-for-reader.js";

/** Each is computed like the plan itself, and a page pays for so many (rest/endpoint-cost.ts). */
export const mostWeighedRoutes = 3;

/** What the routes that are not taken would change: minutes of the work, money at the till. Those beyond the first few are not weighed. */
export async function weighRoutes(
  deps: Deps,
  published: PublishedRevision,
  asked: Asked,
  answer: PlanAnswer,
): Promise<RouteDifferences> {
  const { scaled, session, list } = answer;
  const { mode, byName } = answer.household.routes;
  const open = scaled.components
    .filter(({ batches }) => batches > 0)
    .flatMap(({ component, route }) =>
      [...(route === null ? [] : ["as-written"]), ...component.routes.map(({ name }) => name)]
        .filter((name) => name !== route?.name)
        .map((name) => ({ component: component.slug, route: name })),
    );
  const found = new Map<string, { minutes: number | null; money: Money | null }>();
  for (const way of open.slice(0, mostWeighedRoutes)) {
    const others = byName.filter(({ component }) => component !== way.component);
    const household = { ...asked.household, routes: { mode, byName: [...others, way] } };
    const read = await scaleForReader(deps, published, { ...asked, household });
    if (!read.ok) continue;
    const other = read.value;
    const { whole } = await runInSlices(deps, (work) =>
      prepSessionsInSlices(other.scaled, other.household, other.rules, work),
    );
    const { cost } = await runInSlices(deps, (work) =>
      shopInSlices([other.scaled], other.household, other.today, work),
    );
    found.set(`${way.component}:${way.route}`, {
      minutes: whole.ok && session !== null ? whole.value.totalMinutes - session.totalMinutes : null,
      money: difference(cost.atTill, list.cost.atTill),
    });
  }
  return found;
}

function difference(money: Money | null, before: Money | null): Money | null {
  if (money === null || before === null || money.currency !== before.currency) return null;
  const [now, then] = [moneyParts(money.amount), moneyParts(before.amount)];
  if (now === null || then === null) return null;
  const parts = now - then;
  const { amount, currency } = moneyOf(Math.abs(parts), money.currency);
  return { amount: parts < 0 ? `-${amount}` : amount, currency };
}
