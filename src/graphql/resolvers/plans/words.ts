import { writtenBlocks } from "../../../exports/document/written-blocks.js";
import { writtenHtml } from "../../../exports/document/written-html.js";
import { writtenText } from "../../../exports/document/written-text.js";
import type { WritersWords } from "../../../domain/model/writers-words.js";
import type { CreditResolvers, WrittenTextResolvers } from "../../generated/resolver-types.js";
import type { CreditParent, WrittenTextParent } from "../../parent-types.js";
import type { FieldsToResolve } from "../fields-to-resolve.js";

export const writtenTextResolvers: FieldsToResolve<WrittenTextResolvers, WrittenTextParent> = {
  source: (source) => source,
  html: (source) => writtenHtml(writtenBlocks(source)),
  text: (source) => writtenText(source),
};

export const creditResolvers: FieldsToResolve<CreditResolvers, CreditParent> = {
  url: ({ url }) => url ?? null,
  licence: ({ licence }) => licence ?? null,
  adapted: ({ adapted }) => adapted === true,
};

/** Texts of a meal, or of a component. */
export const textResolvers = {
  introduction: ({ introduction }: WritersWords) => introduction ?? null,
  notes: ({ notes }: WritersWords) => notes ?? null,
  tips: ({ tips }: WritersWords) => tips ?? null,
};
