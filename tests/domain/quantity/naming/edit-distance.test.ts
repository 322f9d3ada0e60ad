import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance } from "../../../../src/domain/quantity/naming/edit-distance.js";
import { letterSet, mayBeWithin } from "../../../../src/domain/quantity/naming/letter-set.js";
import { plainWords } from "../../../../src/domain/quantity/naming/plain-words.js";
import { demo } from "../../../graphql/open-test-app.js";

/** Every cell of the table, as the distance is defined (optimal string alignment; common practice, no source). */
function wholeTable(a: string, b: string): number {
  const table = Array.from({ length: a.length + 1 }, (_, row) =>
    Array.from({ length: b.length + 1 }, (__, column) => (row === 0 ? column : column === 0 ? row : 0)),
  );
  const at = (row: number, column: number): number => table[row]?.[column] ?? 0;
  for (let row = 1; row <= a.length; row += 1) {
    for (let column = 1; column <= b.length; column += 1) {
      const ways = [
        at(row - 1, column) + 1,
        at(row, column - 1) + 1,
        at(row - 1, column - 1) + (a[row - 1] === b[column - 1] ? 0 : 1),
      ];
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        ways.push(at(row - 2, column - 2) + 1);
      table[row]?.splice(column, 1, Math.min(...ways));
    }
  }
  return at(a.length, b.length);
}

const word = fc.string({ unit: fc.constantFrom(..."abcde 1ł"), maxLength: 12 });
const most = fc.integer({ min: 0, max: 4 });

describe("the edits between two words", () => {
  it("are as many as the whole table says, or more than were asked for", () => {
    fc.assert(
      fc.property(word, word, most, (a, b, limit) => {
        expect(editDistance(a, b, limit)).toBe(Math.min(wholeTable(a, b), limit + 1));
      }),
      { numRuns: 2_000 },
    );
  });

  it("are never more than so many where the letters say that they may not be", () => {
    fc.assert(
      fc.property(word, word, most, (a, b, limit) => {
        if (wholeTable(a, b) <= limit) expect(mayBeWithin(letterSet(a), letterSet(b), limit)).toBe(true);
      }),
      { numRuns: 2_000 },
    );
  });

  it("are counted for few of the names of foods: most have other letters", () => {
    const names = [...new Set(demo.foods.flatMap(({ names: of }) => of.map(({ one }) => plainWords(one))))];
    const pairs = names.flatMap((a) =>
      names.flatMap((b) => (Math.abs(a.length - b.length) <= 2 && a !== b ? [[a, b] as const] : [])),
    );
    expect(pairs.length).toBeGreaterThan(1_000);
    const looked = pairs.filter(([a, b]) => mayBeWithin(letterSet(a), letterSet(b), 2));
    expect(looked.length / pairs.length).toBeLessThan(0.1);
  });
});
