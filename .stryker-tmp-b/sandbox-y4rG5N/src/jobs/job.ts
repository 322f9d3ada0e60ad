// @ts-nocheck
import type { Deps } from "../services/deps.js";

/** Something done at a time of day instead of for a caller. Running it twice does no harm. */
export interface Job {
  readonly name: string;
  /** Five fields, read in the zone the worker is set to. */
  readonly cron: string;
  /** What it did, for the log. */
  run(deps: Deps): Promise<object>;
}
