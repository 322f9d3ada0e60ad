import { Temporal } from "temporal-polyfill";
import type { Component } from "../../domain/model/component.js";
import type { Food } from "../../domain/model/food.js";
import type { OwnedRegion } from "../../domain/model/region.js";
import { failed, ok, type Result, type Warning } from "../../domain/problem.js";
import type { Kept, StorageGuidance, Subject } from "../../domain/storage/guidance.js";
import { keptComponent, storageGuidance } from "../../domain/storage/storage-guidance.js";
import type { Clock } from "../deps.js";
import type { RuleReader } from "./guide-storage.js";
import { readRegion } from "./read-region.js";
import { readSessionStart, type GivenStart } from "./read-session-start.js";
import { utcDay } from "../../domain/utc-day.js";

/** What a caller says of where and when a thing is kept. All of it may be left out. */
interface GivenKeeping {
  /** ISO 3166 code; left out: the strictest rules of all regions. */
  readonly region?: string | null | undefined;
  /** Of the plan it belongs to, and that plan's publisher, where the caller names none. */
  readonly regions?: readonly OwnedRegion[];
  /** When it was made or bought. */
  readonly from?: GivenStart | null | undefined;
  /** Where `from` stands among the caller's arguments. */
  readonly fromName: string;
  readonly audience: "HOUSEHOLD" | "FOOD_SERVICE";
}

export interface KeptAlone {
  /** Where it is best kept first; none: nobody says how long it or a part of it keeps. */
  readonly guidance: readonly StorageGuidance[];
  readonly notes: readonly Warning[];
}

/** How long a food keeps on its own. Asked for by name, it is answered even where every house has it. */
export const guideFood = (food: Food, given: GivenKeeping, clock: Clock, readRules: RuleReader) =>
  guideAlone(
    { kind: "FOOD", slug: food.slug },
    { components: [], meals: [], foods: [{ ...food, alwaysThere: false }] },
    given,
    clock,
    readRules,
  );

/** How long a component keeps, made as written. `all`: it and those it is made from. */
export const guideComponent = (
  { slug }: Component,
  all: readonly Component[],
  given: GivenKeeping,
  clock: Clock,
  readRules: RuleReader,
) =>
  guideAlone(
    { kind: "COMPONENT", slug },
    { components: all.map(keptComponent), meals: [], foods: [] },
    given,
    clock,
    readRules,
  );

/** By the rules of today, or of the day it is made where that is later. */
async function guideAlone(
  { kind, slug }: Subject,
  kept: Kept,
  given: GivenKeeping,
  clock: Clock,
  readRules: RuleReader,
): Promise<Result<KeptAlone>> {
  const region = readRegion(given.region, ["region"]);
  const from = given.from ? readSessionStart(given.from, [given.fromName]) : ok(null);
  if (!region.ok || !from.ok) return failed([region, from].flatMap((read) => (read.ok ? [] : read.problems)));
  const today = utcDay(clock());
  const session = from.value;
  const made =
    session && Temporal.Instant.from(session.start).toZonedDateTimeISO(session.zone).toPlainDate().toString();
  const { keeping: rules, classes } = await readRules(made !== null && made > today ? made : today);
  const { audience } = given;
  const own: readonly OwnedRegion[] = region.value === null ? [] : [{ region: region.value, owner: "READER" }];
  const regions = [...own, ...(given.regions ?? [])];
  const where = { region: regions[0]?.region ?? null, regions };
  const answer = storageGuidance(kept, { rules, classes, ...where, audience, today, session });
  const guidance = answer.guidance.filter(({ subject }) => subject.kind === kind && subject.slug === slug);
  const used = guidance.flatMap(({ scope }) => (scope?.reach === "REGION_NOT_GIVEN" ? [scope.used] : []));
  const note: Warning = { code: "REGION_NOT_GIVEN", path: [], used: [...new Set(used)].sort().join(", ") };
  return ok({ guidance, notes: used.length > 0 ? [note] : [] });
}
