import type { Measured, RationalText } from "./amount.js";
import type { FoodDensity, OwnMeasure } from "./food.js";
import type { Image } from "./image.js";
import type { KeepingRule } from "./keeping.js";
import type { Line } from "./line.js";
import type { Source } from "./source.js";
import type { WritersWords } from "./writers-words.js";

/** Sizes a component can be made in, in batches. `increment` null: any size of at least `min`. */
export interface BatchRule {
  readonly min: RationalText;
  /** The most one load (one pot, one tray) takes; more is made in several loads. null: no limit. */
  readonly max: RationalText | null;
  readonly increment: RationalText | null;
}

export interface Step {
  readonly id: string;
  readonly text: string;
  /** The text as it was written, where `text` is a translation: what is read out of words is read out of these. */
  readonly said?: string;
  /** Where `heatUpMinutes` is given, from the moment it boils or is hot. */
  readonly minutes: number;
  readonly attention: "HANDS_ON" | "UNATTENDED";
  /** Appliance code ("oven-shelf", "hob-ring", "blender", "sink"), or null. */
  readonly appliance: string | null;
  readonly temperatureC: number | null;
  /** Steps of the same component or meal that must be finished first. */
  readonly after: readonly string[];
  /** FIXED however much is made; PER_BATCH grows with it; PER_LOAD once for every `loadBatches` batches. */
  readonly grows: "FIXED" | "PER_BATCH" | "PER_LOAD";
  /** The writer says FIXED. Absent: nobody said how it grows, which is written FIXED too; `growthOf` then says how. */
  readonly growthStated?: true;
  readonly loadBatches: RationalText | null;
  /** Minutes that must, and may at most, pass between the last `after` step and this one. */
  readonly minWait: number;
  readonly maxWait: number | null;
  /** May be done the evening before the session (a soak). */
  readonly eveningBefore: boolean;
  /** Lines this step uses, so that a check can find a food that no step uses. */
  readonly lines: readonly string[];
  /** What it leaves in its appliance ("garlic"): another use that leaves something else waits for a wash. */
  readonly leaves?: string;
  /** Hands-on minutes of that wash; absent: none is needed. */
  readonly washMinutes?: number;
  /** Whether it pours off the water of the steps before it, with its share of their salt. Absent: not said. */
  readonly drains?: boolean;
  /** Minutes until one batch boils or is hot, before `minutes`: they grow with what is in the pot. */
  readonly heatUpMinutes?: number;
  /** Whether it puts what is made into the cold: what is eaten warm on the day is taken before it. Absent: see `chillingSteps`. */
  readonly chills?: boolean;
}

/** Another way to come by one batch of the component: a tin, a jar, a quicker method. */
export interface Route {
  readonly name: string;
  /** What readers see instead of its name, which goes on naming it, in a translation. */
  readonly called?: string;
  readonly kind: "MAKE" | "BUY";
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  readonly keepsAs: string | null;
  readonly keeping: readonly KeepingRule[];
}

export interface Component extends WritersWords {
  readonly slug: string;
  readonly title: string;
  readonly lines: readonly Line[];
  readonly steps: readonly Step[];
  /** What one batch gives, as measured by the writer or taken from a table. */
  readonly yield: { readonly amount: Measured; readonly source: Source };
  readonly batch: BatchRule;
  readonly densities: readonly FoodDensity[];
  readonly measures: readonly OwnMeasure[];
  readonly keepsAs: string | null;
  readonly keeping: readonly KeepingRule[];
  readonly routes: readonly Route[];
  /** Caution codes the writer knows to apply ("raw-egg"); data decides the text. */
  readonly cautions: readonly string[];
  readonly image?: Image;
}
