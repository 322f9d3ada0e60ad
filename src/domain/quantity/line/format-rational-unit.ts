import type { Measured } from "../../model/amount.js";

/** `6 oz`, `3/2 kg`, `100 to 150 g`: a size as a line writes it. */
export const formatRationalUnit = ({ low, high, unit }: Measured): string =>
  `${low === high ? low : `${low} to ${high}`} ${unit}`;
