/**
 * What people call allergens beside the codes and their names: plurals that are words of their own, folded (no accents, `œ` as `oe`, `ł` as `l`).
 * As with the spellings of codes, only words that can mean nothing else stand here. A word for one kind that many use for the
 * whole group stands for the group: whoever avoids it then avoids too much rather than too little.
 */
export const spokenAllergens: Readonly<Record<string, string>> = {
  ...{ erdnusse: "peanut", mandeln: "almond", haselnusse: "hazelnut", walnusse: "walnut", kaschunusse: "cashew" },
  ...{
    cashewkerne: "cashew",
    pistazien: "pistachio",
    eier: "egg",
    fische: "fish",
    lupinen: "lupin",
    krebstier: "crustacean",
  },
  ...{ weichtier: "mollusc", sojabohnen: "soy", sesamsamen: "sesame", schalenfrucht: "tree-nut", sulfit: "sulphites" },
  ...{
    oeufs: "egg",
    poissons: "fish",
    arachides: "peanut",
    cacahuetes: "peanut",
    amandes: "almond",
    noisettes: "hazelnut",
  },
  ...{ pistaches: "pistachio", crustace: "crustacean", mollusque: "mollusc", mollusques: "mollusc", noix: "tree-nut" },
  ...{
    huevos: "egg",
    pescados: "fish",
    cacahuete: "peanut",
    almendras: "almond",
    avellanas: "hazelnut",
    nuez: "tree-nut",
  },
  ...{ nueces: "tree-nut", pistachos: "pistachio", anacardos: "cashew", crustaceo: "crustacean", molusco: "mollusc" },
  ...{ altramuces: "lupin", jajka: "egg", jajko: "egg", ryba: "fish", migdal: "almond" },
  ...{ skorupiak: "crustacean", mieczak: "mollusc" },
};

/** Words that may mean several: they are refused, and these are offered. */
export const spokenOfSeveral: Readonly<Record<string, readonly string[]>> = {
  ...{ nut: ["tree-nut", "peanut"], nuts: ["tree-nut", "peanut"], nuss: ["tree-nut", "peanut"] },
  ...{ nusse: ["tree-nut", "peanut"], "frutos secos": ["tree-nut", "peanut"] },
  // "Orzechy" is what the law calls tree nuts; these are as often peanuts.
  ...{ orzech: ["tree-nut", "peanut"], orzeszek: ["tree-nut", "peanut"], orzeszki: ["tree-nut", "peanut"] },
  ...{ shellfish: ["crustacean", "mollusc"], seafood: ["fish", "crustacean", "mollusc"] },
  ...{ meeresfruchte: ["crustacean", "mollusc"], "fruits de mer": ["crustacean", "mollusc"] },
  ...{
    marisco: ["crustacean", "mollusc"],
    mariscos: ["crustacean", "mollusc"],
    "owoce morza": ["crustacean", "mollusc"],
  },
};
