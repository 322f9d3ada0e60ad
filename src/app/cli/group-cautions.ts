import { cautionsSentence } from "../../exports/sentences/cautions-sentence.js";
import type { ShownFinding } from "./outcome.js";

/** Findings as they are told to people: the cautions that are due for one component in one line. */
export function groupCautions(findings: readonly ShownFinding[]): readonly ShownFinding[] {
  const keyOf = ({ code, file, path }: ShownFinding): string | null =>
    code === "CAUTION_NOT_NAMED" ? JSON.stringify([file, path]) : null;
  const told = new Set<string>();
  return findings.flatMap((finding) => {
    const key = keyOf(finding);
    if (key === null || finding.about === null) return [finding];
    if (told.has(key)) return [];
    told.add(key);
    const cautions = findings.flatMap((each) => (keyOf(each) === key ? (each.caution ?? []) : []));
    return [{ ...finding, message: cautionsSentence(finding.about, cautions) }];
  });
}
