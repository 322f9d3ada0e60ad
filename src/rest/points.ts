/**
 * What a page, or an answer below /v1, costs of a budget: it may be computed afresh, for any household. What lies ready (style sheets, schemas) costs
 * one point, and an operation over GraphQL its published cost.
 */
export const pointsOfAnswer = 500;
