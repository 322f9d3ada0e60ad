import type { UnitRow } from "./units/unit-row.js";
import { Fraction } from "fraction.js";
import type { Dimension, MeasureSystem, RationalText, UnitRef } from "../model/amount.js";
import { editDistance } from "./naming/edit-distance.js";
import { languageOf } from "./reader-locale.js";
import { dryForm, genericUnits, type GenericUnit } from "./units/generic-units.js";
import { pouredUnits } from "./units/poured-units.js";
import { NO_UNIT, unitWords, type UnitMeaning } from "./units/unit-words.js";
import { vesselUnits } from "./units/vessel-units.js";
import { weighedUnits } from "./units/weighed-units.js";

interface Unit {
  readonly id: UnitRef;
  /** A batch is no amount of anything until its component says what one gives. */
  readonly dimension: Dimension | "BATCH";
  /** g, ml or pieces of one unit, exactly. */
  readonly exact: RationalText;
  /** The same as the nearest double. */
  readonly factor: number;
}

const countedUnits: readonly UnitRow[] = [
  ["piece", "COUNT", "1"],
  ["dozen", "COUNT", "12"],
  ["batch", "BATCH", "1"],
];

const unit = ([id, dimension, written]: UnitRow): Unit => {
  const exact = new Fraction(written);
  return { id, dimension, exact: exact.toFraction(), factor: exact.valueOf() };
};

/** Every standard unit by id. */
export const standardUnits: ReadonlyMap<UnitRef, Unit> = new Map(
  [...weighedUnits, ...pouredUnits, ...vesselUnits, ...countedUnits].map((row) => [row[0], unit(row)]),
);

/** The unit with this id; null for `own:…` and for anything unknown. */
export const standardUnit = (id: UnitRef): Unit | null => standardUnits.get(id) ?? null;

const OWN = "own:";

/** `"own:clove"` to `"clove"`; null for a standard unit. */
export const ownMeasureName = (ref: UnitRef): string | null => (ref.startsWith(OWN) ? ref.slice(OWN.length) : null);

/** `"clove"` to `"own:clove"`. */
export const ownMeasureRef = (name: string): UnitRef => OWN + name;

interface UnitContext {
  /** BCP 47 tag; null: English. */
  readonly locale: string | null;
  readonly measures: MeasureSystem;
  /** What is measured: the US pint of dry goods is larger than that of liquids. */
  readonly form?: "dry" | "liquid" | null;
}

type FoundUnit =
  | { readonly kind: "FOUND"; readonly id: UnitRef }
  | { readonly kind: "AMBIGUOUS"; readonly candidates: readonly UnitRef[] };

const resolve = (meaning: UnitMeaning, context: UnitContext): FoundUnit => {
  if (!meaning.endsWith("?")) return { kind: "FOUND", id: meaning };
  const candidates = genericUnits[context.measures][meaning.slice(0, -1) as GenericUnit];
  const [first] = candidates;
  const dry = first === undefined ? undefined : dryForm[first];
  if (first !== undefined && context.measures === "US_CUSTOMARY" && dry !== undefined) {
    if (context.form === "dry") return { kind: "FOUND", id: dry };
    if (context.form === "liquid") return { kind: "FOUND", id: first };
  }
  return first !== undefined && candidates.length === 1
    ? { kind: "FOUND", id: first }
    : { kind: "AMBIGUOUS", candidates };
};

const wordsOf = (locale: string | null): ReadonlyMap<string, UnitMeaning> | undefined => unitWords[languageOf(locale)];

/**
 * A unit's id, name or abbreviation in the language of `locale` (en, de, fr, es, pl; always also English) to its id.
 * AMBIGUOUS where the plan's measures leave open which size is meant; null for a word that is no standard unit.
 */
export const findUnit = (word: string, context: UnitContext): FoundUnit | null => {
  const bare = word.endsWith(".") ? word.slice(0, -1) : word;
  if (standardUnits.has(bare)) return { kind: "FOUND", id: bare };
  const words = wordsOf(context.locale);
  const lower = bare.toLowerCase();
  const meaning = words?.get(bare) ?? words?.get(lower) ?? unitWords["en"]?.get(bare) ?? unitWords["en"]?.get(lower);
  return meaning === undefined || meaning === NO_UNIT ? null : resolve(meaning, context);
};

/** Longest word `nearestUnits` compares; longer ones are cut, so that its time is bounded. */
const NEAREST_WORD_MAX = 24;

/** Up to three unit ids that an unknown word may have meant, nearest first. `own` names are offered too. */
export const nearestUnits = (word: string, own: readonly string[] = []): readonly UnitRef[] => {
  const wanted = word.slice(0, NEAREST_WORD_MAX).toLowerCase();
  const limit = Math.max(1, Math.ceil(wanted.length / 3));
  const spellings: [string, UnitRef][] = [
    ...own.map((name): [string, UnitRef] => [name.toLowerCase(), ownMeasureRef(name)]),
    ...[...standardUnits.keys()].map((id): [string, UnitRef] => [id, id]),
    ...[...(unitWords["en"] ?? [])].map(([spelling, meaning]): [string, UnitRef] => [
      spelling.toLowerCase(),
      meaning.endsWith("?") ? (genericUnits.US_CUSTOMARY[meaning.slice(0, -1) as GenericUnit][0] ?? meaning) : meaning,
    ]),
  ];
  const scored = spellings
    .map(([spelling, id]) => ({ id, distance: editDistance(wanted, spelling, limit) }))
    .filter(({ distance }) => distance <= limit)
    .toSorted((a, b) => a.distance - b.distance);
  return [...new Set(scored.map(({ id }) => id))].slice(0, 3);
};
