import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { general } from "./es/general.js";
import { meals } from "./es/meals.js";
import { shopping } from "./es/shopping.js";
import { session } from "./es/session.js";
import { keeping } from "./es/keeping.js";
import { contents } from "./es/contents.js";
import { nutrition } from "./es/nutrition.js";

export const spanish: Translation<typeof english> = {
  ...general,
  ...meals,
  ...shopping,
  ...session,
  ...keeping,
  ...contents,
  ...nutrition,
};
