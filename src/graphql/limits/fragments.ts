import {
  Kind,
  type DocumentNode,
  type FragmentDefinitionNode,
  type FragmentSpreadNode,
  type InlineFragmentNode,
  type SelectionSetNode,
} from "graphql";

/** The fragments of a document by their names. */
export type Fragments = ReadonlyMap<string, FragmentDefinitionNode>;

export const fragmentsOf = ({ definitions }: DocumentNode): Fragments =>
  new Map(
    definitions
      .filter((definition) => definition.kind === Kind.FRAGMENT_DEFINITION)
      .map((fragment): readonly [string, FragmentDefinitionNode] => [fragment.name.value, fragment]),
  );

/** What a fragment stands for, spread or written in place; undefined: the document has none of that name. */
export const selectedBy = (
  spread: FragmentSpreadNode | InlineFragmentNode,
  fragments: Fragments,
): SelectionSetNode | undefined =>
  spread.kind === Kind.INLINE_FRAGMENT ? spread.selectionSet : fragments.get(spread.name.value)?.selectionSet;
