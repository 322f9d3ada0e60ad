import { describe, expect, it } from "vitest";
import { parseLine } from "../../../../../src/domain/quantity/parse.js";

const read = (raw: string, locale: string) => parseLine(raw, { locale, measures: "METRIC" });

// Phrases of each language: common practice, no source.
describe("phrases beside a measure", () => {
  it.each([
    ["en", "FOR_SERVING", "for serving|to serve|for garnish|for garnishing|to garnish|for dusting|for frying|for greasing|for sprinkling|for drizzling|for brushing"],
    ["de", "FOR_SERVING", "zum servieren|zum garnieren|zum braten|zum bestäuben|zum bestreuen"],
    ["fr", "FOR_SERVING", "pour servir|pour garnir|pour la cuisson"],
    ["es", "FOR_SERVING", "para servir|para decorar|para freír"],
    ["pl", "FOR_SERVING", "do podania|do dekoracji|do smażenia"],
    ["en", "TO_TASTE", "to taste|or to taste|or more to taste"],
    ["de", "TO_TASTE", "nach geschmack|oder nach Geschmack|nach Belieben"],
    ["fr", "TO_TASTE", "au goût|ou au goût|selon le goût|selon goût"],
    ["es", "TO_TASTE", "al gusto|o al gusto"],
    ["pl", "TO_TASTE", "do smaku|lub do smaku"],
    ["en", "OPTIONAL", "optional"],
    ["de", "OPTIONAL", "wahlweise|optional"],
    ["fr", "OPTIONAL", "facultatif|facultative|optionnel|optionnelle"],
    ["es", "OPTIONAL", "opcional"],
    ["pl", "OPTIONAL", "opcjonalnie"],
    ["en", "DIVIDED", "divided"],
    ["de", "DIVIDED", "geteilt|aufgeteilt"],
    ["fr", "DIVIDED", "divisé|divisée|divisés|divisées"],
    ["es", "DIVIDED", "dividido|dividida"],
    ["pl", "DIVIDED", "podzielone|podzielony"],
    ["en", "PLUS_MORE", "plus more|plus extra|and more|plus a little"],
    ["de", "PLUS_MORE", "plus etwas mehr|und etwas mehr"],
    ["fr", "PLUS_MORE", "plus un peu"],
    ["es", "PLUS_MORE", "más un poco|más extra"],
    ["pl", "PLUS_MORE", "plus trochę|i trochę więcej"],
  ])("%s: %s", (locale, modifier, phrases) => {
    for (const phrase of phrases.split("|")) {
      const noted = modifier === "FOR_SERVING" || modifier === "PLUS_MORE" ? [phrase] : [];
      for (const raw of [`20 g xyz, ${phrase}`, `20 g xyz ${phrase}`, `20 g xyz (${phrase})`]) {
        expect(read(raw, locale), raw).toMatchObject({
          amount: { low: "20", unit: "g" },
          food: "xyz",
          modifiers: [modifier],
          notes: noted,
          preparation: null,
          confidence: 1,
        });
      }
    }
  }); // prettier-ignore

  it.each([
    ["en", "as needed|as required"],
    ["de", "nach Bedarf"],
    ["fr", "au besoin|si besoin"],
    ["es", "según necesario|según sea necesario|cantidad necesaria"],
    ["pl", "w razie potrzeby"],
  ])("%s: as much as is needed", (locale, phrases) => {
    for (const phrase of phrases.split("|")) {
      expect(read(`xyz, ${phrase}`, locale), phrase).toMatchObject({ noAmount: "AS_NEEDED", food: "xyz", reasons: [] });
      expect(read(`20 g xyz, ${phrase}`, locale), phrase).toMatchObject({ noAmount: null, food: "xyz", modifiers: [] });
    }
  });

  it("stand as words of their own only", () => {
    expect(read("20 g undivided", "en")).toMatchObject({ food: "undivided", modifiers: [] });
    expect(read("20 g optionalist", "en")).toMatchObject({ food: "optionalist", modifiers: [] });
  });

  it("leave what is said behind them a preparation", () => {
    expect(read("20 g xyz, divided, sifted", "en")).toMatchObject({ food: "xyz", preparation: "sifted" });
    expect(read("20 g xyz, optional, plus more for dusting", "en")).toMatchObject({
      food: "xyz",
      modifiers: ["PLUS_MORE", "OPTIONAL"],
      notes: ["plus more for dusting"],
    });
  });
});

describe("the part of a fruit", () => {
  it.each([
    ["en", "juice", "juice of|juice from|the juice of|Juice of"],
    ["de", "juice", "Saft von|Saft einer|Saft eines"],
    ["fr", "juice", "jus de"],
    ["es", "juice", "zumo de|jugo de"],
    ["pl", "juice", "sok z"],
    ["en", "zest", "zest of|zest from|rind of|peel of|grated zest of|the grated peel from"],
    ["de", "zest", "Schale von|abgeriebene Schale von|Schale einer|abgeriebene Schale eines"],
    ["fr", "zest", "zeste de|zestes de"],
    ["es", "zest", "ralladura de"],
    ["pl", "zest", "skórka z"],
  ])("%s: %s", (locale, part, phrases) => {
    for (const phrase of phrases.split("|")) {
      expect(read(`${phrase} 2 xyz`, locale), phrase).toMatchObject({
        amount: { low: "2", unit: "piece" },
        food: "xyz",
        part,
        confidence: 1,
      });
    }
  });

  it("is elided in French", () => {
    expect(read("jus d’½ citron", "fr")).toMatchObject({ amount: { low: "1/2" }, food: "citron", part: "juice" });
    expect(read("zeste d'½ citron", "fr")).toMatchObject({ amount: { low: "1/2" }, food: "citron", part: "zest" });
  });

  it.each([
    "Zest and juice of",
    "juice and zest of",
    "the zest and juice of",
    "finely grated zest and juice of",
    "grated rind and juice of",
    "rind & juice of",
    "juice + rind of",
  ])("%s: the fruit is counted once", (phrase) => {
    expect(read(`${phrase} 2 limes`, "en")).toMatchObject({
      amount: { low: "2", unit: "piece" },
      food: "limes",
      part: null,
      notes: [phrase],
      reasons: [{ code: "SEVERAL_PARTS", about: phrase }],
    });
  });

  it("is asked for at the start only", () => {
    expect(read("200 g sorbet with juice of 2 limes", "en")).toMatchObject({ amount: { low: "200" }, part: null });
    expect(read("best juice of 2 limes", "en").part).toBeNull();
  });
});

describe("words between a measure and its food", () => {
  it.each([
    ["en", "of|of the|of a|of an|from"],
    ["de", "von|des"],
    ["fr", "du|de la|de"],
    ["es", "de"],
    ["pl", "z"],
  ])("%s: %s", (locale, fillers) => {
    for (const filler of fillers.split("|"))
      expect(read(`20 g ${filler} xyz`, locale), filler).toMatchObject({ food: "xyz", amount: { low: "20" } });
  });

  it.each(["20 g d'ail", "20 g d’ail", "20 g d' ail"])("%s", (raw) => {
    expect(read(raw, "fr").food).toBe("ail");
  });

  it("de l'", () => {
    expect(read("20 ml de l'eau", "fr").food).toBe("eau");
  });
});
