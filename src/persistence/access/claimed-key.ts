/** What an idempotency key stands for. `RUNNING`: its write is not done yet. The answer is JSON as it was stored. */
export type ClaimedKey =
  | { readonly state: "FREE" }
  | { readonly state: "RUNNING" }
  | { readonly state: "ANSWERED"; readonly fingerprint: string; readonly answer: unknown };
