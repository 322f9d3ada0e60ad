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
  /** Minutes of one step or wait: thirty days. */
  minutes: 43_200,
  /** Pairs of hands, and pieces of one appliance, in one kitchen. */
  cooks: 20,
  appliances: 100,
  /** Steps over all meals, components and routes of one plan. */
  steps: 20_000,
} as const;

/** Bounds of the facts of a food, within which nothing computed from them overflows. */
export const factLimits = {
  /** Names, parts, packs… of one food; swaps of one line. */
  entries: 1_000,
  /** Grams of a millilitre, grams for a gram: nothing that is eaten is near either end. */
  factor: { min: 1e-6, max: 1e6 },
  /** Least share of a food that is left after trimming. */
  leastShare: 1e-3,
} as const;

/** Two computed amounts that differ by less than this share are the same amount: doubles carry about 16 digits. */
export const sameShare = 1e-9;

/** `from - taken`, never negative; the last digits of a double are nothing rather than a crumb. */
export const restOf = (from: number, taken: number): number => (from - taken <= from * sameShare ? 0 : from - taken);
