import { readFileSync } from "node:fs";
import type { MeasureSystem, RationalText } from "../../src/domain/model/amount.js";
import type { Food, FoodName, OwnMeasure } from "../../src/domain/model/food.js";
import type { Source } from "../../src/domain/model/source.js";
import { genericUnits, type GenericUnit } from "../../src/domain/quantity/units/generic-units.js";
import { standardUnit } from "../../src/domain/quantity/unit.js";
import { parseAmount } from "../../src/domain/quantity/parse.js";

const folder = "tests/fixtures/lines";
const source: Source = { kind: "COMMON_PRACTICE", title: "test parameter", section: null };
const CUP = 236.5882365;

/** What a cook means by a line; null: only a person can say. */
export interface MeantLine {
  readonly written: string;
  readonly locale: string;
  readonly measures: MeasureSystem;
  readonly meant: Meant | null;
}

export interface Meant {
  readonly food: string;
  readonly part: string | null;
  readonly amount: { readonly low: RationalText; readonly high: RationalText; readonly unit: string } | null;
  readonly preparation: string | null;
  /** null: not said, and not looked at. */
  readonly size: string | null;
  /** Of so many: what one of them weighs. */
  readonly each: { readonly low: RationalText; readonly high: RationalText; readonly unit: string } | null;
  readonly ready: boolean;
  readonly extra: boolean;
  readonly optional: boolean;
}

const shown = (name: string): readonly string[] =>
  readFileSync(`${folder}/${name}`, "utf8")
    .split("\n")
    .filter((line) => line !== "" && !/^# /.test(line));

const unitOf = (word: string, measures: MeasureSystem): string => {
  if (word === "pc") return "piece";
  const generic = ["cup", "tbsp", "tsp"].includes(word) ? genericUnits[measures][word as GenericUnit][0] : undefined;
  return generic ?? (standardUnit(word) === null ? `own:${word}` : word);
};

const meantOf = (text: string, measures: MeasureSystem): Meant | null => {
  const [head = "", ...marks] = text.split(";").map((part) => part.trim());
  if (head.startsWith("?")) return null;
  const words = head.split(" ");
  const [food = "", part = null] = (words.at(-1) ?? "").split(".");
  const [low = "", high = low] = (words[0] ?? "").split("..");
  const amountIn = (ends: string, unit: string) => {
    const [low = "", high = low] = ends.split("..");
    return { low, high, unit };
  };
  const said = (name: string): string | null =>
    marks.find((mark) => mark.startsWith(`${name}=`))?.slice(name.length + 1) ?? null;
  const [ends = "", unit = ""] = (said("each") ?? "").split(" ");
  return {
    ...{ food, part, preparation: said("prep"), size: said("size") },
    each: ends === "" ? null : amountIn(ends, unit),
    amount: low === "-" ? null : { low, high, unit: unitOf(words[1] ?? "", measures) },
    ...{ ready: marks.includes("ready"), extra: marks.includes("extra"), optional: marks.includes("optional") },
  };
};

/** The lines of one file of `tests/fixtures/lines`. */
export function meantLines(name: string): readonly MeantLine[] {
  let locale = "en";
  let measures: MeasureSystem = "METRIC";
  return shown(name).flatMap((line): readonly MeantLine[] => {
    if (line.startsWith("## ")) {
      [, locale = "en", measures = "METRIC"] = line.split(" ") as [string, string, MeasureSystem];
      return [];
    }
    const at = line.lastIndexOf(" => ");
    const escaped = line.slice(0, at).replace(/"/g, '\\"');
    const written = JSON.parse(`"${escaped}"`) as string;
    return [{ written, locale, measures, meant: meantOf(line.slice(at + 4), measures) }];
  });
}

const namesOf = (columns: readonly string[]): readonly FoodName[] =>
  (["en", "de", "fr", "es", "pl"] as const).flatMap((language, at): readonly FoodName[] => {
    const [one = "", many = one, also = ""] = (columns[at] ?? "").split("/");
    if (one === "") return [];
    return [{ language, region: null, one, many, also: also === "" ? [] : also.split(",") }];
  });

const listed = (column: string): readonly (readonly [string, string])[] =>
  column === ""
    ? []
    : column.split(/,(?! drained)/).map((each) => {
        const [name = "", value] = each.split("=");
        return value === undefined ? ["", name] : [name, value];
      });

const measureOf = ([written, grams]: readonly [string, string]): OwnMeasure => {
  const [name = "", one = name] = written.split(":");
  return { name, one, many: one, grams: Number(grams), millilitres: null, pieces: name === "piece" ? 1 : null, source };
};

/** The foods of `foods.txt`, which the lines may name. */
export function lineFoods(): readonly Food[] {
  return shown("foods.txt").map((row): Food => {
    const [
      slug = "",
      en = "",
      de = "",
      fr = "",
      es = "",
      pl = "",
      measures = "",
      densities = "",
      packs = "",
      edible = "",
      traits = "",
    ] = row.split("|").map((column) => column.trim());
    const own = listed(measures).map(measureOf);
    const dry = /dry>(\S*)/.exec(traits)?.[1];
    const parts = (/juice\+zest|white\+yolk/.exec(traits)?.[0] ?? "").split("+").filter((part) => part !== "");
    return {
      slug,
      names: namesOf([en, de, fr, es, pl]),
      aisle: dry === undefined ? "other" : "dry-goods",
      shoppedBy: traits.includes("count") ? "COUNT" : "MASS",
      ndbNo: null,
      densities: listed(densities).map(([form, grams]) => ({
        form: form === "" ? null : form,
        gramsPerMl: Number(grams) / CUP,
        source,
      })),
      measures: own,
      parts: parts.map((name) => ({ name, perPiece: { low: "30", high: "30", unit: "g" }, after: [], source })),
      edible: edible === "" ? [] : [{ form: null, share: Number(edible), source }],
      yields: dry === undefined || dry === "" ? [] : [{ food: dry, gramsPerGram: 2.3, source }],
      allergens: [],
      diets: [],
      nutrients: null,
      keepsAs: null,
      keeping: [],
      packs: listed(packs).map(([name, written], at) => {
        const content = parseAmount(written, { locale: "en", measures: "METRIC", own, path: [] });
        if (!content.ok) throw new Error(`${slug}: ${written}`);
        return {
          id: `${name}-${String(at)}`,
          name,
          content: content.value,
          price: null,
          region: null,
          seen: "2026-03-01",
          source,
        };
      }),
      alwaysThere: false,
    };
  });
}
