import { z } from "zod";
import type { CodeListName } from "../../../domain/code-list-name.js";
import { usualSpelling } from "../../../domain/model/code-lists.js";

/** Which closed list a field takes its code from; `written-codes.ts` finds the fields by it. */
export const codeFields = z.registry<{ readonly list: CodeListName }>();

/**
 * A code of a closed list, in its usual spelling. Whether the list has it is for `checkCodes` to say: some lists are rule
 * data, and what comes of an unknown code depends on who wrote it.
 */
export const codeSchema = (list: CodeListName) =>
  z
    .string()
    .min(1)
    .max(80)
    .meta({ description: `a code of the closed list "${list}"` })
    .register(codeFields, { list })
    .transform((written) => usualSpelling(list, written));
