import type { Image } from "./image.js";

/** What a publisher says of itself, in a document of its own. Readers see it, and its plans are answered by it. */
export interface PublisherFacts {
  /** ISO 3166 code of where it publishes: for plans that name no region, and readers who give none. */
  readonly region: string | null;
  /** ISO 4217 code of its prices. */
  readonly currency: string | null;
  /** BCP 47 tags of the languages it publishes in. */
  readonly languages: readonly string[];
  readonly description: string | null;
  /** Left out or null: none. */
  readonly image?: Image | null | undefined;
  /** Its own place on the web: http or https. Left out or null: none. */
  readonly website?: string | null | undefined;
}
