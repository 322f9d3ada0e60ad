// @ts-nocheck
import type { Measured } from "../../domain/model/amount.js";
import { ownMeasureName } from "../../domain/quantity/unit.js";

/** `3/2 us-cup`, `2 to 3 clove`, `400 g`: an amount spelled so that it reads back as exactly itself. */
export const amountText = ({ low, high, unit }: Measured): string =>
  `${low === high ? low : `${low} to ${high}`} ${ownMeasureName(unit) ?? unit}`;
