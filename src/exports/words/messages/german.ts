import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { general } from "./de/general.js";
import { meals } from "./de/meals.js";
import { shopping } from "./de/shopping.js";
import { session } from "./de/session.js";
import { keeping } from "./de/keeping.js";
import { contents } from "./de/contents.js";
import { nutrition } from "./de/nutrition.js";

export const german: Translation<typeof english> = {
  ...general,
  ...meals,
  ...shopping,
  ...session,
  ...keeping,
  ...contents,
  ...nutrition,
};
