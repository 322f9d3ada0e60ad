import type { Data } from "../data.js";
import { BadCursor, UnstorableText } from "../errors.js";
import { withTimeout } from "./with-timeout.js";
import type { ReplicaWatch } from "./watch-replicas.js";

/** What readers who have shown no token ask for. All else goes to the primary: writes, transactions, what is not published. */
const routed = {
  publishers: ["bySlugs", "byIds"],
  foods: ["bySlugs", "byIds", "idsBySlugs", "page", "measures", "names", "currencies", "synonyms"],
  revisions: ["ofPlan", "summaries", "summariesByIds", "bundles", "titles", "holdingComponents", "page"],
  ruleSets: ["inForce", "all", "byIds", "contents"],
  changes: ["page"],
  catalogue: ["byNumbers", "page"],
} as const satisfies { readonly [A in keyof Data]?: readonly (keyof Data[A])[] };

/** A read may keep a replica so long, in milliseconds; then the primary is asked. */
const patience = 2_000;

type Read = (...given: readonly unknown[]) => Promise<unknown>;

/**
 * `Data` for one request of the public. Its reads go to one replica, so that none of them is older than the one before; once it fails
 * to answer, the primary takes over until the request is answered.
 */
export function publicReads(primary: Data, replicas: Pick<ReplicaWatch<Data>, "pick" | "failed">): Data {
  let replica = replicas.pick();
  if (replica === null) return primary;

  const read = async (area: string, name: string, given: readonly unknown[]): Promise<unknown> => {
    const asked = replica;
    if (asked === null) return readOf(primary, area, name)(...given);
    try {
      return await withTimeout(readOf(asked, area, name)(...given), patience);
    } catch (error) {
      if (error instanceof BadCursor || error instanceof UnstorableText) throw error;
      replica = null;
      replicas.failed(asked, error);
      return readOf(primary, area, name)(...given);
    }
  };
  const areas = Object.entries(routed).map(([area, names]) => [
    area,
    {
      ...primary[area as keyof typeof routed],
      ...Object.fromEntries(names.map((name) => [name, (...given: readonly unknown[]) => read(area, name, given)])),
    },
  ]);
  return { ...primary, ...(Object.fromEntries(areas) as Pick<Data, keyof typeof routed>) };
}

/** `routed` names reads only, and nothing else is asked for. */
const readOf = (data: Data, area: string, name: string): Read =>
  (data as unknown as Record<string, Record<string, Read>>)[area]?.[name] as Read;
