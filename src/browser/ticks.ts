/** Keeps the ticks of a list in this browser, and nowhere else. Without it the list can be ticked all the same. */
const form = document.querySelector<HTMLFormElement>("#ticks");
if (form !== null) remember(form, `prepwright ticks ${form.dataset["list"] ?? location.pathname}`);

function remember(list: HTMLFormElement, key: string): void {
  const store = ownStore();
  if (store === null) return;
  const boxes = [...list.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  const show = (): void => {
    const kept = store.getItem(key);
    const got = new Set((kept ?? "").split("\n"));
    // What is in the house is ticked until the reader says otherwise.
    for (const box of boxes) box.checked = kept === null ? box.defaultChecked : got.has(box.value);
  };
  show();
  list.addEventListener("change", () => {
    const got = boxes.filter(({ checked }) => checked).map(({ value }) => value);
    store.setItem(key, got.join("\n"));
  });
  list.addEventListener("reset", () => store.removeItem(key));
  // The same list in another window.
  addEventListener("storage", (event) => {
    if (event.key === key) show();
  });
}

/** null where the reader's browser keeps nothing for pages. */
function ownStore(): Storage | null {
  try {
    return localStorage;
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}
