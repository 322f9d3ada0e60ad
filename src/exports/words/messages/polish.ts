import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { general } from "./pl/general.js";
import { meals } from "./pl/meals.js";
import { shopping } from "./pl/shopping.js";
import { session } from "./pl/session.js";
import { keeping } from "./pl/keeping.js";
import { contents } from "./pl/contents.js";
import { nutrition } from "./pl/nutrition.js";

export const polish: Translation<typeof english> = {
  ...general,
  ...meals,
  ...shopping,
  ...session,
  ...keeping,
  ...contents,
  ...nutrition,
};
