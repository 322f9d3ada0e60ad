import type { Dimension, UnitRef } from "../../model/amount.js";

/** id, dimension, and g, ml or pieces of one as a decimal or a ratio. */
export type UnitRow = readonly [id: UnitRef, dimension: Dimension | "BATCH", exact: string];
