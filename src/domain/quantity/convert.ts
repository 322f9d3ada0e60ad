import type { BaseAmount, Dimension, Measured } from "../model/amount.js";
import type { FoodDensity, FoodName, OwnMeasure } from "../model/food.js";
import { toNumber } from "./rational.js";
import { ownMeasureName, standardUnit } from "./unit.js";

/** What a food or a component says about its own measures. Both have the first two fields. */
export interface MeasureFacts {
  readonly densities: readonly FoodDensity[];
  readonly measures: readonly OwnMeasure[];
  /** Of a food: what is shopped for by volume is poured, and never weighed for a reader who pours. */
  readonly shoppedBy?: Dimension;
  /** Of a food: a piece that bears its name bears the reader's name for it. */
  readonly names?: readonly FoodName[];
}

/** Which fact a conversion lacks. `missingText` writes it as one code. */
export type MissingFact =
  /** Grams of a millilitre, in this form. */
  | { readonly code: "DENSITY"; readonly form: string | null }
  | { readonly code: "GRAMS_OF_ONE_PIECE" }
  | { readonly code: "MILLILITRES_OF_ONE_PIECE" }
  /** The food has no measure of this name. */
  | { readonly code: "OWN_MEASURE"; readonly measure: string }
  /** A batch has an amount only through its component's yield. */
  | { readonly code: "YIELD_OF_ONE_BATCH" }
  | { readonly code: "UNIT"; readonly unit: string };

export type Conversion =
  { readonly ok: true; readonly amount: BaseAmount } | { readonly ok: false; readonly missing: MissingFact };

/** `"DENSITY"`, `"DENSITY:chopped"`, `"OWN_MEASURE:clove"`, `"GRAMS_OF_ONE_PIECE"`… for problems and warnings. */
export const missingText = (missing: MissingFact): string => {
  switch (missing.code) {
    case "DENSITY":
      return missing.form === null ? missing.code : `${missing.code}:${missing.form}`;
    case "OWN_MEASURE":
      return `${missing.code}:${missing.measure}`;
    case "UNIT":
      return `${missing.code}:${missing.unit}`;
    case "GRAMS_OF_ONE_PIECE":
    case "MILLILITRES_OF_ONE_PIECE":
    case "YIELD_OF_ONE_BATCH":
      return missing.code;
  }
};

/** Facts laid out for look-up. */
interface Converter {
  /** Grams of a millilitre by form; the key null is the food as bought. */
  readonly density: ReadonlyMap<string | null, number>;
  readonly measures: ReadonlyMap<string, OwnMeasure>;
  readonly gramsPerPiece: number | null;
  readonly millilitresPerPiece: number | null;
}

const positive = (value: number | null): value is number => value !== null && value > 0 && Number.isFinite(value);

/** The whole item's own fact first; else what another measure says about its share of a piece (a clove: 5 g, 1/10). */
const perPiece = (facts: MeasureFacts, fact: "grams" | "millilitres"): number | null => {
  const whole = facts.measures.find((measure) => measure.name === "piece")?.[fact] ?? null;
  if (positive(whole)) return whole;
  for (const measure of facts.measures) {
    const amount = measure[fact];
    if (positive(amount) && positive(measure.pieces)) return amount / measure.pieces;
  }
  return null;
};

/** The writer's own number beats a table's; among equals the first stands. */
const densities = (facts: MeasureFacts): ReadonlyMap<string | null, number> => {
  const byForm = new Map<string | null, number>();
  const writersFirst = facts.densities.toSorted(
    (a, b) => Number(b.source.kind === "WRITER") - Number(a.source.kind === "WRITER"),
  );
  for (const { form, gramsPerMl } of writersFirst) {
    if (positive(gramsPerMl) && !byForm.has(form)) byForm.set(form, gramsPerMl);
  }
  return byForm;
};

const compiled = new WeakMap<MeasureFacts, Converter>();

/** Lays a food's facts out for look-up; remembered for as long as the food itself lives. */
export const compileFacts = (facts: MeasureFacts): Converter => {
  const known = compiled.get(facts);
  if (known !== undefined) return known;
  const converter: Converter = {
    density: densities(facts),
    measures: new Map(facts.measures.toReversed().map((measure) => [measure.name, measure])),
    gramsPerPiece: perPiece(facts, "grams"),
    millilitresPerPiece: perPiece(facts, "millilitres"),
  };
  compiled.set(facts, converter);
  return converter;
};

/** Every own measure may always say how many pieces it is; the whole item is one. */
const piecesOf = (measure: OwnMeasure): number | null =>
  positive(measure.pieces) ? measure.pieces : measure.name === "piece" ? 1 : null;

interface PerUnit {
  readonly dimension: Dimension;
  readonly factor: number;
}

type Looked = { readonly ok: true; readonly per: PerUnit } | { readonly ok: false; readonly missing: MissingFact };

/** Amount of one unit. Of an own measure with several facts, the one in the `wanted` dimension, else grams, ml, pieces. */
const perUnit = (unit: string, converter: Converter, wanted: Dimension | null): Looked => {
  const standard = standardUnit(unit);
  if (standard !== null) {
    return standard.dimension === "BATCH"
      ? { ok: false, missing: { code: "YIELD_OF_ONE_BATCH" } }
      : { ok: true, per: { dimension: standard.dimension, factor: standard.factor } };
  }
  const name = ownMeasureName(unit);
  if (name === null) return { ok: false, missing: { code: "UNIT", unit } };
  const measure = converter.measures.get(name);
  if (measure === undefined) return { ok: false, missing: { code: "OWN_MEASURE", measure: name } };
  const facts: readonly (readonly [Dimension, number | null])[] = [
    ["MASS", measure.grams],
    ["VOLUME", measure.millilitres],
    ["COUNT", piecesOf(measure)],
  ];
  const usable = facts.flatMap(([dimension, factor]) => (positive(factor) ? [{ dimension, factor }] : []));
  const per = usable.find(({ dimension }) => dimension === wanted) ?? usable[0];
  return per === undefined ? { ok: false, missing: { code: "OWN_MEASURE", measure: name } } : { ok: true, per };
};

const times = ({ low, high }: BaseAmount, factor: number, dimension: Dimension): Conversion => ({
  ok: true,
  amount: { dimension, low: low * factor, high: high * factor },
});

/** Of one base unit (g, ml, piece), how many of another dimension's; or the fact that is missing. */
const factorBetween = (
  from: Dimension,
  to: Dimension,
  { density, gramsPerPiece, millilitresPerPiece }: Converter,
  form: string | null,
): number | MissingFact => {
  const gramsPerMl = density.get(form) ?? null;
  const grams: Record<Dimension, number | null> = {
    MASS: 1,
    VOLUME:
      gramsPerMl ??
      (form === null && gramsPerPiece !== null && millilitresPerPiece !== null
        ? gramsPerPiece / millilitresPerPiece
        : null),
    COUNT:
      gramsPerPiece ?? (gramsPerMl !== null && millilitresPerPiece !== null ? gramsPerMl * millilitresPerPiece : null),
  };
  if (millilitresPerPiece !== null && from === "COUNT" && to === "VOLUME") return millilitresPerPiece;
  if (millilitresPerPiece !== null && from === "VOLUME" && to === "COUNT") return 1 / millilitresPerPiece;
  const [have, want] = [grams[from], grams[to]];
  if (have !== null && want !== null) return have / want;
  if (gramsPerMl === null && (from === "VOLUME" || to === "VOLUME")) {
    return gramsPerPiece === null && (from === "COUNT" || to === "COUNT")
      ? { code: "MILLILITRES_OF_ONE_PIECE" }
      : { code: "DENSITY", form };
  }
  return { code: "GRAMS_OF_ONE_PIECE" };
};

/**
 * Through the food's own density (in this form; another form's is never used), its measures and the weight of one
 * piece, also one after the other (ml to g to pieces). `form` null is the food as bought.
 */
export const inDimension = (
  amount: BaseAmount,
  to: Dimension,
  facts: MeasureFacts,
  form: string | null,
): Conversion => {
  if (amount.dimension === to) return { ok: true, amount };
  const factor = factorBetween(amount.dimension, to, compileFacts(facts), form);
  return typeof factor === "number" ? times(amount, factor, to) : { ok: false, missing: factor };
};

const measuredIn = (measured: Measured, per: PerUnit): BaseAmount => ({
  dimension: per.dimension,
  low: toNumber(measured.low) * per.factor,
  high: toNumber(measured.high) * per.factor,
});

/**
 * A written amount in the base unit of its own dimension. An own measure gives grams before millilitres before pieces;
 * where the wanted dimension is known, `toDimension` uses the measure's own fact for it. `_form`: units and own measures
 * hold for every form, so it decides nothing here; callers hand it on to `inDimension`.
 */
export const toBase = (measured: Measured, facts: MeasureFacts, _form: string | null): Conversion => {
  const looked = perUnit(measured.unit, compileFacts(facts), null);
  return looked.ok ? { ok: true, amount: measuredIn(measured, looked.per) } : looked;
};

/** A written amount in one dimension: by the own measure's fact for it where there is one, else as `inDimension`. */
export const toDimension = (
  measured: Measured,
  to: Dimension,
  facts: MeasureFacts,
  form: string | null,
): Conversion => {
  const looked = perUnit(measured.unit, compileFacts(facts), to);
  return looked.ok ? inDimension(measuredIn(measured, looked.per), to, facts, form) : looked;
};

/** So many of a unit as an amount in one dimension, of the food as bought; null where a fact is missing. */
export const toDimensionOf = (count: number, unit: string, to: Dimension, facts: MeasureFacts): BaseAmount | null => {
  const looked = perUnit(unit, compileFacts(facts), to);
  if (!looked.ok) return null;
  const { dimension, factor } = looked.per;
  const converted = inDimension({ dimension, low: count * factor, high: count * factor }, to, facts, null);
  return converted.ok ? converted.amount : null;
};

/** How many of `unit` a base amount is; null where a fact is missing or the unit is unknown. For `presentInUnit`. */
export const inUnit = (
  amount: BaseAmount,
  unit: string,
  facts: MeasureFacts,
  form: string | null,
): { readonly low: number; readonly high: number } | null => {
  const looked = perUnit(unit, compileFacts(facts), amount.dimension);
  if (!looked.ok) return null;
  const converted = inDimension(amount, looked.per.dimension, facts, form);
  if (!converted.ok) return null;
  return { low: converted.amount.low / looked.per.factor, high: converted.amount.high / looked.per.factor };
};
