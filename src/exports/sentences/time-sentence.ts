import type { Problem } from "../../domain/problem.js";

/** Why nothing can be done at an hour, and what to write instead. */
export function timeSentence({ written, zone, why, offers }: Extract<Problem, { code: "BAD_TIME" }>): string {
  const either = offers.join(" or ");
  switch (why) {
    case "UNKNOWN_ZONE":
      return `There is no time zone "${zone}". ${offers.length > 0 ? `Did you mean ${either}?` : "Write its IANA name, such as Europe/Lisbon."}`;
    case "UNREADABLE":
      return `"${written}" is no date and time. Write it like ${either}.`;
    case "SKIPPED":
      return `${written} does not exist in ${zone}: the clocks are put forward over it. Write ${either}.`;
    case "REPEATED":
      return `${written} comes twice in ${zone}: the clocks are put back over it. Say which one: ${either}.`;
    case "OTHER_OFFSET":
      return `${written} has an offset that ${zone} does not have then. Leave it out, or write ${either}.`;
    case "PAST":
      return `${written} in ${zone} is over. Name a time to come, or do it at once, without a time.`;
    case "TOO_FAR":
      return `${written} is more than two years ahead. Name a time up to ${either}.`;
  }
}
