import { form } from "./en/form.js";
import { general } from "./en/general.js";
import { kitchen } from "./en/kitchen.js";
import { page } from "./en/page.js";
import { preview } from "./en/preview.js";
import { meals } from "./en/meals.js";
import { shopping } from "./en/shopping.js";
import { session } from "./en/session.js";
import { keeping } from "./en/keeping.js";
import { keepingClasses } from "./en/keeping-classes.js";
import { contents } from "./en/contents.js";
import { nutrition } from "./en/nutrition.js";
import { advice } from "./en/advice.js";
import { warnings } from "./en/warnings.js";
import { work } from "./en/work.js";
import { plain } from "./en/plain.js";
import { printed } from "./en/printed.js";
import { mistakes } from "./en/mistakes.js";
import { titles } from "./en/titles.js";
import { vocabulary } from "./en/vocabulary.js";
import { cautionTexts } from "./en/caution-texts.js";

/** Every fixed word of every way out, in English. Amounts, prices and dates arrive as text, written for the reader's locale. */
export const english = {
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
