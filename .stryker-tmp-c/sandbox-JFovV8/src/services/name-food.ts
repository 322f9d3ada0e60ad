/** What a food is called, for the layers that may not see `exports`. */
// @ts-nocheck

export { foodNameFor } from "../exports/food-name.js";
