import { expect, it } from "vitest";
import { planCard } from "../../../src/exports/page/card.js";
import { shelfLine } from "../../../src/exports/page/parts/shopping-part.js";
import { nameBook } from "../../../src/exports/words/name-book.js";
import { demoBundle } from "../../graphql/open-test-app.js";
import { answerOf } from "../../kit/answer-of.js";

const note = "Buckwheat is done in 15 minutes; leave out the last half hour.";
const bundle = demoBundle("roots-and-barley");
const swapped = answerOf(bundle, 4, { swaps: [{ from: "pearl-barley", to: "buckwheat-groats" }] });

it("says in the row of the list what the writer notes on a swap, where it is taken and nowhere else", () => {
  const book = nameBook(bundle, swapped.reader);
  const said = (answer: typeof swapped) =>
    answer.list.lines.flatMap((line) => shelfLine(line, book).said.map(({ text }) => [line.food.slug, text]));
  expect(said(swapped)).toEqual([["buckwheat-groats", note]]);
  expect(said(answerOf(bundle, 4))).toEqual([]);
});

it("says it on the card for blogs too", () => {
  const rows = planCard(swapped, "https://plans.example/p/a/b").aisles.flatMap(({ lines }) => lines);
  expect(rows.filter(({ notes }) => notes.includes(note)).map(({ id }) => id)).toEqual(["buckwheat-groats"]);
});
