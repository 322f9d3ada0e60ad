const colours = (paper: string, ink: string, quiet: string, accent: string, rule: string): string =>
  Object.entries({ paper, ink, quiet, accent, rule })
    .map(([name, colour]) => `--${name}: var(--prepwright-${name}, ${colour});`)
    .join(" ");

const light = colours("#f8faf2", "#1d2a1f", "#4c5a49", "#86164a", "#9a8455");
const dark = colours("#1e261e", "#e3e9d8", "#aab6a2", "#f3a2c3", "#8a7a55");

/** Of the element alone: nothing of the page around it comes in but its custom properties and parts, and nothing goes out. */
export const embedStyle = `
:host {
  all: initial;
  display: block;
  contain: inline-size;
  color-scheme: light dark;
  ${light}
  font: 1rem/1.5 var(--prepwright-font, "Gill Sans Nova", "Gill Sans", Seravek, Ubuntu, Calibri, "Noto Sans", "DejaVu Sans", sans-serif);
  color: var(--ink);
}
:host([hidden]) { display: none; }
@media (prefers-color-scheme: dark) {
  :host(:not([theme=light])) { ${dark} }
}
:host([theme=light]) { color-scheme: light; }
:host([theme=dark]) { color-scheme: dark; ${dark} }
* { box-sizing: border-box; }
article { background: var(--paper); border: 1px solid var(--ink); border-top-width: 9px; padding: 1rem; overflow-wrap: break-word; }
h2, h3, legend, button, b { font-family: Rockwell, "Roboto Slab", "DejaVu Serif", serif; }
h2 { font-size: 1.35rem; line-height: 1.2; margin: 0 0 .2rem; }
h3, summary { font-size: 1.05rem; font-weight: 700; margin: .9rem 0 .3rem; }
summary { cursor: pointer; }
p, ul, dl { margin: 0 0 .5rem; padding: 0; }
ul { list-style: none; }
li { padding: .2rem 0; border-bottom: 1px dotted var(--rule); }
a, ::slotted(a) { color: var(--accent); }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.quiet, dd { color: var(--quiet); font-size: .93em; }
form { display: flex; flex-wrap: wrap; gap: .5rem; align-items: end; padding: .6rem 0; margin: .6rem 0; border-block: 1px solid var(--ink); }
label { display: block; }
input[type=number] { font: inherit; width: 6rem; min-height: 2.75rem; padding: .3rem .5rem; color: inherit; background: transparent; border: 1px solid var(--quiet); }
button { font-size: 1rem; font-weight: 700; min-height: 2.75rem; min-width: 2.75rem; padding: .3rem .9rem; color: var(--paper); background: var(--accent); border: 0; cursor: pointer; }
fieldset { border: 0; margin: 0 0 .5rem; padding: 0; min-width: 0; }
legend { font-weight: 700; padding: 0; }
input[type=checkbox] { width: 1.2rem; height: 1.2rem; margin: 0 .5rem 0 0; vertical-align: -.2rem; }
li:has(:checked) span { text-decoration: line-through; }
dt { font-weight: 700; }
dd { margin: 0 0 .3rem; }
.care li { border-bottom: 0; border-left: 4px solid var(--accent); padding-left: .7rem; margin-bottom: .5rem; }
.care p { margin: 0; }
.late { border-left: 4px solid var(--accent); padding-left: .7rem; margin: .2rem 0; }
figure { margin: 0 0 .6rem; }
img { display: block; width: 100%; height: auto; }
@media print { form, summary { display: none; } article { border-color: #000; } }
`;
