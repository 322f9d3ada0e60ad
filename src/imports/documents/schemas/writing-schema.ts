import { z } from "zod";
import type { Credit } from "../../../domain/model/writers-words.js";
import { isWebAddress } from "../../../domain/writing/web-address.js";
import { readWriting } from "../../../domain/writing/read-writing.js";
import { writingLimits, type WritingFaultKind } from "../../../domain/writing/writing.js";
import { plainWords } from "../../../domain/quantity/naming/plain-words.js";
import { listSchema, nameSchema } from "./scalar-schemas.js";
import { yesNoSchema } from "./word-schema.js";

/** Most letters of one text, tags of a plan and letters of a tag; most faults of one text that are told at once. */
const limits = { text: 8000, tags: 30, tag: 40, equipment: 60, credits: 20, faults: 20 } as const;

/** What to write instead. */
const instead: Readonly<Record<WritingFaultKind, string>> = {
  CODE: "no code: no backquotes, and no line indented by four spaces or more",
  DEEP_EMPHASIS: "at most three marks in a row, and at most eight levels of emphasis",
  DEEP_LIST: "at most five levels of lists",
  DEFINITION: "the address of a link behind its words: [words](https://…)",
  EMPTY_ITEM: "words on the line of a list's mark; a mark that is none: \\-",
  ENTITY: "the character itself; a sign & that is none: \\&",
  HEADING: "no heading, and no line of = or - below a paragraph",
  HTML: "no HTML and no address in angle brackets; a sign < that is none: \\<",
  IMAGE: "no picture in a text; a sign ! before a link: \\!",
  LINK_ADDRESS: "an address that begins with https:// or http://, without a name and a password",
  LINK_TITLE: "a link without a title: [words](https://…)",
  LIST_IN_LINE: "a list in a list on a line of its own; a mark that is none: \\- or 1\\.",
  QUOTE: "no quotation with >",
  RULE: "no line across the page",
  TAB: "spaces, not tabs",
  UNPAIRED_MARKS: "as many marks behind emphasis as before it; a mark that is none: \\*",
};

/** A text of the writer's: paragraphs, emphasis, lists and links to the web, in CommonMark; anything else of it is refused, with its line. */
const writingSchema = z
  .string()
  .min(1)
  .max(limits.text)
  .regex(/\S/, "words")
  .meta({
    description:
      "CommonMark: paragraphs, *emphasis*, **strong emphasis**, lists and links with http or https; no HTML, no headings, no pictures",
  })
  .superRefine((written, context) => {
    const told = new Map(
      readWriting(written)
        .faults.toReversed()
        .map((fault) => [`${fault.line} ${fault.kind}`, fault]),
    );
    for (const { kind, line, got } of [...told.values()].toReversed().slice(0, limits.faults))
      context.addIssue({ code: "custom", params: { expected: `${instead[kind]} (line ${line} of the text)`, got } });
  })
  .optional();

const addressExpected = "an address that begins with https:// or http://";

const webAddressSchema = z
  .string()
  .max(writingLimits.address)
  .refine(isWebAddress, { params: { expected: addressExpected } })
  .meta({ description: addressExpected });

/** An address that readers are sent to, or nothing. */
export const webAddressOrNull = webAddressSchema.nullable().default(null);

const creditSchema = z
  .strictObject({
    name: nameSchema,
    url: webAddressSchema.optional(),
    licence: nameSchema.optional(),
    adapted: yesNoSchema.default(false),
  })
  .transform(({ name, url, licence, adapted }): Credit => ({
    name,
    ...(url === undefined ? {} : { url }),
    ...(licence === undefined ? {} : { licence }),
    ...(adapted ? { adapted } : {}),
  }));

const tagSchema = z
  .string()
  .max(limits.tag)
  .transform((written) => written.normalize("NFC").trim().replace(/\s+/g, " "))
  .refine((tag) => plainWords(tag) !== "" && !/[,\p{Cc}]/u.test(tag), {
    params: { expected: "a word or two, without a comma" },
  });

/** No two that a reader would take for one. */
const tagsSchema = z
  .array(tagSchema)
  .max(limits.tags)
  .superRefine((tags, context) => {
    const seen = new Map<string, string>();
    for (const [at, tag] of tags.entries()) {
      const before = seen.get(plainWords(tag));
      if (before === undefined) seen.set(plainWords(tag), tag);
      else
        context.addIssue({
          code: "custom",
          path: [at],
          params: { expected: `a tag that is not there yet (${before})`, got: tag },
        });
    }
  })
  .default([]);

/** Texts of a plan, a meal or a component. */
export const textKeys = { introduction: writingSchema, notes: writingSchema, tips: writingSchema } as const;

/** Words of a plan or a component. */
export const wordKeys = {
  ...textKeys,
  equipment: listSchema(nameSchema).max(limits.equipment).default([]),
  credits: listSchema(creditSchema).max(limits.credits).default([]),
} as const;

/** Words of a plan. */
export const planWordKeys = {
  ...wordKeys,
  tags: tagsSchema,
} as const;
