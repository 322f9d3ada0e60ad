import type { Money } from "../../domain/model/amount.js";
import type { Reader } from "../../domain/plan/plan-answer.js";
import { readerLocale } from "../../domain/quantity/reader-locale.js";

/** "4.75 XTS", in German "4,75 XTS": the decimal as it is kept, with the reader's mark, and whose money it is. */
export const moneyText = ({ amount, currency }: Money, { locale }: Pick<Reader, "locale">): string =>
  `${amount.replace(".", readerLocale(locale).decimalMark)} ${currency}`;
