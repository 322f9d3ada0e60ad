import type { MeasureSystem, UnitRef } from "../model/amount.js";
import type { ReaderLocale } from "./reader-locale.js";
import { severalForm } from "./food-name.js";
import { countWords } from "./parse/words/count-words.js";
import type { SaidMeasure } from "./piece-words.js";
import { ownMeasureName, standardUnit } from "./unit.js";
import { genericUnits, type GenericUnit } from "./units/generic-units.js";
import { measureNames, systemNames, unitNames, vesselName, type NameForms } from "./units/unit-names.js";

/** A number as it will be shown. Below one, a vulgar fraction takes the singular in all languages but Polish. */
export interface ShownNumber {
  readonly value: number;
  readonly asFraction: boolean;
}

const category = ({ value, asFraction }: ShownNumber, locale: ReaderLocale): string =>
  asFraction && value > 0 && value < 1 && locale.language !== "pl" ? "one" : locale.plural(value);

const pick = (names: NameForms, shown: ShownNumber, locale: ReaderLocale): string =>
  typeof names === "string" ? names : (names[category(shown, locale)] ?? names["other"] ?? "");

/** Sizes further apart than this are told apart by name: an Australian spoon, never a label cup. */
const SAME_SIZE = 0.05;

/** Whether the reader would take the bare word for another size. */
const isForeign = (id: UnitRef, generic: string, measures: MeasureSystem): boolean => {
  const own = genericUnits[measures][generic as GenericUnit];
  if (own === undefined) return false;
  const [size, ownSize] = [standardUnit(id)?.factor, standardUnit(own[0] ?? "")?.factor];
  if (own.length === 1 || own[0] === id) {
    return size === undefined || ownSize === undefined || Math.abs(size / ownSize - 1) > SAME_SIZE;
  }
  return true;
};

const standardName = (id: UnitRef, shown: ShownNumber, measures: MeasureSystem, locale: ReaderLocale): string => {
  const own = unitNames.get(id) ?? vesselName(id);
  if (own !== null) return pick(own[locale.language], shown, locale);
  const dash = id.indexOf("-");
  const generic = id.slice(dash + 1);
  const names = unitNames.get(generic);
  const name = names === undefined ? id : pick(names[locale.language], shown, locale);
  const system = systemNames[id.slice(0, dash)]?.[locale.language];
  if (system === undefined || !isForeign(id, generic, measures)) return name;
  return locale.language === "en" ? `${system} ${name}` : `${name} (${system})`;
};

/**
 * A unit's name for a shown number, in the reader's language. A food's own measure has its own two words. Units whose
 * name would mean another size to this reader say whose they are ("Australian tbsp").
 */
export const unitName = (
  ref: UnitRef,
  shown: ShownNumber,
  own: readonly SaidMeasure[],
  reader: { readonly measures: MeasureSystem; readonly locale: ReaderLocale },
): string => {
  const name = ownMeasureName(ref) ?? (ref === "piece" ? "piece" : null);
  const measure = name === null ? undefined : own.find((each) => each.name === name);
  if (measure === undefined)
    return name === null || ref === "piece" ? standardName(ref, shown, reader.measures, reader.locale) : name;
  const { one, many } = measure;
  const known = reader.locale.language === "en" ? undefined : measureNames.get(one);
  if (known !== undefined) return pick(known[reader.locale.language], shown, reader.locale);
  const plural = category(shown, reader.locale);
  if (plural === "one") return one;
  return one === many ? (englishPlural(one) ?? many) : severalForm(measure, plural);
};

/** Of a usual measure whose writer named only one of it: 2 cans. null: no word that is known. */
const englishPlural = (one: string): string | null => {
  const words = [...(countWords["en"] ?? [])];
  return words.find(([word, counted]) => counted.one === one && word !== one)?.[0] ?? null;
};
