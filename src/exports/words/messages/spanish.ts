import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { form } from "./es/form.js";
import { general } from "./es/general.js";
import { kitchen } from "./es/kitchen.js";
import { page } from "./es/page.js";
import { preview } from "./es/preview.js";
import { meals } from "./es/meals.js";
import { shopping } from "./es/shopping.js";
import { session } from "./es/session.js";
import { keeping } from "./es/keeping.js";
import { keepingClasses } from "./es/keeping-classes.js";
import { contents } from "./es/contents.js";
import { nutrition } from "./es/nutrition.js";
import { advice } from "./es/advice.js";
import { warnings } from "./es/warnings.js";
import { work } from "./es/work.js";
import { plain } from "./es/plain.js";
import { printed } from "./es/printed.js";
import { mistakes } from "./es/mistakes.js";
import { titles } from "./es/titles.js";
import { vocabulary } from "./es/vocabulary.js";
import { cautionTexts } from "./es/caution-texts.js";

export const spanish: Translation<typeof english> = {
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
