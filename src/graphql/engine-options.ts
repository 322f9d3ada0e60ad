import type { Actor } from "../services/actor.js";
import type { Refusal } from "./refusal.js";

/**
 * Asked once for every operation that may run, with its points, before any of it runs: null, or why it may not now. It may keep
 * account of the points.
 */
export type Admit = (actor: Actor, address: string, cost: number) => Refusal | null | Promise<Refusal | null>;

export interface EngineOptions {
  /** The most points that one request may cost. */
  readonly costLimit: number;
  /** Whether requests may ask about the schema. Where they may not, errors suggest no names either. */
  readonly introspection: boolean;
  /** Left out: everything is admitted. */
  readonly admit?: Admit;
}

/** Enough for fifty plans with all their lines, or one with everything there is to say about it. */
export const usualEngine: EngineOptions = { costLimit: 500_000, introspection: true };
