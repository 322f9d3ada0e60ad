/** ISO date of a date column, which the driver gives as midnight UTC. */
export const dateText = (date: Date): string => date.toISOString().slice(0, 10);
