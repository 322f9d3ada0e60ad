/** That readers are shown cautions of which the writer names none. */
export function cautionsSentence(about: string, cautions: readonly string[]): string {
  const [only, ...others] = cautions;
  const shown = others.length === 0 ? `the caution "${only}"` : `${cautions.length} cautions`;
  const which = others.length === 0 ? "" : `: ${cautions.join(", ")}`;
  const them = others.length === 0 ? "it" : "them";
  return `Readers are shown ${shown} for "${about}"${which}. Say so in your text too, or name ${them} under \`cautions\`.`;
}
