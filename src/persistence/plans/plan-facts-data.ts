import type { ListedFacts } from "../../domain/plan/listing/listed-facts.js";
import type { SearchedTexts } from "../../domain/plan/listing/searched-texts.js";
import type { Page, PageRequest } from "../sql/page.js";

/** In which order plans are listed; of equal ones by the id of the revision. */
export type PlanOrder = "NEWEST" | "FIRST_PUBLISHED" | "SHORTEST_SESSION" | "LEAST_HANDS_ON";

/** What narrows a list of plans by their facts. Every part that is left out narrows nothing. */
export interface FactFilter {
  readonly publisher: string | null;
  readonly usesFood: string | null;
  readonly usesComponent: string | null;
  /** Each group names labels of which a plan has one. */
  readonly labels: readonly (readonly string[])[];
  /** Labels that a plan has none of. */
  readonly without: readonly string[];
  readonly maxSessionMinutes: number | null;
  readonly maxHandsOnMinutes: number | null;
  /** How many foods are to be bought at most. */
  readonly maxBought: number | null;
  /** Markets ("US USD"), the one that counts first: what it costs in the first of them that it has. */
  readonly maxCost: { readonly markets: readonly string[]; readonly amount: string } | null;
  readonly nutrients: readonly { readonly place: number; readonly min: number | null; readonly max: number | null }[];
  /** Each group names foods of which a plan uses one. */
  readonly uses: readonly (readonly string[])[];
  /** Those that hold most of what they have to be bought for come first; of so many candidates at most. */
  readonly atHand: { readonly foods: readonly string[]; readonly candidates: number } | null;
  readonly publishedAfter: Date | null;
  /** Words that a plan has all of, or words that begin so, or other forms of them. */
  readonly words: readonly SearchedWordGroup[];
}

export interface SearchedWordGroup {
  readonly word: string;
  /** Words nearly the same, which are taken where a plan has them. */
  readonly near: readonly string[];
}

/** A plan in force, with what is known of it. */
export interface ListedPlan<Summary> {
  readonly summary: Summary;
  /** null: not worked out yet. */
  readonly facts: StoredFacts | null;
  /** How many of the foods to be bought are at hand; null: nobody said what is. */
  readonly foodsAtHand: number | null;
}

export interface FactsToStore extends ListedFacts {
  /** Slugs of its foods and of those that they build on. */
  readonly foods: readonly string[];
  /** Checksum of what was said of them. */
  readonly knownBy: string;
}

export interface StoredFacts extends FactsToStore {
  readonly workedOutAt: Date;
}

/** One value of a facet and how many plans have it. */
export interface LabelCount {
  readonly label: string;
  readonly count: number;
}

interface DuePlan {
  readonly revisionId: string;
  readonly due: number;
}

export interface PlanFactsData<Summary> {
  /**
   * Stores what was worked out of a plan's newest revision in force, which is due no more unless something changed since it was found to be `due`.
   * false: it is not the newest any more.
   */
  save(
    revisionId: string,
    facts: FactsToStore,
    texts: readonly SearchedTexts[],
    at: Date,
    due: number,
  ): Promise<boolean>;
  /** Plans whose facts are to be worked out. */
  due(limit: number): Promise<readonly DuePlan[]>;
  /** What cannot be worked out is not tried again before something changes. */
  giveUp(plan: DuePlan): Promise<void>;
  /**
   * Notes the checksums of what facts are worked out from; what of it is another than was noted makes the facts due of the plans that it
   * concerns. Returns how many sources are others.
   */
  noteSources(sources: readonly FactSourceNow[]): Promise<number>;
  /** The same of every publisher. */
  notePublishers(): Promise<number>;
  /** Slugs of the foods that were noted. */
  notedFoods(): Promise<readonly string[]>;
  page(filter: FactFilter, order: PlanOrder, request: PageRequest): Promise<Page<ListedPlan<Summary>>>;
  /** How many plans match: exactly, up to `most`, else one more. */
  count(filter: FactFilter, most: number): Promise<number>;
  /** Labels of plans that match, with their counts among them; looks at so many plans at most, in no order. */
  labels(filter: FactFilter, most: number): Promise<readonly LabelCount[]>;
  /** Which of these words no published plan has, nor a word that begins so or is another form of it. */
  withoutPlans(words: readonly string[]): Promise<readonly string[]>;
  /** Words of published plans nearly the same as a word; with a publisher, of its plans. */
  nearWords(word: string, publisher: string | null, limit: number): Promise<readonly string[]>;
}

export interface FactSourceNow {
  readonly kind: "FOOD" | "RULES";
  /** Slug; of the rules nothing. */
  readonly name: string;
  readonly checksum: string;
}
