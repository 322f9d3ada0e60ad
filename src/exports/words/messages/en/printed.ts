import { message } from "../../message.js";

/** Times as published rules print them. `count` is the upper end of the range. */
export const printed = {
  printed: {
    hour: message("{count, plural, one {{range} hour} other {{range} hours}}", { range: "3–4", count: 4 }),
    day: message("{count, plural, one {{range} day} other {{range} days}}", { range: "3–4", count: 4 }),
    week: message("{count, plural, one {{range} week} other {{range} weeks}}", { range: "3–4", count: 4 }),
    month: message("{count, plural, one {{range} month} other {{range} months}}", { range: "3–4", count: 4 }),
    year: message("{count, plural, one {{range} year} other {{range} years}}", { range: "1", count: 1 }),
  },
};
