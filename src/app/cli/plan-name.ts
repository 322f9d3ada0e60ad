import { slugSchema } from "../../imports/documents/schemas/scalar-schemas.js";
import { usage } from "./outcome.js";

/** `PUBLISHER/SLUG`. @throws CommandFailed */
export function planName(text: string): { readonly publisher: string; readonly slug: string } {
  const [publisher = "", slug = "", ...rest] = text.split("/");
  const fits = [publisher, slug].every((part) => slugSchema.safeParse(part).success);
  if (!fits || rest.length > 0)
    throw usage("A plan is named PUBLISHER/SLUG, such as third-gate-allotments/bean-night.");
  return { publisher, slug };
}
