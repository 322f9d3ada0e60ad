import { z } from "zod";
import { named, text } from "./named-schema.js";

const neighbours = {
  next: text("Address of the next page. Null if this is the last.", 20_000).nullable(),
  previous: text("Address of the page before. Null if this is the first.", 20_000).nullable(),
};

/** A page of a list. Addresses of its neighbours also stand in the header Link. */
export const pageSchema = <Item extends z.ZodType, More extends z.ZodRawShape = Record<never, never>>(
  id: string,
  description: string,
  items: z.ZodArray<Item>,
  more: More = {} as More,
) => named(id, description, z.object({ items, ...neighbours, ...more }));
