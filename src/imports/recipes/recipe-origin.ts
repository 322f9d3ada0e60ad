import { createHash } from "node:crypto";
import type { RecipeRecord } from "./read-recipes.js";

/** Where a draft came from, and what the recipe said then. */
export interface RecipeOrigin {
  /** The recipe's address or other id of its own; of one without, its name in quotation marks. */
  readonly name: string;
  /** Twelve digits that change when anything of the recipe changes. */
  readonly mark: string;
}

export function recipeOrigin({ raw, recipe }: RecipeRecord): RecipeOrigin | null {
  if (recipe === null) return null;
  const mark = createHash("sha256").update(raw).digest("hex").slice(0, 12);
  return { name: oneLine(recipe.url ?? ownId(raw) ?? `"${recipe.name}"`), mark };
}

const oneLine = (text: string): string => text.replace(/\s+/g, " ").slice(0, 500);

/** An `@id` that holds everywhere (`urn:…`), not only inside its page. */
function ownId(raw: string): string | null {
  const node = JSON.parse(raw) as { readonly "@id"?: unknown };
  const id = node["@id"];
  return typeof id === "string" && /^[a-z][a-z0-9+.-]*:\S+$/i.test(id) ? id : null;
}

/** The first line of a draft that came from a recipe, as a remark. */
export const originLine = ({ name, mark }: RecipeOrigin): string => `# Read from ${name} (${mark})\n`;

/** The origin that a draft's text names; null: none. */
export function originOf(text: string): RecipeOrigin | null {
  const found = /^# Read from (.+) \(([\da-f]{12})\)$/m.exec(text.slice(0, 1000));
  return found === null ? null : { name: found[1] ?? "", mark: found[2] ?? "" };
}
