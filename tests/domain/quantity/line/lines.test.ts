import { describe, expect, it } from "vitest";
import { compileFoodNames } from "../../../../src/domain/quantity/food-name.js";
import { readLine, type TakenLine } from "../../../../src/domain/quantity/read-line.js";
import { lineFoods, meantLines, type Meant, type MeantLine } from "../../../kit/line-fixtures.js";

const foods = compileFoodNames(lineFoods());

const read = ({ written, locale, measures }: MeantLine) => readLine(written, { locale, measures, region: null, foods });

/** What of a line was taken otherwise than it is meant; empty where it is right. */
function wrong(taken: TakenLine, meant: Meant | null): readonly string[] {
  if (meant === null) return [`taken as ${JSON.stringify(taken)}, and only a person can say`];
  const looked: readonly (readonly [string, unknown, unknown])[] = [
    ["food", taken.food, meant.food],
    ["part", taken.part, meant.part],
    ["amount", taken.amount, meant.amount],
    ["each", taken.each, meant.each],
    ["preparation", taken.preparation, meant.preparation],
    ["measured", taken.measured, meant.ready ? "READY" : "AS_BOUGHT"],
    ["extra", taken.extra, meant.extra],
    ["optional", taken.optional, meant.optional],
    ...(meant.size === null ? [] : [["size", taken.size, meant.size] as const]),
  ];
  return looked.flatMap(([what, is, should]) =>
    JSON.stringify(is) === JSON.stringify(should)
      ? []
      : [`${what}: ${JSON.stringify(is)}, meant ${JSON.stringify(should)}`],
  );
}

interface Tally {
  readonly right: number;
  readonly asked: number;
  readonly silentlyWrong: readonly string[];
  /** Lines with one meaning that a person is asked about all the same. */
  readonly needlessly: readonly string[];
}

function tally(lines: readonly MeantLine[]): Tally {
  const taken = lines.map((line) => ({ line, read: read(line) }));
  const silentlyWrong = taken.flatMap(({ line, read: { taken: found } }) => {
    const faults = found === null ? [] : wrong(found, line.meant);
    return faults.length === 0 ? [] : [`${line.locale} "${line.written}": ${faults.join("; ")}`];
  });
  const asked = taken.filter(({ read: found }) => found.taken === null);
  return {
    right: taken.length - asked.length - silentlyWrong.length,
    asked: asked.length,
    silentlyWrong,
    needlessly: asked.flatMap(({ line, read: found }) =>
      line.meant === null
        ? []
        : [
            `${line.locale} "${line.written}": ${found.reasons.map(({ code }) => code).join(", ")} food "${found.line.food}"`,
          ],
    ),
  };
}

const sentence = ({ right, asked, silentlyWrong }: Tally): string =>
  `read right ${String(right)}, put to a person ${String(asked)}, silently wrong ${String(silentlyWrong.length)}`;

describe("law 7: a line that is read is right, or a person is asked", () => {
  // Source: forms of real collections, and case groups A, B, E, F of the project's cases; see tests/fixtures/lines/README.md.
  it.each(["en.txt", "de.txt", "fr.txt", "second.txt", "third.txt", "each.txt"])("over the lines of %s", (name) => {
    const lines = meantLines(name);
    const found = tally(lines);
    const meant = lines.filter((line) => line.meant !== null).length;
    console.log(`${name}: ${sentence(found)}; asked needlessly ${String(found.needlessly.length)} of ${String(meant)}`);
    if (process.env["SHOW_LINES"] !== undefined) console.log(found.needlessly.join("\n"));
    expect(found.silentlyWrong).toEqual([]);
    // A reader that asked about everything would be right as well, and no use.
    expect(found.needlessly.length / meant).toBeLessThan(0.1);
  });
});
