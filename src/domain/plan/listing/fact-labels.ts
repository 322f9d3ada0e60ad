/** Wherever the reader is. */
const anyRegion = "*";

/** What a list of plans is narrowed by as one word: `diet vegan *` holds everywhere, `free milk EU` in the Union alone. */
export type FactLabel = string;

/** Something that holds of a plan in some regions. */
interface HoldsIn {
  readonly fact: string;
  readonly region: string;
}

/** The label of a fact that hangs on no region. */
export const everywhere = (fact: string): FactLabel => `${fact} ${anyRegion}`;

/** Labels of facts that hang on a region; what holds in all of `regions` is one label. */
export function regionalLabels(holding: readonly HoldsIn[], regions: readonly string[]): readonly FactLabel[] {
  const byFact = new Map<string, Set<string>>();
  for (const { fact, region } of holding) byFact.set(fact, (byFact.get(fact) ?? new Set()).add(region));
  return [...byFact].flatMap(([fact, found]) =>
    regions.every((region) => found.has(region)) ? [everywhere(fact)] : [...found].map((region) => `${fact} ${region}`),
  );
}

/** Labels of which a plan has one if the fact holds in a region. */
export const labelsIn = (fact: string, region: string): readonly FactLabel[] => [everywhere(fact), `${fact} ${region}`];

/** What labels say in a region: `diet vegan`, `tag autumn`. */
export function factsIn(labels: readonly FactLabel[], region: string): readonly string[] {
  return labels.flatMap((label) => {
    const at = label.lastIndexOf(" ");
    const where = label.slice(at + 1);
    return where === anyRegion || where === region ? [label.slice(0, at)] : [];
  });
}

export const dietFact = (code: string): string => `diet ${code}`;
export const freeFact = (code: string): string => `free ${code}`;
export const languageFact = (tag: string): string => `language ${tag.toLowerCase()}`;
export const applianceFact = (code: string): string => `appliance ${code}`;

/** An index holds no longer ones. */
const longestTag = 200;

/** Tags are found in any case and without accents. @param folded `foldText` of it */
export const tagFact = (folded: string): string => `tag ${folded.slice(0, longestTag)}`;
