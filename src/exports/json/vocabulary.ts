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

const namedCode = {
  code: text("The code as fields take it."),
  name: text("For people, in the locale."),
};

const namedCodeSchema = named("NamedCode", "A code and its name.", z.object(namedCode));

const messageSchema = named(
  "VocabularyMessage",
  "A kind of problem or warning.",
  z.object({
    code: text("As the `code` of a problem or a warning.", 60),
    title: text("The kind in a few words, in the locale where a reader can cause it.", 200),
    parameters: texts("What its `parameters` are called; those that are not known are left out of a message."),
  }),
);

const allergenSchema = named(
  "VocabularyAllergen",
  "An allergen, and the laws that name it.",
  z.object({
    ...namedCode,
    namedBy: list(
      named(
        "AllergenNaming",
        "A law's list that names an allergen.",
        z.object({
          list: text("Code of the list."),
          region: text("Its region: see `regionsWithRules`.", 10),
          law: text("The law."),
          name: text("The name that it must be declared by, in the locale."),
        }),
      ),
      "The lists in force that name it, itself or as one of a group. Empty if no law here asks for it.",
    ),
  }),
);

const ruledRegionSchema = named(
  "RuledRegion",
  "A region that rules were published for.",
  z.object({
    code: text("ISO 3166 code, `EU`, `ANZ` (Australia and New Zealand), or `INT` for all.", 10),
    name: text("For people, in the locale."),
    rules: z
      .array(z.enum(["KEEPING", "HANDLING", "CAUTIONS", "ALLERGENS", "DIETS"]))
      .max(10)
      .describe("What they are about. More may be added."),
    holdsIn: texts("ISO 3166 codes that a household may name for it. Null if it may be any.").nullable(),
  }),
);

export const vocabularySchema = named(
  "Vocabulary",
  "Every closed list that fields take their codes from, and what is known beyond them.",
  z.object({
    locale: text("BCP 47 tag that the names were asked for in.", 200),
    lists: list(listSchema, "The lists."),
    problemKinds: list(messageSchema, "Every code of problems."),
    warningKinds: list(messageSchema, "Every code of warnings."),
    allergens: list(allergenSchema, "The codes of the list `allergen`, with the laws that name each."),
    regionsWithRules: list(ruledRegionSchema, "Where rules in force were published; elsewhere the strictest hold."),
    currenciesWithPrices: list(namedCodeSchema, "Currencies that packs of foods are priced in."),
    languagesOfWords: list(namedCodeSchema, "Languages of the fixed words. In others they are English."),
  }),
);
