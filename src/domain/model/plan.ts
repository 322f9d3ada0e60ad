import type { MeasureSystem } from "./amount.js";
import type { Component, Step } from "./component.js";
import type { Food } from "./food.js";
import type { Image } from "./image.js";
import type { Line } from "./line.js";
import type { Translation } from "./translation.js";
import type { WordsOfPlan, WritersTexts } from "./writers-words.js";

/** Supper: where the writer gives a meal no hour. */
export const usualMealTime = "18:00";

/** An assembly eaten on one day. Its lines are for `serves` people. */
export interface Meal extends WritersTexts {
  readonly slug: string;
  readonly title: string;
  /** Days after the prep session; 0 is the day of the session. */
  readonly day: number;
  /** Hour of that day on which it is eaten, `HH:MM` on the clock of the session's place; left out: `usualMealTime`. */
  readonly at?: string;
  readonly serves: number;
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  readonly image?: Image;
}

/** What the session may use at the same time. Keys are appliance codes; `cooks` counts pairs of hands. */
export interface Kitchen {
  readonly cooks: number;
  readonly appliances: Readonly<Record<string, number>>;
}

/** A time on the clock of a place, as a writer says it. */
export interface PlanTime {
  /** `2026-12-24T06:00`; of an hour that the clocks repeat with its offset, `2026-10-25T02:30+01:00`. */
  readonly at: string;
  /** IANA name. */
  readonly zone: string;
}

export interface Plan extends WordsOfPlan {
  /** When its draft is to be published; part of no revision. Left out: when it is asked for. */
  readonly publishAt?: PlanTime;
  /** When it is to be withdrawn, and why, for readers; part of no revision. */
  readonly withdrawAt?: PlanTime & { readonly reason: string };
  readonly publisher: string;
  readonly slug: string;
  readonly title: string;
  readonly summary: string | null;
  /** BCP 47 tag of the writing. */
  readonly locale: string;
  readonly measures: MeasureSystem;
  readonly serves: number;
  readonly meals: readonly Meal[];
  readonly kitchen: Kitchen;
  /** The session length the writer promises, or null. */
  readonly promisedMinutes: number | null;
  /** ISO 3166 code of where it is written for; left out: nobody said. */
  readonly region?: string;
  /** ISO 4217 code its writer reckons in; left out: its publisher's. */
  readonly currency?: string;
  /** Claims the writer makes ("gluten-free"); a check holds them against the facts. */
  readonly claims: readonly string[];
  readonly image?: Image;
  /** On what terms others may use its texts: an SPDX identifier, an address or a sentence. Left out: nobody said. */
  readonly licence?: string;
}

/** A plan with everything it refers to: what a revision freezes and what the engine computes from. */
export interface PlanBundle {
  readonly plan: Plan;
  /** Every component reachable from the meals, any order. */
  readonly components: readonly Component[];
  /** Every food any line, swap or route refers to, any order. */
  readonly foods: readonly Food[];
  /** Its texts, and those of its components, in more languages; left out: in none. */
  readonly translations?: readonly Translation[];
  /** Only where it is shown in another language than it was written in: what stayed as it was. Never frozen. */
  readonly untranslated?: Untranslated;
}

/** Texts that a plan is shown with in the language it was written in. */
interface Untranslated {
  /** BCP 47 tag of that language. */
  readonly language: string;
  readonly texts: ReadonlySet<string>;
}
