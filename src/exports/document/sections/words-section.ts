import type { Credit, WordsOfPlan, WritersTexts } from "../../../domain/model/writers-words.js";
import { heading, link, listOf, paragraph, strong, text, type Block, type Line } from "../document.js";
import { writtenBlocks } from "../written-blocks.js";
import type { Plan } from "../../../domain/model/plan.js";
import type { Words } from "../../words/words.js";

const written = (source: string): Block => ({ kind: "WRITTEN", blocks: writtenBlocks(source) });

/** What a writer says of a thing before anything else. */
export const introductionBlocks = ({ introduction }: WritersTexts): readonly Block[] =>
  introduction === undefined ? [] : [written(introduction)];

/** What is to be at hand that no appliance names; nothing where nothing is. */
export const equipmentBlocks = ({ equipment = [] }: WordsOfPlan, words: Words): readonly Block[] =>
  equipment.length === 0 ? [] : [paragraph([text(words.alsoNeeded({ things: equipment.join("; ") }))])];

/** Notes and tips, each under its name. */
export const notesBlocks = ({ notes, tips }: WritersTexts, words: Words): readonly Block[] => [
  ...(notes === undefined ? [] : [paragraph([strong(words.notes)]), written(notes)]),
  ...(tips === undefined ? [] : [paragraph([strong(words.tips)]), written(tips)]),
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
export const closingBlocks = (plan: WordsOfPlan & Pick<Plan, "licence">, words: Words): readonly Block[] => {
  const blocks = [
    ...notesBlocks(plan, words),
    ...creditsBlocks(plan, words),
    ...(plan.licence === undefined ? [] : [paragraph([text(words.licensed({ licence: plan.licence }))])]),
  ];
  return blocks.length === 0 ? [] : [heading(2, words.fromTheWriter), ...blocks];
};
