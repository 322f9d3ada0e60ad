/** ISO 8601: `PT2H30M` of minutes; whole minutes, a started one counts, `PT0S` of none. Days are not used: they differ in length. */
// @ts-nocheck

export function isoDuration(minutes: number): string {
  const whole = Math.ceil(minutes - 1e-9);
  if (whole <= 0) return "PT0S";
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return `PT${hours === 0 ? "" : `${hours}H`}${rest === 0 ? "" : `${rest}M`}`;
}
