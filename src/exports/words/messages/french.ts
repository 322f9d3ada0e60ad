import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { general } from "./fr/general.js";
import { meals } from "./fr/meals.js";
import { shopping } from "./fr/shopping.js";
import { session } from "./fr/session.js";
import { keeping } from "./fr/keeping.js";
import { contents } from "./fr/contents.js";
import { nutrition } from "./fr/nutrition.js";

export const french: Translation<typeof english> = {
  ...general,
  ...meals,
  ...shopping,
  ...session,
  ...keeping,
  ...contents,
  ...nutrition,
};
