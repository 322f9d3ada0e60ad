import { z } from "zod";
import type { Credit, WordsOfPlan, WritersTexts, WritersWords } from "../../domain/model/writers-words.js";
import { writtenForms } from "../document/written-text.js";
import { list, named, text, texts, type Json } from "./named-schema.js";

const writtenTextSchema = named(
  "WrittenText",
  "A text of a writer's: CommonMark with paragraphs, emphasis, lists and links to the web, and nothing else.",
  z.object({
    source: text("As written.", 8000),
    html: text(
      "As HTML: `p`, `ul`, `ol`, `li`, `em`, `strong`, `br`, and `a` with http or https; all else is escaped.",
      100_000,
    ),
    text: text("Without any markup; the address of a link stands behind its words.", 20_000),
  }),
);

const creditSchema = named(
  "Credit",
  "Whom or what a plan or a component leans on.",
  z.object({
    name: text("Whose it is, or what it is called.", 200),
    url: text("Where to find it. Null if it is not stated.", 2000).nullable(),
    licence: text("Its licence, as its owner names it. Null if it is not stated.", 200).nullable(),
    adapted: z.boolean().describe("It was changed, beyond being quoted."),
  }),
);

const written = (description: string) => writtenTextSchema.nullable().describe(`${description} Null if there is none.`);

/** Texts of a plan, a meal or a component. */
export const textsShape = {
  introduction: written("What its writer says of it before anything else."),
  notes: written("What its writer notes beside it."),
  tips: written("Tips of its writer's."),
};

/** Words of a plan or a component. */
export const wordsShape = {
  ...textsShape,
  equipment: texts("Things to have at hand that are no appliances."),
  credits: list(creditSchema, "Whom or what it leans on."),
};

/** Words of a plan. */
export const planWordsShape = {
  ...wordsShape,
  tags: texts("What readers look for it by, as written."),
};

const form = (source: string | undefined): Json<typeof writtenTextSchema> | null =>
  source === undefined ? null : writtenForms(source);

export const textsJson = ({ introduction, notes, tips }: WritersTexts) => ({
  introduction: form(introduction),
  notes: form(notes),
  tips: form(tips),
});

const creditJson = ({ name, url, licence, adapted }: Credit): Json<typeof creditSchema> => ({
  name,
  url: url ?? null,
  licence: licence ?? null,
  adapted: adapted === true,
});

export const wordsJson = (words: WritersWords) => ({
  ...textsJson(words),
  equipment: words.equipment ?? [],
  credits: (words.credits ?? []).map(creditJson),
});

export const planWordsJson = (words: WordsOfPlan) => ({
  ...wordsJson(words),
  tags: words.tags ?? [],
});

/** As frozen: what is left out is not there. */
const frozenText = (description: string) => text(`${description} Absent if there is none.`, 8000).optional();

export const frozenTextsShape = {
  introduction: frozenText("What its writer says of it before anything else, in CommonMark."),
  notes: frozenText("What its writer notes beside it, in CommonMark."),
  tips: frozenText("Tips of its writer's, in CommonMark."),
};

export const frozenWordsShape = {
  ...frozenTextsShape,
  equipment: texts("Things to have at hand that are no appliances.").optional(),
  credits: list(
    z.object({
      name: text("Whose it is, or what it is called.", 200),
      url: text("Where to find it.", 2000).optional(),
      licence: text("Its licence.", 200).optional(),
      adapted: z.literal(true).describe("It was changed.").optional(),
    }),
    "Whom or what it leans on.",
  ).optional(),
};

export const frozenPlanWordsShape = {
  ...frozenWordsShape,
  tags: texts("What readers look for it by.").optional(),
};
