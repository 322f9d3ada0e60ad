/** Points of each part of a filter: a condition on every row that is looked at. */
const pointsOfPart = 2;

/** Points of each name of a food, which is read in every language. */
const pointsOfName = 2;

/** Points of a search: each of its words is looked for in several forms, and of those that no plan has, others are. */
const pointsOfSearch = 40;

/** Points of ranking thousands of candidates. */
const pointsOfRanking = 150;

/** Points of what no index holds: where few plans are so, every plan is looked at. */
const pointsOfFigures = 30;

const figures = /^(min|max|nutrients|withoutAppliances)/;

/** What a filter of plans costs beside its page. @param filter as it was given, not looked at yet */
export function planFilterCost(filter: unknown): number {
  if (typeof filter !== "object" || filter === null) return 0;
  const parts = Object.entries(filter).filter(([, value]) => value !== null && value !== undefined);
  return parts.reduce((sum, [name, value]) => {
    if (Array.isArray(value) && value.length === 0) return sum;
    const entries = Array.isArray(value) ? value.length : 1;
    if (name === "search") return sum + pointsOfSearch;
    if (name === "foodsAtHand") return sum + pointsOfRanking + entries * pointsOfName;
    if (figures.test(name)) return sum + pointsOfFigures;
    return sum + pointsOfPart + entries * pointsOfName;
  }, 0);
}
