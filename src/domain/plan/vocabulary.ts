import type { CodeListName } from "../code-list-name.js";
import { spellings } from "../model/spellings.js";
import { assignedRegions } from "../model/region-codes.js";
import { readerLocale, type ReaderLocale } from "../quantity/reader-locale.js";
import { standardUnits } from "../quantity/unit.js";
import { unitName } from "../quantity/unit-name.js";
import { unitWords } from "../quantity/units/unit-words.js";
import { codeListsOf } from "./check/code-lists-of.js";
import type { RuleSet } from "./compile/rule-set.js";

/** The lists that a program can show in full; the numbers of the open food table are asked for one by one. */
type VocabularyName = Exclude<CodeListName, "usda-number"> | "unit" | "measures" | "place";

/** A code, and what people call it. */
export interface NamedCode {
  readonly code: string;
  readonly name: string;
}

interface VocabularyCode extends NamedCode {
  /** Other spellings that are taken for the code. */
  readonly spellings: readonly string[];
}

interface VocabularyList {
  readonly list: VocabularyName;
  readonly codes: readonly VocabularyCode[];
}

export interface ClosedLists {
  /** BCP 47 tag that the names were asked for in. */
  readonly locale: string;
  readonly lists: readonly VocabularyList[];
}

/** How documents write what the API has in capitals. */
const places = { FRIDGE: "fridge", FREEZER: "freezer", ROOM: "room" };
const measures = {
  US_CUSTOMARY: "us customary",
  METRIC_CUP: "metric cup",
  AUSTRALIAN: "australian",
  UK_IMPERIAL: "uk imperial",
  METRIC: "metric",
};

/**
 * Every closed list with its codes, by the same lists that documents are checked against. Regions, languages, currencies and units
 * are named in the reader's language; of the rest the names are English, or what the published rules call them.
 */
export function vocabulary(rules: Pick<RuleSet, "safety" | "allergens">, locale: string): ClosedLists {
  const { aisle, allergen, appliance, currency, language, caution, diet, ...more } = codeListsOf(rules);
  const classes = new Map(rules.safety.classes.map(({ code, what }) => [code, what]));
  const diets = new Map(rules.allergens.diets.map(({ code, name }) => [code, name]));
  const called = (type: "region" | "language" | "currency") => {
    const names = new Intl.DisplayNames([locale, "en"], { type });
    return (code: string): string => names.of(code) ?? code;
  };
  const reader = readerLocale(locale);
  const listed = (name: CodeListName, codes: readonly string[] = [], nameOf = plainName): VocabularyList => ({
    list: name as VocabularyName,
    codes: codes.map((code) => ({ code, name: nameOf(code), spellings: spellingsOf(name, code) })),
  });
  return {
    locale,
    lists: [
      listed("keeping-class", more["keeping-class"]?.codes, (code) => classes.get(code) ?? code),
      listed("allergen", allergen?.codes),
      listed("diet", diet?.codes, (code) => diets.get(code) ?? code),
      listed("caution", caution?.codes),
      listed("aisle", aisle?.codes),
      listed("appliance", appliance?.codes),
      { list: "unit", codes: [...standardUnits.keys()].map((code) => unitCode(code, reader)) },
      { list: "measures", codes: worded(measures) },
      { list: "place", codes: worded(places) },
      listed("region", assignedRegions, called("region")),
      listed("currency", currency?.codes, called("currency")),
      listed("language", language?.codes, called("language")),
    ],
  };
}

/** `tree-nut` is "tree nut". */
const plainName = (code: string): string => code.replaceAll("-", " ");

const spellingsOf = (list: CodeListName, code: string): readonly string[] =>
  Object.entries(spellings[list] ?? {}).flatMap(([written, meant]) => (meant === code ? [written] : []));

const worded = (words: Readonly<Record<string, string>>): readonly VocabularyCode[] =>
  Object.entries(words).map(([code, word]) => ({ code, name: word, spellings: [word] }));

/** A unit by its whole name, since a bare word may mean another size to the reader, and the words that always mean it. */
function unitCode(code: string, reader: ReaderLocale): VocabularyCode {
  const name = unitName(code, { value: 1, asFraction: false }, [], { measures: "METRIC", locale: reader });
  const words = [...(unitWords[reader.language] ?? new Map<string, string>())];
  return { code, name, spellings: words.flatMap(([word, meaning]) => (meaning === code ? [word] : [])) };
}
