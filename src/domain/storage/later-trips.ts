/** A meal that waits for a food. Days count from the session. */
interface WaitingMeal {
  readonly day: number;
  /** Whole days that the food keeps once it is bought, until the hour of this meal. */
  readonly keeps: number;
}

/** Meals whose share of a food is bought on one later trip to the shop. */
interface LaterTrip<M> {
  /** By the day from which on it may be bought for them. */
  readonly meals: readonly M[];
  /** The first day on which it may be bought and still keeps until each of these meals; never after the first of them. */
  readonly notBefore: number;
}

/**
 * The fewest later trips for meals that what is bought for the session would not keep until. A trip is made as late as its most
 * urgent meal allows, so it serves all of which the first day to buy for them has come by then.
 */
export function laterTrips<M extends WaitingMeal>(tooLate: readonly M[]): readonly LaterTrip<M>[] {
  const opens = ({ day, keeps }: M): number => Math.max(1, day - keeps);
  const trips: M[][] = [];
  for (const meal of tooLate.toSorted((a, b) => a.day - b.day)) {
    const trip = trips.at(-1);
    if (trip?.[0] !== undefined && opens(meal) <= trip[0].day) trip.push(meal);
    else trips.push([meal]);
  }
  return trips.map((meals) => ({ meals, notBefore: Math.max(...meals.map(opens)) }));
}
