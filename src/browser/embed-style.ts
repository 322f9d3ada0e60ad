/** Of the element alone: nothing of the page around it comes in, and nothing goes out. */
export const embedStyle = `
:host {
  all: initial;
  display: block;
  contain: inline-size;
  color-scheme: light dark;
  --paper: #f8faf2; --ink: #1d2a1f; --quiet: #4c5a49; --beet: #86164a; --string: #9a8455;
  font: 1rem/1.5 "Gill Sans Nova", "Gill Sans", Seravek, Ubuntu, Calibri, "Noto Sans", "DejaVu Sans", sans-serif;
  color: var(--ink);
}
:host([hidden]) { display: none; }
@media (prefers-color-scheme: dark) {
  :host { --paper: #1e261e; --ink: #e3e9d8; --quiet: #aab6a2; --beet: #f3a2c3; --string: #8a7a55; }
}
* { box-sizing: border-box; }
article { background: var(--paper); border: 1px solid var(--ink); border-top-width: 9px; padding: 1rem; overflow-wrap: break-word; }
h2, h3, legend, button, b { font-family: Rockwell, "Roboto Slab", "DejaVu Serif", serif; }
h2 { font-size: 1.35rem; line-height: 1.2; margin: 0 0 .2rem; }
h3, summary { font-size: 1.05rem; font-weight: 700; margin: .9rem 0 .3rem; }
summary { cursor: pointer; }
p, ul, dl { margin: 0 0 .5rem; padding: 0; }
ul { list-style: none; }
li { padding: .2rem 0; border-bottom: 1px dotted var(--string); }
a, ::slotted(a) { color: var(--beet); }
:focus-visible { outline: 3px solid var(--beet); outline-offset: 2px; }
.quiet, dd { color: var(--quiet); font-size: .93em; }
form { display: flex; flex-wrap: wrap; gap: .5rem; align-items: end; padding: .6rem 0; margin: .6rem 0; border-block: 1px solid var(--ink); }
label { display: block; }
input[type=number] { font: inherit; width: 6rem; min-height: 2.75rem; padding: .3rem .5rem; color: inherit; background: transparent; border: 1px solid var(--quiet); }
button { font-size: 1rem; font-weight: 700; min-height: 2.75rem; min-width: 2.75rem; padding: .3rem .9rem; color: var(--paper); background: var(--beet); border: 0; cursor: pointer; }
fieldset { border: 0; margin: 0 0 .5rem; padding: 0; min-width: 0; }
legend { font-weight: 700; padding: 0; }
input[type=checkbox] { width: 1.2rem; height: 1.2rem; margin: 0 .5rem 0 0; vertical-align: -.2rem; }
li:has(:checked) span { text-decoration: line-through; }
dt { font-weight: 700; }
dd { margin: 0 0 .3rem; }
.care li { border-bottom: 0; border-left: 4px solid var(--beet); padding-left: .7rem; margin-bottom: .5rem; }
.care p { margin: 0; }
@media print { form, summary { display: none; } article { border-color: #000; } }
`;
