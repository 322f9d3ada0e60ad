/** Meals whose share of a food is bought on one later trip to the shop. Days count from the session. */
export interface LaterTrip<M> {
  /** By day. */
  readonly meals: readonly M[];
  /** The first day on which it may be bought and still keeps until the last of these meals; never after the first of them. */
  readonly notBefore: number;
}

/**
 * The fewest later trips for meals that what is bought for the session would not keep until. One trip serves meals no further
 * apart than the food keeps.
 *
 * @param keeps whole days from buying
 */
export function laterTrips<M extends { readonly day: number }>(
  tooLate: readonly M[],
  keeps: number,
): readonly LaterTrip<M>[] {
  const trips: M[][] = [];
  for (const meal of tooLate.toSorted((a, b) => a.day - b.day)) {
    const trip = trips.at(-1);
    if (trip?.[0] !== undefined && meal.day - trip[0].day <= keeps) trip.push(meal);
    else trips.push([meal]);
  }
  return trips.map((meals) => ({ meals, notBefore: Math.max(1, (meals.at(-1)?.day ?? 0) - keeps) }));
}
