import type { Credit, WordsOfPlan, WritersTexts } from "../../../domain/model/writers-words.js";
import { heading, link, listOf, paragraph, strong, text, type Block, type Line } from "../document.js";
import { writtenBlocks } from "../written-blocks.js";
import type { Plan } from "../../../domain/model/plan.js";
import type { NameBook } from "../../words/name-book.js";
import type { Words } from "../../words/words.js";

function written(source: string, book: NameBook): Block {
  const language = book.languageOf(source);
  return { kind: "WRITTEN", blocks: writtenBlocks(source), ...(language !== null && { language }) };
}

/** What a writer says of a thing before anything else. */
export const introductionBlocks = ({ introduction }: WritersTexts, book: NameBook): readonly Block[] =>
  introduction === undefined ? [] : [written(introduction, book)];

/** What is to be at hand that no appliance names; nothing where nothing is. */
export const equipmentBlocks = ({ equipment = [] }: WordsOfPlan, words: Words): readonly Block[] =>
  equipment.length === 0 ? [] : [paragraph([text(words.alsoNeeded({ things: equipment.join("; ") }))])];

/** Notes and tips, each under its name. */
export const notesBlocks = ({ notes, tips }: WritersTexts, book: NameBook): readonly Block[] => [
  ...(notes === undefined ? [] : [paragraph([strong(book.words.notes)]), written(notes, book)]),
  ...(tips === undefined ? [] : [paragraph([strong(book.words.tips)]), written(tips, book)]),
];

/** Whom or what a thing leans on. */
export const creditsBlocks = ({ credits = [] }: WordsOfPlan, words: Words): readonly Block[] =>
  credits.length === 0
    ? []
    : [
        paragraph([strong(words.credits)]),
        ...listOf(
          "ITEMS",
          credits.map((credit) => [creditLine(credit, words)]),
        ),
      ];

const creditLine = ({ name, url, licence, adapted }: Credit, words: Words): Line => [
  ...(adapted === true ? [text(words.adaptedFrom)] : []),
  url === undefined ? text(name) : link(name, url),
  ...(licence === undefined ? [] : [text(`(${licence})`)]),
];

/** What stands at the end of a plan: its notes and tips, whom it leans on, its licence. */
export const closingBlocks = (plan: WordsOfPlan & Pick<Plan, "licence">, book: NameBook): readonly Block[] => {
  const { words } = book;
  const blocks = [
    ...notesBlocks(plan, book),
    ...creditsBlocks(plan, words),
    ...(plan.licence === undefined ? [] : [paragraph([text(words.licensed({ licence: plan.licence }))])]),
  ];
  return blocks.length === 0 ? [] : [heading(2, words.fromTheWriter), ...blocks];
};
