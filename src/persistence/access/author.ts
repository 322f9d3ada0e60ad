/** Who writes: a token, by its id, or a program of the service. */
export type Author =
  { readonly kind: "TOKEN"; readonly token: string } | { readonly kind: "PROGRAM"; readonly name: string };
