import { endOf } from "../../../src/domain/storage/keeping-window.js";

// Run as a process of its own, because the zone of a machine is read once, at its start.
const session = { start: "2026-10-31T22:00:00-04:00", zone: "America/New_York" };
const days = endOf({ days: 4, counts: "DAYS", firstDay: 0 }, 0, session);
const hours = endOf({ days: 2, counts: "HOURS", firstDay: 0 }, 0, session);
const offset = new Date("2026-06-01T20:00:00Z").getTimezoneOffset();
process.stdout.write(JSON.stringify({ days, hours, offset }));
