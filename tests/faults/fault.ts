/** A fault script: breaks something again and again, and says what was lost. */
export interface Fault {
  readonly name: string;
  /** As many tries as told unless the command line says otherwise. */
  readonly tries: number;
  /** Enough to see that it still holds, where all scripts are run one after another. */
  readonly fewTries: number;
  /** `tries`, `lost` and whatever else was counted. Nothing may be lost. */
  run(tries: number): Promise<{ readonly tries: number; readonly lost: number } & Readonly<Record<string, unknown>>>;
}
