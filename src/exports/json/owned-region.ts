import { z } from "zod";
import type { OwnedRegion } from "../../domain/model/region.js";
import { list, named, text } from "./named-schema.js";

export const regionOwnerSchema = z
  .enum(["READER", "PLAN", "PUBLISHER"])
  .describe("Who named a region. Each goes before those after it.");

const ownedRegionSchema = named(
  "OwnedRegion",
  "A region, and who named it.",
  z.object({
    region: text("ISO 3166 code. A part of a country of which no rule speaks is its country.", 10),
    owner: regionOwnerSchema,
  }),
);

export const regionsSchema = list(
  ownedRegionSchema,
  "Where the answer holds: keeping rules, allergen lists, prices and units are those of the first, and each further one counts where those before it have no rule of their own. Empty if nobody says; the strictest of all regions holds.",
);

export const regionsJson = (regions: readonly OwnedRegion[] = []) =>
  regions.map(({ region, owner }) => ({ region, owner }));
