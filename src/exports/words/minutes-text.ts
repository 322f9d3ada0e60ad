/** "2 h 30 min", "45 min", "12 h". Whole minutes, a started one counts. */
export function minutesText(minutes: number): string {
  const whole = Math.ceil(minutes - 1e-9);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
