import type { Translation } from "../message.js";
import type { english } from "./english.js";
import { form } from "./fr/form.js";
import { general } from "./fr/general.js";
import { kitchen } from "./fr/kitchen.js";
import { page } from "./fr/page.js";
import { preview } from "./fr/preview.js";
import { meals } from "./fr/meals.js";
import { shopping } from "./fr/shopping.js";
import { session } from "./fr/session.js";
import { keeping } from "./fr/keeping.js";
import { keepingClasses } from "./fr/keeping-classes.js";
import { contents } from "./fr/contents.js";
import { nutrition } from "./fr/nutrition.js";
import { advice } from "./fr/advice.js";
import { warnings } from "./fr/warnings.js";
import { work } from "./fr/work.js";
import { plain } from "./fr/plain.js";
import { printed } from "./fr/printed.js";
import { mistakes } from "./fr/mistakes.js";
import { titles } from "./fr/titles.js";
import { vocabulary } from "./fr/vocabulary.js";
import { cautionTexts } from "./fr/caution-texts.js";

export const french: Translation<typeof english> = {
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
