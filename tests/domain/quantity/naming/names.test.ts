import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { readBaseFolder } from "../../../../src/app/setup/read-base-folder.js";
import { compileFoodNames, findFood, type FoodNames } from "../../../../src/domain/quantity/food-name.js";
import { nearestFoods } from "../../../../src/domain/quantity/naming/nearest-foods.js";

interface Row {
  readonly language: string;
  readonly region: string | null;
  readonly words: string;
  readonly meant: string;
}

const rows = readFileSync("tests/fixtures/names/names.txt", "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"))
  .map((line): Row => {
    const [locale = "", words = "", meant = ""] = line.split(" | ");
    const [language = "", region = null] = locale.split("-");
    return { language, region, words, meant };
  });

describe("names as cooks write them", () => {
  let names: FoodNames;
  beforeAll(async () => {
    names = compileFoodNames((await readBaseFolder("seeds")).foods.map((food) => ({ ...food, base: true })));
  }, 60_000);

  const said = ({ words, language, region }: Row): string => {
    const match = findFood(names, words, language, region);
    return match.kind === "FOUND" ? match.slug : match.kind === "AMBIGUOUS" ? `? ${match.slugs.join(" ")}` : "-";
  };

  function fault(row: Row): string | null {
    const got = said(row);
    const [mark = "", ...slugs] = row.meant.split(" ");
    const offered = nearestFoods(names, row.words, row.language, 3);
    const holds = (): boolean => slugs.every((slug) => got.split(" ").includes(slug));
    const isMet =
      mark === "?"
        ? got.startsWith("? ") && holds()
        : mark === "??"
          ? slugs.includes(got) || got.startsWith("? ")
          : mark === "~"
            ? got === "-" && offered.includes(slugs[0] ?? "")
            : got === row.meant;
    return isMet ? null : `${row.language} "${row.words}": ${got}, not ${row.meant}; offered ${offered.join(", ")}`;
  }

  it("are found, asked about, offered or left alone", () => {
    const faults = rows.flatMap((row) => fault(row) ?? []);
    console.info(`${rows.length - faults.length} of ${rows.length} names as meant`);
    expect(faults).toEqual([]);
  });
});
