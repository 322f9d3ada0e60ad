/** Where a request stands in a trace that somebody else began. */
interface TraceParent {
  /** 32 hex digits. */
  readonly traceId: string;
  /** 16 hex digits. */
  readonly spanId: string;
  readonly isSampled: boolean;
}

/** Reads the header `traceparent` (W3C Trace Context, 3.2); null: there is none, or one that is to be ignored. */
export function readTraceParent(header: string | readonly string[] | undefined): TraceParent | null {
  if (typeof header !== "string") return null;
  const found = /^([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-([0-9a-f]{2})(-.*)?$/.exec(header);
  if (found === null) return null;
  const [, version = "", traceId = "", spanId = "", flags = "", more] = found;
  // Later versions may say more; version ff is forbidden.
  if (version === "ff" || (version === "00" && more !== undefined)) return null;
  if (/^0+$/.test(traceId) || /^0+$/.test(spanId)) return null;
  return { traceId, spanId, isSampled: (Number.parseInt(flags, 16) & 1) === 1 };
}
