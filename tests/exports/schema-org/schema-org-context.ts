/**
 * The terms of schema.org that we use, as its own JSON-LD context defines them (schema.org 27.01, schemaorgcontext.jsonld), but
 * without the `@vocab` that would take in any word: what is not here is dropped, and the test sees it.
 */
const text = (name: string) => [name, { "@id": `schema:${name}` }] as const;
const address = (name: string) => [name, { "@id": `schema:${name}`, "@type": "@id" }] as const;
const date = (name: string) => [name, { "@id": `schema:${name}`, "@type": "schema:Date" }] as const;

export const schemaOrgContext = {
  "@context": {
    type: "@type",
    id: "@id",
    schema: "http://schema.org/",
    ...Object.fromEntries([
      ...["Recipe", "HowTo", "HowToSection", "HowToStep", "HowToTool", "ItemList", "ListItem"].map(text),
      ...["NutritionInformation", "Organization", "name", "description", "author", "publisher", "inLanguage"].map(text),
      ...["version", "prepTime", "cookTime", "totalTime", "recipeYield", "recipeIngredient", "recipeInstructions"].map(
        text,
      ),
      ...["keywords", "nutrition", "suitableForDiet", "servingSize", "calories", "proteinContent", "fatContent"].map(
        text,
      ),
      ...["saturatedFatContent", "carbohydrateContent", "sugarContent", "fiberContent", "sodiumContent"].map(text),
      ...["cholesterolContent", "itemListElement", "itemListOrder", "numberOfItems", "position", "item"].map(text),
      ...["step", "text", "tool", "CreativeWork", "citation"].map(text),
      ...["url", "license", "isBasedOn"].map(address),
      ...["datePublished"].map(date),
      ...["dateModified"].map(date),
    ]),
  },
};
