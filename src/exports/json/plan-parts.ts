import { z } from "zod";
import type { ServingsRow } from "../../domain/plan/servings-table.js";
import { moneySchema } from "./amount.js";
import { instant, list, named, slug, text, type Json } from "./named-schema.js";

export const servingsTableSchema = named(
  "ServingsTable",
  "What a plan costs and leaves over at every number of servings, to see where it comes out even.",
  z.object({
    rows: list(
      z.object({
        servings: z.number().int().min(1).describe("The number of people who eat."),
        perServing: moneySchema.nullable().describe("What one serving costs. Null if no price is known."),
        atTill: moneySchema.nullable().describe("What the till asks for. Null if no price is known."),
        leftOverShare: z.number().describe("Share of what is made that nobody eats, on average over the components."),
        packWasteShare: z
          .number()
          .describe("Share of what is bought that is not used, on average over the foods bought in packs."),
        even: z.boolean().describe("Nothing of any component is left over."),
      }),
      "From the least servings to the most.",
    ),
  }),
);

export const servingsTableJson = (rows: readonly ServingsRow[]): Json<typeof servingsTableSchema> => ({ rows });

/** What lists say of every plan. */
export const planSummarySchema = z.object({
  publisher: slug("Slug of its publisher."),
  slug: slug("Short name used in addresses."),
  title: text("Title, in the language asked for where it was translated."),
  language: text("BCP 47 tag of the language of the title.", 60),
  languages: list(text("BCP 47 tag.", 60), "The languages it can be read in: its own first."),
  revision: z.number().int().min(1).describe("Counts from 1 for each plan."),
  serves: z.number().describe("How many people it is written for."),
  locale: text("BCP 47 tag of the language it is written in.", 60),
  publishedAt: instant("When this revision was published."),
  checksum: text("SHA-256 of the frozen document, hex.", 64),
  address: text("Where the plan is computed."),
});

interface Summary {
  readonly publisher: string;
  readonly slug: string;
  readonly title: string;
  readonly revision: number;
  readonly serves: number;
  readonly locale: string;
  readonly publishedAt: Date;
  readonly checksum: string;
  readonly translatedInto: readonly string[];
  readonly shown: { readonly title: string; readonly language: string };
}

export const planSummaryJson = (plan: Summary, address: string): Json<typeof planSummarySchema> => ({
  publisher: plan.publisher,
  slug: plan.slug,
  title: plan.shown.title,
  language: plan.shown.language,
  languages: [plan.locale, ...plan.translatedInto],
  revision: plan.revision,
  serves: plan.serves,
  locale: plan.locale,
  publishedAt: plan.publishedAt.toISOString(),
  checksum: plan.checksum,
  address,
});
