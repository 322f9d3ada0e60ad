interface Scheduled {
  readonly kind: "PUBLISH" | "WITHDRAW";
  readonly state: "WAITING" | "DONE" | "KEPT_BACK" | "CANCELLED";
  readonly localTime: string;
  readonly zone: string;
  readonly version: number | null;
  readonly revision: number | null;
  readonly cancelledBecause: "ASKED" | "REPLACED" | "TOKEN_REVOKED" | null;
}

const cancelled = {
  ASKED: "It was cancelled.",
  REPLACED: "Another was scheduled in its place.",
  TOKEN_REVOKED: "It was cancelled because the access token that asked for it was revoked.",
} as const;

/** What a writer should know about something scheduled, in English. */
export function scheduledNotice(change: Scheduled): string {
  const { kind, state, localTime, zone, version, revision, cancelledBecause } = change;
  const when = `${localTime} (${zone})`;
  switch (state) {
    case "WAITING":
      return kind === "PUBLISH"
        ? `Version ${version ?? ""} of the draft is published at ${when}. Later saves do not change that: schedule it again to publish them.`
        : `The plan is withdrawn as a whole at ${when}.`;
    case "DONE":
      return `${kind === "PUBLISH" ? "Published" : "Withdrawn"}, revision ${revision ?? ""}.`;
    case "KEPT_BACK":
      return `It was due at ${when} and could not be carried out. Put right what is wrong, and schedule it again.`;
    case "CANCELLED":
      return cancelled[cancelledBecause ?? "ASKED"];
  }
}
