import { memoize } from "../memoize.js";
import type { Component, Route } from "../model/component.js";
import type { KeepingRule } from "../model/keeping.js";
import type { KeepingQuestion, Kept, KeptComponent, Subject } from "./guidance.js";
import { limitsOf, mainPlace, strictest, type Limit, type LimitsByPlace } from "./keeping-limits.js";

/** What holds for a thing with its parts, or the part that nobody says anything about. */
export type Inherited =
  { readonly known: true; readonly limits: LimitsByPlace } | { readonly known: false; readonly part: Subject };

type Facts = { readonly keepsAs: string | null; readonly keeping: readonly KeepingRule[] };

/**
 * The keeping facts of the route taken. Whichever way it is come by, it is the same kind of food unless the route names
 * another class. Days in the writer's word go with the making: another way of making it keeps as the component does
 * unless it says otherwise; of what is bought, only the days said of it count.
 */
export function factsOfRoute(
  component: Pick<Component, "keepsAs" | "keeping">,
  route: Pick<Route, "kind" | "keepsAs" | "keeping"> | null,
): Facts {
  if (route === null) return component;
  const saysItself = route.kind === "BUY" || route.keeping.length > 0;
  return {
    keepsAs: route.keepsAs ?? component.keepsAs,
    keeping: saysItself ? route.keeping : component.keeping,
  };
}

/** Slugs of the components that lines draw on. Each component of a plan asks it of every meal, so it is found once. */
export const componentsIn = memoize(
  (lines: KeptComponent["lines"]): ReadonlySet<string> =>
    new Set(lines.flatMap(({ item }) => (item.kind === "COMPONENT" ? [item.component] : []))),
);

/**
 * Every component with the limits of its parts: a part's clock runs from its own making, so the oldest part decides.
 * A part that is not among the components, or of which nobody says anything, makes the whole unknown.
 */
export function inheritedLimits(
  components: Kept["components"],
  question: KeepingQuestion,
): (slug: string) => Inherited {
  const bySlug = new Map(components.map((kept) => [kept.component.slug, kept]));
  const done = new Map<string, Inherited>();
  const of = (slug: string, above: ReadonlySet<string>): Inherited => {
    const known = done.get(slug);
    if (known !== undefined) return known;
    const kept = bySlug.get(slug);
    const subject: Subject = { kind: "COMPONENT", slug };
    if (kept === undefined || above.has(slug)) return { known: false, part: subject };
    const facts = factsOfRoute(kept.component, kept.route);
    const own = limitsOf({ subject, ...pick(facts), madeDay: kept.madeDay ?? 0 }, question);
    const within = new Set([...above, slug]);
    const inherited = withParts(
      subject,
      own,
      [...componentsIn(kept.lines)].map((part) => of(part, within)),
    );
    done.set(slug, inherited);
    return inherited;
  };
  return (slug) => of(slug, new Set());
}

const pick = ({ keepsAs, keeping }: Facts): Facts => ({ keepsAs, keeping });

function withParts(subject: Subject, own: LimitsByPlace, parts: readonly Inherited[]): Inherited {
  if (mainPlace(own) === null) return { known: false, part: subject };
  const unknown = parts.find((part) => !part.known);
  if (unknown !== undefined) return unknown;
  const limits = [...own].map(([place, mine]): [typeof place, readonly Limit[]] => {
    const fromParts = parts.flatMap((part) => (part.known ? (deciding(part.limits, place) ?? []) : []));
    return [place, [...mine, ...fromParts.map((limit) => ({ ...limit, place }))]];
  });
  return { known: true, limits: new Map(limits) };
}

/** What holds for a part inside something kept at a place. Freezing stops its clock, so only its own freezer rule counts there. */
function deciding(limits: LimitsByPlace, place: Limit["place"]): Limit | null {
  const here = strictest(limits.get(place) ?? []);
  return here ?? (place === "FREEZER" ? null : mainPlace(limits));
}
