import type { Setting } from "./environment.js";
import { maskSecrets } from "./mask-secrets.js";

/** Shown by its first part alone: the path of such an address is often what keeps strangers out. */
const onlyOrigin: ReadonlySet<Setting["name"]> = new Set(["PREPWRIGHT_REPORT_URL", "OTEL_EXPORTER_OTLP_ENDPOINT"]);

/** What may be shown of the value of a setting; null: there is none. */
export function shownValue({ name, value }: Setting): string | null {
  if (value === null) return null;
  const shown = maskSecrets(value);
  if (!onlyOrigin.has(name) || !URL.canParse(value)) return shown;
  const { origin, pathname, search } = new URL(value);
  return pathname + search === "/" ? origin : `${origin}/…`;
}
