/**
 * The resolvers a type needs: one for every field that its parent value does not already hold under that name and in
 * a fitting type. Others may be left to GraphQL, which reads the property; a field that is forgotten does not compile.
 */
export type FieldsToResolve<Fields, Parent> = {
  readonly [
    Name in keyof Fields as Parent extends { readonly [N in Name]: AnswerOf<Fields[Name]> } ? never : Name
  ]: Fields[Name];
} & Partial<Fields>;

/** What a resolver function may return at once. */
type AnswerOf<Field> =
  Extract<Field, (...args: never[]) => unknown> extends (...args: never[]) => infer Answer ? Answer : unknown;
