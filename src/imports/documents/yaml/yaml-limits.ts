/** Far above what a writer needs, far below what hurts: a text beyond one of them is refused before anything is built of it. */
export const yamlLimits = {
  characters: 2_000_000,
  nesting: 24,
  /** Values that one anchor may unfold into. */
  aliases: 100,
  /** Aliases, anchors, tags and directives of a text, together. */
  references: 1_000,
  /** Places at which a text is no YAML. */
  faults: 200,
  /** Empty ones count. */
  documents: 300,
  keys: 50_000,
  /** Entries of lists and maps. */
  entries: 100_000,
  /** The library builds a document in one piece. Aliases unfolded, it may have as many again. */
  "entries of one document": 25_000,
  /** Words and marks: everything but spaces, line ends and remarks. */
  tokens: 250_000,
  /** Each is kept several times while the value is put together, and no text may be as long as that many. */
  "lines of one value": 10_000,
} as const;

export type YamlLimit = keyof typeof yamlLimits;
