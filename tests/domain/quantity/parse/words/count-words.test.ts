import { describe, expect, it } from "vitest";
import { parseLine } from "../../../../../src/domain/quantity/parse.js";

/** What is sold or grown in one piece, singular first. Common practice, no source. */
const rows: readonly (readonly [language: string, kind: "CONTAINER" | "COUNT", words: string])[] = [
  ["en", "CONTAINER", "can cans"],
  ["en", "CONTAINER", "tin tins"],
  ["en", "CONTAINER", "jar jars"],
  ["en", "CONTAINER", "bottle bottles"],
  ["en", "CONTAINER", "bag bags"],
  ["en", "CONTAINER", "box boxes"],
  ["en", "CONTAINER", "carton cartons"],
  ["en", "CONTAINER", "package packages pkg pkgs"],
  ["en", "CONTAINER", "packet packets"],
  ["en", "CONTAINER", "pack packs"],
  ["en", "CONTAINER", "pot pots"],
  ["en", "CONTAINER", "tub tubs"],
  ["en", "CONTAINER", "tube tubes"],
  ["en", "CONTAINER", "sachet sachets"],
  ["en", "CONTAINER", "pouch pouches"],
  ["en", "CONTAINER", "punnet punnets"],
  ["en", "CONTAINER", "container containers"],
  ["en", "COUNT", "clove cloves"],
  ["en", "COUNT", "bunch bunches"],
  ["en", "COUNT", "head heads"],
  ["en", "COUNT", "sprig sprigs"],
  ["en", "COUNT", "stalk stalks"],
  ["en", "COUNT", "stick sticks"],
  ["en", "COUNT", "stem stems"],
  ["en", "COUNT", "slice slices"],
  ["en", "COUNT", "fillet fillets"],
  ["en", "COUNT", "ear ears"],
  ["en", "COUNT", "bulb bulbs"],
  ["en", "COUNT", "knob knobs"],
  ["en", "COUNT", "handful handfuls"],
  ["en", "COUNT", "rib ribs"],
  ["en", "COUNT", "sheet sheets"],
  ["en", "COUNT", "cube cubes"],
  ["en", "COUNT", "ball balls"],
  ["en", "COUNT", "block blocks"],
  ["en", "COUNT", "loaf loaves"],
  ["en", "COUNT", "wedge wedges"],
  ["en", "COUNT", "strip strips"],
  ["en", "COUNT", "rasher rashers"],
  ["en", "COUNT", "scoop scoops"],
  ["de", "CONTAINER", "dose dosen"],
  ["de", "CONTAINER", "glas gläser"],
  ["de", "CONTAINER", "flasche flaschen"],
  ["de", "CONTAINER", "packung packungen pkg"],
  ["de", "CONTAINER", "päckchen pck"],
  ["de", "CONTAINER", "beutel"],
  ["de", "CONTAINER", "becher"],
  ["de", "CONTAINER", "tüte tüten"],
  ["de", "CONTAINER", "karton kartons"],
  ["de", "COUNT", "bund bunde"],
  ["de", "COUNT", "zehe zehen"],
  ["de", "COUNT", "stange stangen"],
  ["de", "COUNT", "zweig zweige"],
  ["de", "COUNT", "scheibe scheiben"],
  ["de", "COUNT", "kopf köpfe"],
  ["de", "COUNT", "blatt blätter"],
  ["de", "COUNT", "handvoll"],
  ["de", "COUNT", "würfel"],
  ["de", "COUNT", "stiel stiele"],
  ["de", "COUNT", "knolle knollen"],
  ["fr", "CONTAINER", "boîte boîtes boite boites"],
  ["fr", "CONTAINER", "bocal bocaux"],
  ["fr", "CONTAINER", "bouteille bouteilles"],
  ["fr", "CONTAINER", "paquet paquets"],
  ["fr", "CONTAINER", "brique briques"],
  ["fr", "CONTAINER", "conserve conserves"],
  ["fr", "COUNT", "gousse gousses"],
  ["fr", "COUNT", "botte bottes"],
  ["fr", "COUNT", "bouquet bouquets"],
  ["fr", "COUNT", "branche branches"],
  ["fr", "COUNT", "brin brins"],
  ["fr", "COUNT", "tranche tranches"],
  ["fr", "COUNT", "tête têtes"],
  ["fr", "COUNT", "feuille feuilles"],
  ["fr", "COUNT", "poignée poignées"],
  ["fr", "COUNT", "tige tiges"],
  ["fr", "COUNT", "noix"],
  ["fr", "COUNT", "verre verres"],
  ["es", "CONTAINER", "lata latas"],
  ["es", "CONTAINER", "bote botes"],
  ["es", "CONTAINER", "tarro tarros"],
  ["es", "CONTAINER", "botella botellas"],
  ["es", "CONTAINER", "paquete paquetes"],
  ["es", "CONTAINER", "bolsa bolsas"],
  ["es", "CONTAINER", "sobre sobres"],
  ["es", "CONTAINER", "brik briks"],
  ["es", "COUNT", "diente dientes"],
  ["es", "COUNT", "manojo manojos"],
  ["es", "COUNT", "ramita ramitas"],
  ["es", "COUNT", "rama ramas"],
  ["es", "COUNT", "rebanada rebanadas"],
  ["es", "COUNT", "loncha lonchas"],
  ["es", "COUNT", "cabeza cabezas"],
  ["es", "COUNT", "hoja hojas"],
  ["es", "COUNT", "puñado puñados"],
  ["es", "COUNT", "vaso vasos"],
  ["es", "COUNT", "tallo tallos"],
  ["pl", "CONTAINER", "puszka puszki puszek"],
  ["pl", "CONTAINER", "słoik słoiki słoików"],
  ["pl", "CONTAINER", "butelka butelki butelek"],
  ["pl", "CONTAINER", "paczka paczki paczek"],
  ["pl", "CONTAINER", "opakowanie opakowania opakowań"],
  ["pl", "CONTAINER", "torebka torebki torebek"],
  ["pl", "COUNT", "ząbek ząbki ząbków"],
  ["pl", "COUNT", "pęczek pęczki pęczków"],
  ["pl", "COUNT", "gałązka gałązki gałązek"],
  ["pl", "COUNT", "plaster plastry plastrów"],
  ["pl", "COUNT", "kromka kromki kromek"],
  ["pl", "COUNT", "główka główki główek"],
  ["pl", "COUNT", "liść liście liści"],
  ["pl", "COUNT", "garść garście garści"],
  ["pl", "COUNT", "łodyga łodygi łodyg"],
];

const read = (language: string, word: string) =>
  parseLine(`2 ${word} (400 g) xyz`, { locale: language, measures: "METRIC" });

const grams = (count: string) => ({ low: count, high: count, unit: "g" });

describe("counting words", () => {
  it.each(rows)("%s, %s: %s", (language, kind, words) => {
    const [one = ""] = words.split(" ");
    for (const word of words.split(" ")) {
      const line = read(language, word);
      expect([line.food, line.amount], word).toEqual(["xyz", { low: "2", high: "2", unit: `own:${one}` }]);
      if (kind === "CONTAINER") expect([line.pack?.net, line.alternates], word).toEqual([grams("800"), []]);
      else expect([line.pack, line.alternates], word).toEqual([null, [grams("400")]]);
    }
  });

  it.each(["de", "fr", "es", "pl", "it"])("in %s are the English ones as well", (language) => {
    expect(read(language, "cans").amount?.unit).toBe("own:can");
    expect(read(language, "sprigs").amount?.unit).toBe("own:sprig");
  });

  it("of one language are no counting words of another", () => {
    expect(read("en", "dosen").amount?.unit).toBe("piece");
    expect(read("de", "puszki").amount?.unit).toBe("piece");
  });
});
