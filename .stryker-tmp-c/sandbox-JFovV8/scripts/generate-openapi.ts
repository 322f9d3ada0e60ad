// @ts-nocheck
import { writeFile } from "node:fs/promises";
import { endpoints } from "../src/rest/endpoints.js";
import { openapiDocument } from "../src/rest/openapi.js";

/** Writes openapi.json anew. A test compares it with what the service answers. */
await writeFile("openapi.json", `${JSON.stringify(openapiDocument(endpoints), null, 2)}\n`);
