import { z } from "zod";
import { isImageFile, longestImageFile } from "../../../domain/model/image.js";
import { nameSchema } from "./scalar-schemas.js";

const fileExpected = "a file beside or below the document, such as photos/soup.jpg";

const fileSchema = z
  .string()
  .max(longestImageFile)
  .meta({ description: fileExpected })
  .superRefine((written, context) => {
    if (isImageFile(written)) return;
    context.addIssue({ code: "custom", params: { expected: fileExpected, got: written } });
  });

const altExpected = "what the picture shows, for those who do not see it";

/** Blanks say nothing. */
const altSchema = z.string().min(1).max(400).regex(/\S/, altExpected).meta({ description: altExpected });

/** On what terms others may use something: `CC-BY-4.0`, an address, a sentence. */
export const licenceSchema = nameSchema.meta({
  description: "on what terms others may use it: an SPDX identifier such as CC-BY-4.0, an address, or a sentence",
});

/** A picture, handed in under the name of its file. */
export const imageSchema = z.strictObject({
  file: fileSchema,
  alt: altSchema,
  credit: nameSchema.nullable().default(null),
  licence: licenceSchema.nullable().default(null),
});
