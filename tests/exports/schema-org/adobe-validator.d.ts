declare module "@adobe/structured-data-validator" {
  export interface Issue {
    readonly issueMessage: string;
    readonly severity: "ERROR" | "WARNING";
    readonly path: readonly unknown[];
  }
  export default class Validator {
    constructor(schemaOrg?: unknown);
    validate(data: {
      readonly jsonld: Readonly<Record<string, readonly unknown[]>>;
      readonly microdata: object;
      readonly rdfa: object;
    }): Promise<readonly Issue[]>;
  }
}
