/** The shapes of JSON answers, for the layers that may not see `exports`. */
// @ts-nocheck

export { list, named, namedSchemas, text, texts, type Json } from "../exports/json/named-schema.js";
