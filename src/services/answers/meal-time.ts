import { usualMealTime, type Meal } from "../../domain/model/plan.js";

/** The hour at which a meal is eaten, `HH:MM`. */
export const mealTime = ({ at }: Pick<Meal, "at">): string => at ?? usualMealTime;
