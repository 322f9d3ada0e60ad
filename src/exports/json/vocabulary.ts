import { z } from "zod";
import { list, named, text, texts } from "./named-schema.js";

const codeSchema = named(
  "VocabularyCode",
  "A code of a closed list.",
  z.object({
    code: text("The code as fields take it."),
    name: text("The name shown to people."),
    spellings: texts("Other spellings that are taken for it. All others are refused."),
  }),
);

const listSchema = named(
  "VocabularyList",
  "A closed list.",
  z.object({
    list: text("Its name, as the problem UNKNOWN_CODE says it: `keeping-class`, `allergen`.", 60),
    codes: list(codeSchema, "All of them, in the order of the list."),
  }),
);

export const vocabularySchema = named(
  "Vocabulary",
  "Every closed list that fields take their codes from.",
  z.object({
    locale: text("BCP 47 tag that the names were asked for in.", 200),
    lists: list(listSchema, "The lists."),
  }),
);
