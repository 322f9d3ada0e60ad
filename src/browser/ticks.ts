import { keepOffline } from "./keep-offline.js";
import { ownStore } from "./own-store.js";

/**
 * Keeps the ticks of a list in this browser, and nowhere else: by the plans on it and by food, so that they outlive a change of servings.
 * What is got sinks into the basket. Without it the list can be ticked all the same.
 */
const form = document.querySelector<HTMLFormElement>("#ticks");
if (form !== null) remember(form, `prepwright ticks ${form.dataset["plans"] ?? location.pathname}`);
keepOffline();

function remember(list: HTMLFormElement, key: string): void {
  const store = ownStore();
  const boxes = [...list.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  const places = new Map(boxes.map((box) => [box, rowOf(box).parentElement]));
  const basket = list.querySelector<HTMLDetailsElement>("#basket");
  const undo = list.querySelector<HTMLButtonElement>("#undo");
  let before: string | null = null;

  const ticked = (): string =>
    boxes
      .filter(({ checked }) => checked)
      .map(({ value }) => value)
      .join("\n");

  /** Each row where it belongs, in the order of the list. */
  function settle(): void {
    const focused = document.activeElement;
    for (const box of boxes) {
      const place = box.checked ? basket?.querySelector("ul") : places.get(box);
      const row = rowOf(box);
      if (place && row.parentElement !== place) place.append(row);
    }
    for (const place of new Set(places.values())) {
      const own = boxes.filter((box) => places.get(box) === place && !box.checked).map(rowOf);
      place?.append(...own);
      const aisle = place?.closest("fieldset");
      if (aisle) aisle.hidden = own.length === 0;
    }
    const got = boxes.filter(({ checked }) => checked).length;
    if (basket !== null) {
      basket.hidden = got === 0;
      const count = basket.querySelector("#basket-count");
      if (count !== null) count.textContent = String(got);
    }
    const count = list.querySelector("#count");
    const text = list.dataset["count"] ?? "{got} / {all}";
    if (count !== null) count.textContent = text.replace("{got}", String(got)).replace("{all}", String(boxes.length));
    // A row that moved takes the focus along.
    if (focused instanceof HTMLInputElement && focused !== document.activeElement) {
      if (!focused.checked || basket?.open === true) focused.focus();
    }
  }

  function show(kept: string | null): void {
    const got = new Set((kept ?? "").split("\n"));
    // What is in the house is ticked until the reader says otherwise.
    for (const box of boxes) box.checked = kept === null ? box.defaultChecked : got.has(box.value);
    settle();
  }

  show(store?.getItem(key) ?? null);
  list.addEventListener("change", () => {
    store?.setItem(key, ticked());
    settle();
  });
  list.addEventListener("reset", (event) => {
    event.preventDefault();
    before = ticked();
    store?.removeItem(key);
    show(null);
    if (undo !== null) {
      undo.hidden = false;
      undo.focus();
    }
  });
  undo?.addEventListener("click", () => {
    if (before !== null) store?.setItem(key, before);
    show(before);
    undo.hidden = true;
    list.querySelector<HTMLButtonElement>("button[type=reset]")?.focus();
  });
  // The same list in another window.
  addEventListener("storage", (event) => {
    if (event.key === key) show(event.newValue);
  });
}

/** Hoisted: the list is read before this line is reached. */
function rowOf(box: HTMLInputElement): HTMLElement {
  return box.closest("li") ?? box;
}
