import { Prisma } from "../generated/client.js";
import { isStorable } from "./storable-text.js";

/** The id behind a publisher's slug, as a subquery; it finds nothing where there is no such publisher. */
export const idOfPublisher = (slug: string): Prisma.Sql =>
  isStorable(slug) ? Prisma.sql`(SELECT id FROM publishers WHERE slug = ${slug})` : Prisma.sql`NULL::uuid`;
