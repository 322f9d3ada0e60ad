import { z } from "zod";
import type { FeedKind } from "../../../persistence/imports/import-data.js";

/** Where a feed's files come from. `FOLDER`: below the operator's folder for imports. */
const placeSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("UPLOAD") }),
  z.strictObject({ kind: z.literal("FOLDER"), path: z.string().regex(/^(?!.*\.\.)[\w./ -]{1,200}$/) }),
  z.strictObject({
    kind: z.literal("ADDRESS"),
    url: z.url({ protocol: /^https$/ }).max(2000),
    /** Hosts beside that of the address which it may send on to. */
    hosts: z
      .array(z.string().regex(/^[a-z0-9.-]{1,253}$/))
      .max(20)
      .default([]),
  }),
]);

/** Articles of one feed: more than a shop of foods has. */
const mostArticles = 5_000;

/**
 * How a feed's files are read. `limits` are the shares of rows, of those the feed had before (changed) or of those read
 * (quarantined), above which a run stops and loads nothing: a shop that changes a third of its prices overnight has more
 * likely changed its file. 1 turns a limit off.
 */
export const feedSettingsSchema = z.strictObject({
  /** Shown beside every figure that comes from it. */
  source: z.string().min(1).max(200),
  place: placeSchema.default({ kind: "UPLOAD" }),
  delimiter: z.enum([",", ";", "\t", "|"]).nullable().default(null),
  locale: z
    .string()
    .regex(/^[a-z]{2,3}(-[A-Z]{2})?$/)
    .nullable()
    .default(null),
  measures: z.enum(["US_CUSTOMARY", "METRIC_CUP", "AUSTRALIAN", "UK_IMPERIAL", "METRIC"]).default("METRIC"),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .nullable()
    .default(null),
  region: z
    .string()
    .regex(/^[A-Z]{2}(-[A-Z0-9]{1,3})?$/)
    .nullable()
    .default(null),
  /** From a name in the header of the file to ours. */
  columns: z.record(z.string().min(1).max(100), z.string().max(50)).default({}),
  /** Prices: from the shop's own number of an article to the slug of a food. */
  articles: z
    .record(
      z.string().min(1).max(100),
      z
        .string()
        .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
        .max(80),
    )
    .refine((articles) => Object.keys(articles).length <= mostArticles, `at most ${mostArticles}`)
    .default({}),
  limits: z
    .strictObject({
      changed: z.number().min(0).max(1).default(0.3),
      quarantined: z.number().min(0).max(1).default(0.2),
    })
    .default({ changed: 0.3, quarantined: 0.2 }),
  /** Documents: publish the plans that were saved. */
  publish: z.boolean().default(false),
});

export type FeedSettings = z.output<typeof feedSettingsSchema>;

/**
 * What a feed has that names no limits. Documents and recipes stand each for itself, and a file of one that changes has changed
 * whole; another edition of the open food table changes the source of every row.
 */
export const usualLimits: Readonly<Record<FeedKind, FeedSettings["limits"]>> = {
  CATALOGUE: { changed: 1, quarantined: 0.2 },
  PRICES: { changed: 0.3, quarantined: 0.2 },
  FOODS: { changed: 0.3, quarantined: 0.2 },
  DOCUMENTS: { changed: 1, quarantined: 1 },
  RECIPES: { changed: 1, quarantined: 1 },
};

/** Kinds whose files are tables: a header, and rows of it. */
export const isTable = (kind: FeedKind): boolean => kind !== "DOCUMENTS" && kind !== "RECIPES";

/** Kinds that belong to all publishers, so that their feeds are the operator's. Prices may be a publisher's own as well. */
export const isShared = isTable;
