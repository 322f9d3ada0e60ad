/** A food of the demo as its recall leaves it: it contains an allergen that nobody knew of. */
export const recall = `kind: food
slug: carrot
names: { en: { one: carrot, many: carrots } }
aisle: vegetables
shopped-by: mass
allergens:
  - { code: peanut, presence: contains, source: { kind: published, title: Recall notice of the grower } }
`;

export const saveFoods = `mutation ($input: SaveFoodsInput!) { saveFoods(input: $input) { changed problems { message } } }`;
export const save = `mutation ($input: SaveDraftInput!) { savePlanDraft(input: $input) { problems { message } } }`;
export const publish = `mutation ($input: PublishPlanInput!) { publishPlan(input: $input) { problems { message } } }`;
