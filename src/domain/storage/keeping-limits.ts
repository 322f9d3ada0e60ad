import type { KeepingRule, StoragePlace } from "../model/keeping.js";
import { regionCovers, regionsOf, type RegionOwner, type Regions } from "../model/region.js";
import { ceilingsFor, type Ceiling, type RuleReach } from "./ceilings.js";
import type { Basis, KeepingQuestion, Subject } from "./guidance.js";
import {
  compareEnds,
  dateOfDay,
  endOf,
  lastingDays,
  plannedSpan,
  writerSpan,
  type End,
  type Span,
} from "./keeping-window.js";

/** Something with its own rules, and the day (after the session) from which they count. */
interface KeptThing {
  readonly subject: Subject;
  readonly keepsAs: string | null;
  readonly keeping: readonly KeepingRule[];
  readonly madeDay: number;
}

/** One rule, applied. */
export interface Limit {
  readonly basis: Omit<Basis, "decides">;
  readonly place: StoragePlace;
  readonly end: End;
  /** The length from which the end comes, and the day from which it counts. */
  readonly span: Span;
  readonly madeDay: number;
  readonly counts: Span["counts"];
  readonly container: string | null;
  readonly reach: RuleReach | null;
  readonly whose: RegionOwner | null;
}

/** Limits of one thing by place. A place without any is left out. */
export type LimitsByPlace = ReadonlyMap<StoragePlace, readonly Limit[]>;

const places = ["FRIDGE", "ROOM", "FREEZER"] as const;

/**
 * All that is said about a thing itself, by place. The published time at room temperature is there only to hold a
 * writer who would keep it there; nobody is sent to the shelf by the two-hour rule.
 */
export function limitsOf(thing: KeptThing, question: KeepingQuestion): LimitsByPlace {
  const found = places.flatMap((place): [StoragePlace, readonly Limit[]][] => {
    const written = thing.keeping.filter((rule) => rule.place === place);
    if (place === "ROOM" && written.length === 0) return [];
    const limits = [
      ...written.map((rule) => writersLimit(thing, rule, question)),
      ...ceilings(thing, place, question).map((ceiling) => publishedLimit(thing, ceiling, question)),
    ];
    return limits.length > 0 ? [[place, limits]] : [];
  });
  return new Map(found);
}

function ceilings({ keepsAs }: KeptThing, place: StoragePlace, question: KeepingQuestion): readonly Ceiling[] {
  if (keepsAs === null) return [];
  const sessionDay = dateOfDay(0, question.session) ?? question.today;
  const date = sessionDay > question.today ? sessionDay : question.today;
  const { region, regions = regionsOf(question), audience = "HOUSEHOLD", rules: keeping, classes } = question;
  return ceilingsFor({ keeping, classes }, keepsAs, place, { region, regions, audience, date });
}

/** Where among the regions of an answer a figure holds; those that were published for no region in particular hold in the first. */
const nearness = (figure: string | null, where: Regions): number => {
  const at = figure === null ? 0 : regionsOf(where).findIndex(({ region }) => regionCovers(figure, region));
  return at === -1 ? Infinity : at;
};

/** What was said for the reader's own region before what was said for others. */
export const nearestFirst = (limits: readonly Limit[], where: Regions): readonly Limit[] =>
  limits.toSorted((a, b) => {
    const [left, right] = [nearness(a.basis.region, where), nearness(b.basis.region, where)];
    return left === right ? 0 : left - right;
  });

/** How far a figure of a food reaches that was published for one region; one that is said for none is the writer's own word. */
function reachOf(figure: string | undefined, where: Regions): Pick<Limit, "reach" | "whose"> {
  if (figure === undefined) return { reach: null, whose: null };
  const regions = regionsOf(where);
  if (regions.length === 0) return { reach: "REGION_NOT_GIVEN", whose: null };
  const at = nearness(figure, where);
  return { reach: at === 0 ? "REGION" : "REGION_WITHOUT_RULE", whose: regions[at]?.owner ?? null };
}

function writersLimit({ subject, madeDay }: KeptThing, rule: KeepingRule, question: KeepingQuestion): Limit {
  const { session } = question;
  const span = writerSpan(rule);
  return {
    basis: {
      of: subject,
      kind: "WRITER",
      rule: null,
      source: rule.source,
      sourced: rule.source.kind === "PUBLISHED",
      days: lastingDays(span),
      daysFrom: null,
      counted: { days: span.days, firstDay: span.firstDay, in: span.counts },
      printed: null,
      purpose: rule.purpose ?? (rule.place === "FREEZER" ? "QUALITY" : "SAFETY"),
      region: rule.region ?? null,
      audience: null,
      temperature: null,
      condition: rule.condition,
      byAnalogy: false,
      note: null,
    },
    place: rule.place,
    end: endOf(span, madeDay, session),
    span,
    madeDay,
    counts: span.counts,
    container: rule.container,
    ...reachOf(rule.region, question),
  };
}

function publishedLimit({ subject, madeDay }: KeptThing, ceiling: Ceiling, { session }: KeepingQuestion): Limit {
  const { rule, byAnalogy, reach } = ceiling;
  const span = plannedSpan(rule);
  return {
    basis: {
      of: subject,
      kind: "PUBLISHED",
      rule: rule.id,
      source: rule.source,
      sourced: true,
      days: lastingDays(rule),
      daysFrom: rule.daysFrom === null ? null : lastingDays(span),
      counted: { days: rule.days, firstDay: rule.firstDay, in: rule.counts },
      printed: rule.printed,
      purpose: rule.purpose,
      region: rule.region,
      audience: rule.audience,
      temperature: rule.temperature,
      condition: rule.condition,
      byAnalogy,
      note: rule.note,
    },
    place: rule.place,
    end: endOf(span, madeDay, session),
    span,
    madeDay,
    counts: rule.counts,
    container: null,
    reach,
    whose: ceiling.whose,
  };
}

/** The limit that ends first; of equals a published one, then the first. null for none. */
export function strictest(limits: readonly Limit[]): Limit | null {
  const published = (limit: Limit) => Number(limit.basis.kind !== "PUBLISHED");
  return limits.reduce<Limit | null>((best, next) => {
    if (best === null) return next;
    return (compareEnds(sortable(next), sortable(best)) || published(next) - published(best)) < 0 ? next : best;
  }, null);
}

/** Where it keeps longest outside the freezer (of equals the fridge), with what decides there; null if nobody says. */
export function mainPlace(limits: LimitsByPlace): Limit | null {
  const fridge = strictest(limits.get("FRIDGE") ?? []);
  const room = strictest(limits.get("ROOM") ?? []);
  if (fridge === null || room === null) return fridge ?? room;
  return compareEnds(sortable(room), sortable(fridge)) > 0 ? room : fridge;
}

const sortable = (limit: Limit) => ({ ...limit.end, counts: limit.counts });
