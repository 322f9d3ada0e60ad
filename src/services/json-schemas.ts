/** The shapes of JSON answers, for the layers that may not see `exports`. */
export { list, named, namedSchemas, text, texts, type Json } from "../exports/json/named-schema.js";
