import type { Money } from "../../domain/model/amount.js";

/** "4.75 XTS": the decimal as it is kept, and whose money it is. */
export const moneyText = ({ amount, currency }: Money): string => `${amount} ${currency}`;
