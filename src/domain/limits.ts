/** The most the engine takes on. Beyond these it refuses with a typed problem instead of running out of time or memory. */
export const limits = {
  /** Servings of one plan. */
  servings: 1_000_000,
  /** Meals of one plan. */
  meals: 200,
  /** Components a plan may reach. */
  components: 5_000,
  /** Lines over all meals, components and routes of one plan. */
  lines: 20_000,
  foods: 20_000,
  /** Characters of a slug, id, title or written line. */
  text: 2_000,
  /** One amount in base units (g, ml, pieces): a thousand tonnes. */
  amount: 1e9,
  /** Batches of one component. */
  batches: 1e7,
  /** Days between the session and a meal. */
  day: 366,
} as const;

/** Two computed amounts that differ by less than this share are the same amount: doubles carry about 16 digits. */
export const sameShare = 1e-9;

/** `from - taken`, never negative; the last digits of a double are nothing rather than a crumb. */
export const restOf = (from: number, taken: number): number => (from - taken <= from * sameShare ? 0 : from - taken);
