/** How a part of a food is said within its name: the words before, and the part. The rest names the food. */
const behind: readonly (readonly [part: string, pattern: RegExp])[] = [
  ["juice", /^(.+?)(?: juice|saft)$/iu],
  ["zest", /^(.+?)(?: (?:zest|rind|peel)|(?:schale|abrieb|zesten))$/iu],
  ["white", /^(.+?)(?: whites?|weiß|klar)$/iu],
  ["yolk", /^(.+?)(?: yolks?|gelbe?|dotter)$/iu],
  ["florets", /^(.+?)(?: (?:florets?|flowerets?)|röschen)$/iu],
];

const before: readonly (readonly [part: string, pattern: RegExp])[] = [
  ["juice", /^(?:jus (?:de |d[’'])|(?:zumo|jugo) de |sok(?:u)? z(?:e)? )(.+)$/iu],
  ["zest", /^(?:zestes? (?:de |d[’'])|ralladura de |skórk[ai] z(?:e)? )(.+)$/iu],
  ["white", /^(?:blancs? (?:de |d[’'])|claras? de |biał(?:ko|ka|ek) (?:z )?)(.+)$/iu],
  [
    "florets",
    /^(?:(?:fleurettes?|bouquets?|sommités?) de |(?:ramilletes?|floretes|ramitos?) de |różyczk[ai] |różyczek )(.+)$/iu,
  ],
  ["yolk", /^(?:jaunes? (?:de |d[’'])|yemas? de |żółt(?:ko|ka|ek) (?:z )?)(.+)$/iu],
];

interface SpokenPart {
  readonly part: string;
  readonly food: string;
}

/** "lemon juice", "Zitronensaft", "jaunes d'œufs": parts that words may name. Whether the food has one, its facts say. */
export const spokenParts = (words: string): readonly SpokenPart[] =>
  [...behind, ...before].flatMap(([part, pattern]) => {
    const food = pattern.exec(words)?.[1];
    return food === undefined ? [] : [{ part, food }];
  });

/** Words after the comma that make a part of the food: of these a person says which. */
export const partAfterComma =
  /(?<!\p{L})(?:juice|zest|rind|saft|schale|jus|zestes?|zumo|jugo|ralladura|sok|skórka|juiced|zested)(?!\p{L})/iu;
