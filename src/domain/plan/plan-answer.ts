import type { MeasureSystem } from "../model/amount.js";
import type { Household } from "../model/household.js";
import type { AllergenStatement } from "../nutrition/allergens.js";
import type { DietStatement } from "../nutrition/diets.js";
import type { PrepSession } from "../prep-session/session.js";
import type { Problem } from "../problem.js";
import type { TemperatureUnit } from "../quantity/temperature.js";
import type { CautionsFound } from "../storage/cautions.js";
import type { StorageAnswer } from "../storage/guidance.js";
import type { planNutrition } from "./contents/contents.js";
import type { ScaledPlan, ShoppingList } from "./scaled.js";
import type { DaySession } from "./session/split-session.js";

/** What a plan, or one of its meals, contains. */
export interface Contents {
  readonly allergens: AllergenStatement;
  readonly diets: readonly DietStatement[];
}

export interface PlanContents {
  readonly plan: Contents;
  /** By slug of the meal. */
  readonly meals: ReadonlyMap<string, Contents>;
}

/** For whom amounts and words are written out. */
export interface Reader {
  readonly measures: MeasureSystem;
  /** BCP 47 tag. */
  readonly locale: string;
  /** The reader asked for other measures than the writer's, so the writer's own units do not serve. */
  readonly converts: boolean;
  /** The reader named measures, even if they are the writer's: units of others in single lines do not serve either. */
  readonly asked?: boolean;
  /** Of the region the answer is for. Left out: degrees Celsius. */
  readonly degrees?: TemperatureUnit;
}

/** Which revision it is, and whose. The content is `scaled.bundle`. */
export interface Publication {
  readonly publisher: { readonly slug: string; readonly name: string };
  readonly slug: string;
  readonly revision: number;
  /** UUID of the plan: the same for all its revisions. */
  readonly planId: string;
  readonly firstPublishedAt: Date;
  /** When its newest revision in force was published; of a plan withdrawn as a whole, when this revision was withdrawn. */
  readonly updatedAt: Date;
  readonly publishedAt: Date;
  readonly withdrawnAt: Date | null;
  /** Why, for readers. */
  readonly withdrawnBecause: string | null;
  /** What it changed, for readers. */
  readonly changeNote: string | null;
  /** SHA-256 of the frozen document, hex. */
  readonly checksum: string;
}

/** Everything the service says about one plan for one household: what every way out is made from. */
export interface PlanAnswer {
  readonly publication: Publication;
  readonly household: Household;
  readonly reader: Reader;
  readonly scaled: ScaledPlan;
  readonly list: ShoppingList;
  /** null where the steps fit no order; `sessionProblems` then says why. */
  readonly session: PrepSession | null;
  readonly sessionProblems: readonly Problem[];
  /** The sessions it is best done in: that one, or several days' where it is none or more than a day's work. */
  readonly sessions: readonly DaySession[];
  readonly storage: StorageAnswer;
  readonly contents: PlanContents;
  readonly nutrition: ReturnType<typeof planNutrition>;
  readonly cautions: CautionsFound;
}
