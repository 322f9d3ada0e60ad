import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { form } from "./pl/form.js";
import { general } from "./pl/general.js";
import { kitchen } from "./pl/kitchen.js";
import { page } from "./pl/page.js";
import { preview } from "./pl/preview.js";
import { meals } from "./pl/meals.js";
import { shopping } from "./pl/shopping.js";
import { session } from "./pl/session.js";
import { keeping } from "./pl/keeping.js";
import { keepingClasses } from "./pl/keeping-classes.js";
import { contents } from "./pl/contents.js";
import { nutrition } from "./pl/nutrition.js";
import { advice } from "./pl/advice.js";
import { warnings } from "./pl/warnings.js";
import { work } from "./pl/work.js";
import { plain } from "./pl/plain.js";
import { printed } from "./pl/printed.js";
import { mistakes } from "./pl/mistakes.js";
import { titles } from "./pl/titles.js";
import { vocabulary } from "./pl/vocabulary.js";
import { cautionTexts } from "./pl/caution-texts.js";

export const polish: Translation<typeof english> = {
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
