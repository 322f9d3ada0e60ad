export interface EngineOptions {
  /** The most points that one request may cost. */
  readonly costLimit: number;
  /** Whether requests may ask about the schema. Where they may not, errors suggest no names either. */
  readonly introspection: boolean;
  /** Milliseconds that a query may take. */
  readonly queryTime: number;
  /** Texts of the documents that are run, and no others; left out: any document is. */
  readonly registered?: readonly string[];
}

/** The cost is enough for fifty plans with all their lines, or one with everything there is to say about it. */
export const usualEngine: EngineOptions = { costLimit: 500_000, introspection: true, queryTime: 10_000 };

/** How much longer a mutation may take: a writer may save hundreds of documents at once. */
export const mutationPatience = 6;
