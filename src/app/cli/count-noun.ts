/** `1 document`, `2 documents`. */
export const countNoun = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;
