import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { form } from "./de/form.js";
import { general } from "./de/general.js";
import { kitchen } from "./de/kitchen.js";
import { page } from "./de/page.js";
import { preview } from "./de/preview.js";
import { meals } from "./de/meals.js";
import { shopping } from "./de/shopping.js";
import { session } from "./de/session.js";
import { keeping } from "./de/keeping.js";
import { keepingClasses } from "./de/keeping-classes.js";
import { contents } from "./de/contents.js";
import { nutrition } from "./de/nutrition.js";
import { advice } from "./de/advice.js";
import { warnings } from "./de/warnings.js";
import { work } from "./de/work.js";
import { plain } from "./de/plain.js";
import { printed } from "./de/printed.js";
import { mistakes } from "./de/mistakes.js";
import { titles } from "./de/titles.js";
import { vocabulary } from "./de/vocabulary.js";
import { cautionTexts } from "./de/caution-texts.js";

export const german: Translation<typeof english> = {
  /** Of the pages alone. */
  page: { ...page, ...form, ...kitchen, preview },
  ...general,
  ...meals,
  ...shopping,
  ...session,
  ...keeping,
  ...keepingClasses,
  ...contents,
  ...nutrition,
  ...advice,
  ...warnings,
  ...work,
  ...plain,
  ...printed,
  ...mistakes,
  ...titles,
  ...vocabulary,
  ...cautionTexts,
};
