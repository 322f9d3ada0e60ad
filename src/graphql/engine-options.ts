export interface EngineOptions {
  /** The most points that one request may cost. */
  readonly costLimit: number;
  /** Whether requests may ask about the schema. Where they may not, errors suggest no names either. */
  readonly introspection: boolean;
}

/** Enough for fifty plans with all their lines, or one with everything there is to say about it. */
export const usualEngine: EngineOptions = { costLimit: 500_000, introspection: true };
