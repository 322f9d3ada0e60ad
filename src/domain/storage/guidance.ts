import type { BaseAmount } from "../model/amount.js";
import type { Component, Route } from "../model/component.js";
import type { Food } from "../model/food.js";
import type { KeepingClass, PublishedKeepingRule, RuleAudience, StoragePlace } from "../model/keeping.js";
import type { LineItem } from "../model/line.js";
import type { Meal } from "../model/plan.js";
import type { RegionOwner, Regions } from "../model/region.js";
import type { Source } from "../model/source.js";
import type { Warning } from "../problem.js";
import type { Advice } from "./advice.js";
import type { RuleReach } from "./ceilings.js";
import type { Moment } from "./keeping-window.js";

/** What keeps. */
export interface Subject {
  readonly kind: "COMPONENT" | "MEAL" | "FOOD";
  readonly slug: string;
}

export interface KeptLine {
  readonly item: LineItem;
  readonly amount: BaseAmount | null;
}

/** A component as it will be made: a scaled component is one. */
export interface KeptComponent {
  readonly component: Pick<Component, "slug" | "keepsAs" | "keeping">;
  /** null: made as written. */
  readonly route: Pick<Route, "kind" | "keepsAs" | "keeping"> | null;
  readonly lines: readonly KeptLine[];
  /** Days after the session; left out: in the session. */
  readonly madeDay?: number;
}

/** A meal as it will be eaten: a scaled meal is one. */
export interface KeptMeal {
  readonly meal: Pick<Meal, "slug" | "day" | "at">;
  readonly lines: readonly KeptLine[];
}

export type KeptFood = Pick<Food, "slug" | "keepsAs" | "keeping" | "alwaysThere" | "shelfStable" | "parts">;

export interface Kept {
  readonly components: readonly KeptComponent[];
  readonly meals: readonly KeptMeal[];
  /** Foods that no line uses are passed over. */
  readonly foods: readonly KeptFood[];
}

/** Without any region: the strictest of all, and the answer says so. */
export interface KeepingQuestion extends Regions {
  readonly rules: readonly PublishedKeepingRule[];
  /** The kinds of food that the rules speak of. */
  readonly classes: readonly KeepingClass[];
  /** Left out: people at home. */
  readonly audience?: Exclude<RuleAudience, "ANY">;
  /** ISO date. Rules must be in force on the later of this day and the day of the session. */
  readonly today: string;
  readonly session: Moment | null;
}

/** One thing that was weighed: the writer's word or a published rule. */
export interface Basis {
  /** Whose rule it is: the subject, or the part it inherits from. */
  readonly of: Subject;
  readonly kind: "WRITER" | "PUBLISHED";
  /** Id of the published rule. */
  readonly rule: string | null;
  readonly source: Source;
  /** Anybody can look it up. false: common practice, the writer's own experience, or invented. */
  readonly sourced: boolean;
  /** Days it gives after the day (or moment) of making; of a printed range the upper end. */
  readonly days: number;
  /** The lower end of a printed range, by which plans go; null: it prints none. */
  readonly daysFrom: number | null;
  /** As the rule itself counts: `firstDay` 1 calls the day of making day 1. */
  readonly counted: { readonly days: number; readonly firstDay: 0 | 1; readonly in: "DAYS" | "HOURS" };
  readonly printed: string | null;
  readonly purpose: "SAFETY" | "QUALITY";
  readonly region: string | null;
  readonly audience: RuleAudience | null;
  readonly temperature: string | null;
  readonly condition: string | null;
  /** No figure is published for this kind of food; that of a wider kind stands in. */
  readonly byAnalogy: boolean;
  readonly note: string | null;
  readonly decides: boolean;
}

interface StorageScope {
  /** The reader's own region; null: none was given. */
  readonly asked: string | null;
  /** Region of the authority that decides. */
  readonly used: string;
  readonly reach: RuleReach;
  /** Who named the region whose rules were used; null: nobody, the strictest of all regions stand in. */
  readonly whose: RegionOwner | null;
}

export interface StorageGuidance {
  readonly subject: Subject;
  readonly place: StoragePlace;
  /** After the day it is made (a meal: after the session); fractions where hours count. In the freezer: quality only. */
  readonly days: number;
  /** "3 to 4 days" is planned as 3, and this is the 4; null where what decides is no range. */
  readonly upToDays: number | null;
  readonly counts: "DAYS" | "HOURS";
  readonly purpose: "SAFETY" | "QUALITY";
  /** ISO date in the session's zone; null without a session. */
  readonly lastDay: string | null;
  /** The last second, as an ISO instant; null without a session. */
  readonly keepUntil: string | null;
  readonly container: string | null;
  readonly condition: string | null;
  /** All that was weighed, first what holds in the reader's region; the strictest decides. */
  readonly basis: readonly Basis[];
  /** The part that decides, when it is not the subject itself. */
  readonly limitedBy: Subject | null;
  /** Whose rules were used; null where only the writer speaks. */
  readonly scope: StorageScope | null;
  /** Slugs of meals at a later hour than it keeps until. Never for the freezer. */
  readonly tooLateFor: readonly string[];
  readonly advice: readonly Advice[];
}

export interface StorageAnswer {
  /** Components, meals, then foods, in the order given; the fridge or shelf before the freezer. */
  readonly guidance: readonly StorageGuidance[];
  /** Nobody says how long these keep. A thing with an unknown part is unknown itself. */
  readonly unknown: readonly { readonly subject: Subject; readonly part: Subject }[];
  /** KEEPING_CLASS_UNKNOWN for whatever names a class that is none; KEEPING_UNKNOWN for components, meals, foods and parts that wait for a later day; PART_TOO_OLD; REGION_NOT_GIVEN once. */
  readonly warnings: readonly Warning[];
}
