import { describe, expect, it } from "vitest";
import { parseLine } from "../../../../../src/domain/quantity/parse.js";

const read = (raw: string, locale = "en") => parseLine(raw, { locale, measures: "METRIC" });

// Words of each language: common practice, no source.
describe("size and ripeness", () => {
  it.each([
    ["en", "large medium small big extra-large medium-sized ripe overripe firm fat"],
    ["de", "groß große großen großer großes klein kleine kleinen kleiner kleines mittelgroß mittelgroße reif reife reifen reifer"],
    ["fr", "grand grande grands grandes gros petit petite petits petites moyen moyenne moyens moyennes mûr mûre mûrs mûres"],
    ["es", "grandes pequeño pequeña pequeños pequeñas mediano mediana medianos medianas maduro madura maduros maduras"],
    ["pl", "duży duża duże dużych mały mała małe małych średni średnia średnie średnich dojrzały dojrzała dojrzałe dojrzałych"],
  ])("%s: a note, before the food and before a counting word", (locale, words) => {
    for (const word of words.split(" ")) {
      expect(read(`2 ${word} xyz`, locale), word).toMatchObject({ food: "xyz", notes: [word], form: null });
      expect(read(`2 ${word} cans xyz`, locale), word).toMatchObject({
        amount: { unit: "own:can" },
        food: "xyz",
        notes: [word],
      });
    }
  }); // prettier-ignore
});

describe("how full the spoon is", () => {
  it.each([
    ["HEAPED", "en", "heaped heaping rounded"],
    ["HEAPED", "de", "gehäufter gehäufte gehäuften gehäuft"],
    ["HEAPED", "es", "colmada colmadas"],
    ["HEAPED", "pl", "czubata czubate czubatych"],
    ["LEVEL", "en", "level"],
    ["LEVEL", "de", "gestrichener gestrichene gestrichen"],
    ["LEVEL", "fr", "rase rases"],
    ["LEVEL", "es", "rasa rasas"],
    ["LEVEL", "pl", "płaska płaskie płaskich"],
    ["SCANT", "en", "scant"],
    ["SCANT", "de", "knapp knapper knappe"],
    ["SCANT", "es", "escasa escasas"],
    ["APPROXIMATE", "en", "generous good about approximately approx approx. around roughly circa ca ca."],
    ["APPROXIMATE", "de", "etwa ungefähr"],
    ["APPROXIMATE", "fr", "environ"],
    ["APPROXIMATE", "es", "unos aproximadamente"],
    ["APPROXIMATE", "pl", "około ok ok."],
  ])("%s in %s: %s", (modifier, locale, words) => {
    for (const word of words.split(" ")) {
      expect(read(`2 ${word} tsp xyz`, locale), word).toMatchObject({
        amount: { low: "2", unit: "metric-tsp" },
        modifiers: [modifier],
        food: "xyz",
      });
    }
  });
});

describe("forms", () => {
  it.each([
    ["en", "chopped diced sliced grated minced shredded cubed crumbled mashed melted peeled pitted slivered halved quartered julienned torn sifted packed trimmed zested juiced"],
  ])("%s: each is its own", (locale, words) => {
    for (const form of words.split(" ")) {
      expect(read(`20 g ${form} xyz`, locale), form).toMatchObject({ food: "xyz", form });
      expect(read(`20 g xyz, ${form}`, locale), form).toMatchObject({ food: "xyz", form: null, preparation: form });
    }
  }); // prettier-ignore

  it.each([
    ["gehackt", "chopped"],
    ["gewürfelt", "diced"],
    ["geschnitten", "sliced"],
    ["gerieben", "grated"],
    ["geschält", "peeled"],
    ["entsteint", "pitted"],
    ["halbiert", "halved"],
    ["geviertelt", "quartered"],
    ["gesiebt", "sifted"],
  ])("de: %s in every ending is %s", (stem, form) => {
    for (const ending of ["", "e", "en", "er", "es", "em"])
      expect(read(`20 g ${stem}${ending} Xyz`, "de"), ending).toMatchObject({ food: "Xyz", form });
  });

  it.each([
    ["fr", "hachée", "chopped"],
    ["fr", "émincés", "sliced"],
    ["fr", "râpée", "grated"],
    ["es", "picadas", "chopped"],
    ["es", "ralladas", "grated"],
    ["pl", "posiekanej", "chopped"],
    ["pl", "startego", "grated"],
    ["pl", "obrana", "peeled"],
  ])("%s: xyz %s, behind the food, is %s", (locale, word, form) => {
    expect(read(`20 g xyz ${word}`, locale)).toMatchObject({ food: "xyz", form });
  });

  it("are sharpened by an adverb, before and behind", () => {
    expect(read("20 g finely chopped xyz")).toMatchObject({ food: "xyz", form: "chopped", notes: [] });
    expect(read("20 g xyz finely chopped")).toMatchObject({ food: "xyz", form: "chopped" });
    expect(read("20 g xyz finement hachés", "fr")).toMatchObject({ food: "xyz", form: "chopped" });
    expect(read("20 g freshly ground xyz")).toMatchObject({ food: "freshly ground xyz", form: null });
  });

  it.each([
    ["en", "peeled and diced|peeled & diced|peeled, diced"],
    ["de", "geschälte und gewürfelte"],
  ])("%s: two are both named: %s", (locale, phrases) => {
    for (const phrase of phrases.split("|"))
      expect(read(`20 g ${phrase} xyz`, locale), phrase).toMatchObject({ food: "xyz", form: "peeled, diced" });
  });

  it("said twice are named once", () => {
    expect(read("20 g chopped xyz, chopped")).toMatchObject({ form: "chopped", preparation: "chopped" });
    expect(read("20 g chopped chopped xyz")).toMatchObject({ food: "xyz", form: "chopped" });
  });

  it("before the unit come before those before the food", () => {
    expect(read("1 packed tsp chopped xyz")).toMatchObject({ form: "packed, chopped", food: "xyz" });
    expect(read("1 firmly packed tsp xyz")).toMatchObject({ form: "packed", food: "xyz" });
  });

  it("alone are the food", () => {
    expect(read("20 g chopped").food).toBe("chopped");
    expect(read("20 g ripe").food).toBe("ripe");
  });
});
