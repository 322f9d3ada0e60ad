import type { Step } from "../model/component.js";
import type { Kitchen } from "../model/plan.js";
import type { Work } from "../counted-work.js";

/** A step whose growth is settled: what the writer left open has its default here. */
export interface SessionStep extends Step {
  /** Pots or trays it is divided into; absent: as `grows` and `loadBatches` say. */
  readonly loads?: number;
  /** It is done for each load by itself, also of what only follows it: close before the heat, and from when a load comes. */
  readonly byLoad?: boolean;
}

/** What is made: a component, or the finishing of a meal eaten on the day of the session. */
export interface SessionWork {
  readonly kind: "COMPONENT" | "MEAL";
  readonly slug: string;
  readonly title: string;
  readonly steps: readonly SessionStep[];
  /** Of a component its batches; of a meal servings / serves. Any positive number. */
  readonly batches: number;
  /** Pots or trays it is made in: counts the loads of a PER_LOAD step that does not name its own. */
  readonly loads: number;
  /** Components it draws on, by the line that does. They must be finished before the steps that use the line. */
  readonly uses: readonly {
    readonly line: string;
    readonly component: string;
    /** It is taken warm, before it is put into the cold. */
    readonly warm?: boolean;
  }[];
  /** Steps that put it into the cold. */
  readonly chills?: readonly string[];
}

export interface StepRef {
  readonly kind: "COMPONENT" | "MEAL";
  readonly slug: string;
  readonly step: string;
}

/**
 * From the end of each load of `from` (or its start), at most `max` minutes may pass until the work of `to` on that load
 * begins or ends.
 * It holds nothing back that is done before `from`.
 */
export interface SessionLimit {
  readonly from: StepRef;
  readonly to: StepRef;
  readonly max: number;
  /** Absent: END. */
  readonly since?: "START" | "END";
  readonly until: "START" | "END";
}

export interface SessionInput {
  readonly work: readonly SessionWork[];
  readonly kitchen: Kitchen;
  /** When the session begins: an ISO instant and an IANA zone. null: only minutes are known. */
  readonly start: { readonly instant: string; readonly zone: string } | null;
  /** Local times (HH:MM) on the day before between which evening work is begun; 20:00 to 22:00 when null. */
  readonly evening: { readonly from: string; readonly to: string } | null;
  /** Orders beyond the steps' own, such as zest before juice. */
  readonly extraOrder: readonly { readonly before: StepRef; readonly after: StepRef }[];
  /** Greatest waits beyond the steps' own, such as two hours from the heat into the fridge. */
  readonly limits?: readonly SessionLimit[];
}

export interface SessionBudget {
  /** Dead ends the search may meet for each of its two aims; absent: enough for a proof up to 30 tasks, 5,000 beyond. */
  readonly conflictLimit?: number;
  /** Asked now and then; true ends the search with the best session so far. */
  readonly shouldStop?: () => boolean;
  /** Told of the steps that the search takes; it may end all of it. */
  readonly work?: Work;
  /** Whether to find out which waits stand in the way where not all can be kept; absent: yes. */
  readonly explain?: boolean;
}

/** Minutes count from the start of the session; work of the evening before has negative ones. */
export interface SessionTask {
  readonly id: string;
  readonly kind: "STEP" | "WASH";
  readonly of: { readonly kind: "COMPONENT" | "MEAL"; readonly slug: string; readonly title: string };
  readonly step: string;
  readonly text: string;
  readonly attention: "HANDS_ON" | "UNATTENDED";
  readonly startMinute: number;
  readonly endMinute: number;
  /** ISO with the zone's offset, when the session has a start. */
  readonly startsAt: string | null;
  readonly endsAt: string | null;
  /** Numbers of the cooks whose hands it takes, from 1. */
  readonly cooks: readonly number[];
  readonly appliance: string | null;
  /** Which shelf, ring or machine of that kind, from 1. */
  readonly lanes: readonly number[];
  readonly temperatureC: number | null;
  /** Loads `first` to `last` of `of`; null for a step that is done once. */
  readonly load: { readonly first: number; readonly last: number; readonly of: number } | null;
  readonly eveningBefore: boolean;
}

/** Why a task starts no earlier: what it waits for, and the tasks (ids) that it waits for. */
export interface StartReason {
  readonly kind: "BEGINNING" | "PRECEDENCE" | "HANDS" | "APPLIANCE" | "TEMPERATURE" | "GREATEST_WAIT" | "CHOICE";
  readonly tasks: readonly string[];
}

export interface CriticalTask {
  readonly task: string;
  readonly because: StartReason;
}

interface TaskOrder {
  readonly before: string;
  readonly after: string;
  readonly minWait: number;
  /** null: no limit, or one that counts from the last of several tasks. */
  readonly maxWait: number | null;
}

export interface PrepSession {
  /** By start, then by id. */
  readonly tasks: readonly SessionTask[];
  /** From the start of the session to the last finish. */
  readonly totalMinutes: number;
  /** Minutes of hands, on the day and the evening before. */
  readonly handsOnMinutes: number;
  /** When the last hands-on task ends. */
  readonly handsFreeMinute: number;
  /** From the start to the last finish: each task and why it could not start earlier. */
  readonly criticalPath: readonly CriticalTask[];
  readonly order: readonly TaskOrder[];
  /** Ids of the tasks done the evening before, by start. */
  readonly eveningBefore: readonly string[];
  /** Appliances that steps use and the kitchen does not list: one of each was assumed. */
  readonly assumedAppliances: readonly string[];
  /** No session is shorter. */
  readonly optimal: boolean;
  /** And none of this length frees the hands earlier. */
  readonly handsFreeOptimal: boolean;
  /** A proved least length in minutes; `gap` = (total - this) / this. */
  readonly lowerBoundMinutes: number;
  readonly gap: number;
}
