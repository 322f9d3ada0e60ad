import type { KeepingRule, PublishedKeepingRule } from "../../../src/domain/model/keeping.js";
import type { Source } from "../../../src/domain/model/source.js";
import type {
  KeepingQuestion,
  Kept,
  KeptComponent,
  KeptFood,
  KeptLine,
  KeptMeal,
  StorageAnswer,
  StorageGuidance,
} from "../../../src/domain/storage/guidance.js";
import { storageGuidance } from "../../../src/domain/storage/storage-guidance.js";
import { publishedRules } from "../../imports/rules/published-rules.js";

export const rules = publishedRules.safety.keeping;
export const classes = publishedRules.safety.classes;

const writer: Source = { kind: "WRITER", title: "The writer's own measure", section: null };
export const practice: Source = { kind: "COMMON_PRACTICE", title: "Common practice, no source", section: null };

/** `says("FRIDGE", 5)` */
export const says = (
  place: KeepingRule["place"],
  days: number,
  facts: Partial<Pick<KeepingRule, "container" | "condition" | "source">> = {},
): KeepingRule => ({ place, days, container: null, condition: null, source: writer, ...facts });

export const uses = (...slugs: readonly string[]): readonly KeptLine[] =>
  slugs.map((slug) => ({
    item: slug.startsWith("food:")
      ? { kind: "FOOD", food: slug.slice(5), part: null }
      : { kind: "COMPONENT", component: slug },
    amount: { dimension: "MASS", low: 100, high: 120 },
  }));

export const kept = (
  slug: string,
  keepsAs: string | null,
  keeping: readonly KeepingRule[] = [],
  facts: Partial<Pick<KeptComponent, "lines" | "madeDay" | "route">> = {},
): KeptComponent => ({ component: { slug, keepsAs, keeping }, route: null, lines: [], ...facts });

export const eaten = (slug: string, day: number, ...parts: readonly string[]): KeptMeal => ({
  meal: { slug, day },
  lines: uses(...parts),
});

export const bought = (slug: string, keepsAs: string | null, keeping: readonly KeepingRule[] = []): KeptFood => ({
  slug,
  keepsAs,
  keeping,
  alwaysThere: false,
  parts: [],
});

export const question = (facts: Partial<KeepingQuestion> = {}): KeepingQuestion => ({
  rules,
  classes,
  region: "US",
  today: "2026-11-25",
  session: null,
  ...facts,
});

export const ask = (things: Partial<Kept>, facts: Partial<KeepingQuestion> = {}): StorageAnswer =>
  storageGuidance({ components: [], meals: [], foods: [], ...things }, question(facts));

export const guidanceOf = (answer: StorageAnswer, slug: string, place?: StorageGuidance["place"]): StorageGuidance => {
  const found = answer.guidance.find(
    (each) => each.subject.slug === slug && (place === undefined || each.place === place),
  );
  if (found === undefined) throw new Error(`no guidance for ${slug}: ${JSON.stringify(answer.unknown)}`);
  return found;
};

/** A rule made up for a test. */
export const ruled = (facts: Partial<PublishedKeepingRule>): PublishedKeepingRule => ({
  id: "test-rule",
  keepsAs: "leftovers",
  place: "FRIDGE",
  days: 4,
  daysFrom: null,
  counts: "DAYS",
  firstDay: 0,
  printed: "4 days",
  purpose: "SAFETY",
  audience: "HOUSEHOLD",
  region: "US",
  condition: null,
  temperature: null,
  inForceFrom: null,
  inForceTo: null,
  publisher: "test parameter",
  note: null,
  source: { kind: "PUBLISHED", title: "test parameter", section: null },
  ...facts,
});
