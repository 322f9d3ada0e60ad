import { hash } from "node:crypto";
import type { RecipeOrigin } from "../../../imports/recipes/recipe-origin.js";

/** What the draft of a recipe may be called: by its name, or, where another has that name, by its origin too. */
export const recipeSlugs = (name: string, origin: RecipeOrigin): readonly [string, string] => [
  name,
  `${name.slice(0, 71).replace(/-$/, "")}-${hash("sha256", origin.name).slice(0, 8)}`,
];
