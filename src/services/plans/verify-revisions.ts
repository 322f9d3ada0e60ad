import type { Deps } from "../deps.js";

/** Frozen documents read at a time. */
const pageSize = 100;

interface Verified {
  readonly checked: number;
  /** Ids of revisions whose document is not what was published. */
  readonly mismatched: readonly string[];
}

/** Recomputes the checksum of every frozen document, withdrawn ones too, and logs each that differs. Changes nothing. */
export async function verifyRevisions(deps: Deps): Promise<Verified> {
  const mismatched: string[] = [];
  let checked = 0;
  let after: string | null = null;
  do {
    const page = await deps.data.revisions.checksums(after, pageSize);
    for (const { id, stored, computed } of page) {
      if (stored === computed) continue;
      mismatched.push(id);
      deps.log.error({ revision: id, stored, computed }, "a frozen document does not match its checksum");
    }
    checked += page.length;
    after = page.length < pageSize ? null : (page.at(-1)?.id ?? null);
  } while (after !== null);
  deps.log.info({ checked, mismatched: mismatched.length }, "frozen documents verified");
  return { checked, mismatched };
}
