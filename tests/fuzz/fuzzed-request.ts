/** A request as it goes over the wire. */
export interface FuzzedRequest {
  readonly method: string;
  /** As it is sent, also where it is no valid address. */
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer | null;
}
