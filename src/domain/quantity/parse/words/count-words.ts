/** Words that count something sold or grown in one piece, by language, where English has another; singular first. */
type Rows = readonly string[];

const enContainers: Rows = [
  "can cans",
  "tin tins",
  "jar jars",
  "bottle bottles",
  "bag bags",
  "box boxes",
  "carton cartons",
  "package packages pkg pkgs",
  "packet packets",
  "pack packs",
  "pot pots",
  "tub tubs",
  "tube tubes",
  "sachet sachets",
  "pouch pouches",
  "punnet punnets",
  "container containers",
];

const enCounts: Rows = [
  "clove cloves",
  "bunch bunches",
  "head heads",
  "sprig sprigs",
  "stalk stalks",
  "stick sticks",
  "stem stems",
  "slice slices",
  "fillet fillets",
  "ear ears",
  "bulb bulbs",
  "knob knobs",
  "handful handfuls",
  "rib ribs",
  "sheet sheets",
  "cube cubes",
  "ball balls",
  "block blocks",
  "loaf loaves",
  "wedge wedges",
  "strip strips",
  "rasher rashers",
  "scoop scoops",
  "glass glasses",
  "mug mugs",
];

const deContainers: Rows = [
  "dose dosen",
  "glas gläser",
  "flasche flaschen",
  "packung packungen pkg",
  "päckchen pck",
  "beutel",
  "becher",
  "tüte tüten",
  "karton kartons",
];

const deCounts: Rows = [
  "bund bunde bd",
  "zehe zehen",
  "stange stangen stg",
  "zweig zweige",
  "scheibe scheiben",
  "kopf köpfe",
  "blatt blätter",
  "handvoll",
  "würfel",
  "stiel stiele",
  "knolle knollen",
];

const frContainers: Rows = [
  "boîte boîtes boite boites",
  "bocal bocaux",
  "bouteille bouteilles",
  "paquet paquets",
  "brique briques",
  "conserve conserves",
];

const frCounts: Rows = [
  "gousse gousses",
  "botte bottes",
  "bouquet bouquets",
  "branche branches",
  "brin brins",
  "tranche tranches",
  "tête têtes",
  "feuille feuilles",
  "poignée poignées",
  "tige tiges",
  "bâton bâtons",
  "noix",
  "verre verres",
];

const esContainers: Rows = [
  "lata latas",
  "bote botes",
  "tarro tarros",
  "botella botellas",
  "paquete paquetes",
  "bolsa bolsas",
  "sobre sobres",
  "brik briks",
];

const esCounts: Rows = [
  "diente dientes",
  "manojo manojos",
  "ramita ramitas",
  "rama ramas",
  "rebanada rebanadas",
  "loncha lonchas",
  "cabeza cabezas",
  "hoja hojas",
  "puñado puñados",
  "vaso vasos",
  "palo palos",
  "tallo tallos",
];

const plContainers: Rows = [
  "puszka puszki puszek",
  "słoik słoiki słoików słoika",
  "butelka butelki butelek",
  "paczka paczki paczek",
  "opakowanie opakowania opakowań",
  "torebka torebki torebek",
];

const plCounts: Rows = [
  "ząbek ząbki ząbków",
  "pęczek pęczki pęczków pęczka",
  "gałązka gałązki gałązek",
  "plaster plastry plastrów",
  "kromka kromki kromek",
  "główka główki główek",
  "liść liście liści",
  "garść garście garści",
  "łodyga łodygi łodyg",
  "laska laski lasek",
  "kubek kubki kubków kubka",
  "filiżanka filiżanki filiżanek",
];

export interface CountWord {
  readonly one: string;
  /** Sold with something in it, so that a size may stand beside it. */
  readonly container: boolean;
}

const compile = (containers: Rows, counts: Rows): readonly (readonly [string, CountWord])[] =>
  [...counts.map((row) => [row, false] as const), ...containers.map((row) => [row, true] as const)].flatMap(
    ([row, container]) => {
      const spellings = row.split(" ");
      const one = spellings[0] ?? row;
      return spellings.map((spelling): [string, CountWord] => [spelling, { one, container }]);
    },
  );

const english = compile(enContainers, enCounts);

/** By language; every language also knows the English words. */
export const countWords: Readonly<Record<string, ReadonlyMap<string, CountWord>>> = {
  en: new Map(english),
  de: new Map([...english, ...compile(deContainers, deCounts)]),
  fr: new Map([...english, ...compile(frContainers, frCounts)]),
  es: new Map([...english, ...compile(esContainers, esCounts)]),
  pl: new Map([...english, ...compile(plContainers, plCounts)]),
};
