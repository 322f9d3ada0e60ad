/** What came of a try: the answer's status and its Retry-After, or why there was no answer. */
export type DeliveryOutcome =
  | { readonly answered: true; readonly status: number; readonly retryAfter: string | null }
  | { readonly answered: false; readonly error: string };
