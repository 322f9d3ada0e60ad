import { z } from "zod";
import type { InSlices } from "../../domain/counted-work.js";
import { sourceSchema } from "./amount.js";
import { list, named, text, type Json } from "./named-schema.js";
import type { planSchema } from "./plan.js";

type PlanJson = Json<typeof planSchema>;

/** Members to keep, by name; null: all that is in it. */
export type Selection = ReadonlyMap<string, Selection | null>;

export const briefPlanSchema = named(
  "BriefPlan",
  "The parts of a plan that `include` and `fields` name, with the members of `Plan`, and everything said once: foods stand as their slugs, components and meals as `component/` and `meal/` with theirs, units as their codes, and sources as their places in `sources`. Members that are null are left out, and so is the plan of a use, which is this one.",
  z.looseObject({
    names: z
      .record(z.string().max(2_020), text("What a reader calls it."))
      .describe("The foods, components and meals that are referred to: `pearl-barley`, `component/boiled-barley`."),
    sources: list(sourceSchema, "The sources that are referred to, counted from 0."),
  }),
);
type BriefPlanJson = Json<typeof briefPlanSchema>;

type Source = Json<typeof sourceSchema>;
type Members = Readonly<Record<string, unknown>>;

/** What is said of every shape that is sent once or shortened. */
const shapes = {
  thing: ["kind", "name", "slug"],
  unit: ["code", "dimension", "name"],
  source: ["kind", "section", "title"],
  plan: ["publisher", "slug", "title"],
} as const;

const hasShape = (members: Members, names: readonly string[]): boolean => {
  const own = Object.keys(members);
  return own.length === names.length && names.every((name) => name in members);
};

const prefixes: Readonly<Record<string, string>> = { FOOD: "", COMPONENT: "component/", MEAL: "meal/" };

/** The selected parts of a plan. Long lists are written in slices. */
export function* briefPlanInSlices(plan: PlanJson, selection: Selection): InSlices<BriefPlanJson> {
  const names: Record<string, string> = {};
  const sources: Source[] = [];
  const places = new Map<string, number>();
  const placeOf = (source: Source): number => {
    const key = JSON.stringify(source);
    const known = places.get(key);
    if (known !== undefined) return known;
    places.set(key, sources.length);
    return sources.push(source) - 1;
  };
  const keyOf = ({ kind, slug, name }: Members): string => {
    const key = `${prefixes[String(kind)] ?? ""}${String(slug)}`;
    names[key] = String(name);
    return key;
  };
  const brief = (value: unknown, selected: Selection | null): unknown => {
    if (Array.isArray(value)) return value.map((each) => brief(each, selected));
    if (typeof value !== "object" || value === null) return value;
    const members = value as Members;
    if (hasShape(members, shapes.thing)) return keyOf(members);
    if (hasShape(members, shapes.unit)) return members["code"];
    if (hasShape(members, shapes.source)) return placeOf(members as unknown as Source);
    return Object.fromEntries(
      Object.entries(members).flatMap(([name, member]) => {
        const below = selected === null ? null : selected.get(name);
        if (below === undefined || member === null || member === undefined) return [];
        if (name === "plan" && isThisPlan(member)) return [];
        return [[name, brief(member, below)]];
      }),
    );
  };
  const isThisPlan = (member: unknown): boolean =>
    typeof member === "object" &&
    member !== null &&
    hasShape(member as Members, shapes.plan) &&
    (member as Members)["slug"] === plan.slug;
  const found: Record<string, unknown> = {};
  for (const [name, below] of selection) {
    const member: unknown = plan[name as keyof PlanJson];
    if (member === null || member === undefined) continue;
    yield;
    if (!Array.isArray(member)) {
      found[name] = brief(member, below);
      continue;
    }
    const entries: unknown[] = [];
    for (const each of member as readonly unknown[]) {
      yield;
      entries.push(brief(each, below));
    }
    found[name] = entries;
  }
  return { ...found, names, sources };
}
