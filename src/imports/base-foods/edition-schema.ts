import { z } from "zod";
import { textSchema } from "../documents/schemas/scalar-schemas.js";

/** The head of an edition of base foods: a code of its own for whatever it says, since one that was loaded never changes. */
export const editionSchema = z.strictObject({
  kind: z.literal("base-foods"),
  code: z.iso.date(),
  title: textSchema,
});

export type BaseFoodEdition = Omit<z.output<typeof editionSchema>, "kind">;
