/** What may be wrong with an archive of a publisher, or with one of its files. */
export type ArchiveFault =
  /** `detail`: what the reader of zip files says. */
  | { readonly kind: "NOT_A_ZIP"; readonly detail: string }
  | { readonly kind: "NAME_NOT_KNOWN" }
  | { readonly kind: "NOT_A_FILE" }
  | { readonly kind: "ENCRYPTED" }
  | { readonly kind: "TWICE" }
  /** `of`: what there is too much of, in words. */
  | { readonly kind: "TOO_MUCH"; readonly of: string; readonly size: number; readonly limit: number }
  | { readonly kind: "NO_MANIFEST" }
  | { readonly kind: "OTHER_VERSION"; readonly version: number; readonly known: number }
  | { readonly kind: "NOT_LISTED" }
  | { readonly kind: "MISSING" }
  | { readonly kind: "ALTERED" }
  | { readonly kind: "CONTENT"; readonly detail: string }
  | { readonly kind: "OTHER_PUBLISHER"; readonly archived: string }
  | { readonly kind: "NUMBER_MISSING"; readonly plan: string; readonly revision: number };
