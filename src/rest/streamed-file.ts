/** A file that is sent while it is made. */
export interface StreamedFile {
  /** Name that a browser saves it under. */
  readonly name: string;
  /** Points for its length, beyond `pointsOfAnswer`. */
  readonly points: number;
  readonly bytes: AsyncIterable<Uint8Array>;
}
