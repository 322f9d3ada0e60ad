export interface Page<T> {
  readonly items: readonly { readonly cursor: string; readonly item: T }[];
  readonly hasNext: boolean;
  readonly hasPrevious: boolean;
}

/** Relay: `first`/`after` walk forwards, `last`/`before` backwards. Cursors are opaque and survive inserts between pages. */
export interface PageRequest {
  readonly first: number | null;
  readonly after: string | null;
  readonly last: number | null;
  readonly before: string | null;
}

/** A batched read answers in the order of its keys, null where nothing was found. */
export type Batched<K, V> = (keys: readonly K[]) => Promise<readonly (V | null)[]>;
