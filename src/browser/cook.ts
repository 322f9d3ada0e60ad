import { keepOffline } from "./keep-offline.js";
import { ownStore } from "./own-store.js";

/**
 * The kitchen view with a script: one step a screen, the place is kept on this device, the screen stays awake, timers run on although the page
 * sleeps. Without it the steps are a list with links.
 */
const cooking = document.querySelector<HTMLElement>("#cooking");
if (cooking !== null) open(cooking);
keepOffline();

interface Timer {
  readonly name: string;
  readonly ends: number;
}

interface TimerLine {
  readonly timer: Timer;
  readonly line: HTMLElement;
  readonly text: HTMLElement;
}

function open(list: HTMLElement): void {
  const store = ownStore();
  const place = `prepwright cook ${list.dataset["place"] ?? location.pathname}`;
  const steps = [...list.querySelectorAll<HTMLElement>(":scope > .step")];
  document.body.classList.add("stepwise");

  function show(id: string, byHand: boolean): void {
    const now = steps.find((step) => step.id === id) ?? steps[0];
    for (const step of steps) step.classList.toggle("now", step === now);
    if (now === undefined) return;
    // Who has put everything away begins at the start the next time.
    if (now.id === "away") store?.removeItem(place);
    else store?.setItem(place, now.id);
    if (!byHand) return;
    const title = now.querySelector<HTMLElement>("h2");
    title?.setAttribute("tabindex", "-1");
    title?.focus({ preventScroll: true });
    scrollTo({ top: 0 });
  }
  addEventListener("hashchange", () => show(location.hash.slice(1), true));
  const kept = store?.getItem(place) ?? null;
  show(location.hash.length > 1 ? location.hash.slice(1) : (kept ?? "start"), false);

  const all = document.createElement("button");
  all.type = "button";
  all.className = "mode";
  const name = (): void => {
    const one = document.body.classList.contains("stepwise");
    all.textContent = (one ? list.dataset["all"] : list.dataset["one"]) ?? "";
  };
  all.addEventListener("click", () => {
    document.body.classList.toggle("stepwise");
    name();
  });
  name();
  list.before(all);

  stayAwake();
  runTimers(list, `${place} timers`, store);
}

/** Asks for the screen to stay on, and again whenever the page comes back into view. A browser may refuse: then it goes dark as always. */
function stayAwake(): void {
  if (!("wakeLock" in navigator)) return;
  const ask = (): void => {
    if (document.visibilityState !== "visible") return;
    navigator.wakeLock.request("screen").catch((error: unknown) => console.info("The screen may go dark:", error));
  };
  document.addEventListener("visibilitychange", ask);
  ask();
}

function runTimers(list: HTMLElement, key: string, store: Storage | null): void {
  const shelf = document.querySelector<HTMLElement>("#timers");
  if (shelf === null) return;
  let lines = readTimers(store?.getItem(key) ?? null).map(lineOf);
  const save = (): void => store?.setItem(key, JSON.stringify(lines.map(({ timer }) => timer)));

  for (const holder of list.querySelectorAll<HTMLElement>(".timer")) {
    holder.hidden = false;
    holder.querySelector("button")?.addEventListener("click", () => {
      const minutes = Number(holder.dataset["minutes"]);
      lines = [...lines, lineOf({ name: holder.dataset["name"] ?? "", ends: Date.now() + minutes * 60_000 })];
      save();
      draw();
    });
  }

  function lineOf(timer: Timer): TimerLine {
    const line = document.createElement("p");
    const text = document.createElement("span");
    const stop = document.createElement("button");
    stop.type = "button";
    stop.textContent = list.dataset["stop"] ?? "";
    stop.setAttribute("aria-label", `${stop.textContent}: ${timer.name}`);
    stop.addEventListener("click", () => {
      lines = lines.filter((each) => each.timer !== timer);
      line.remove();
      save();
    });
    // A timer is not read aloud each second; its end is.
    text.setAttribute("role", "timer");
    line.append(text, stop);
    shelf?.append(line);
    return { timer, line, text };
  }

  function draw(): void {
    const now = Date.now();
    for (const { timer, line, text } of lines) {
      const left = Math.max(0, Math.round((timer.ends - now) / 1000));
      if (left > 0) {
        text.textContent = `${timer.name}: ${clockText(left)}`;
      } else if (!line.classList.contains("up")) {
        line.className = "up";
        text.setAttribute("role", "alert");
        text.textContent = `${timer.name}: ${list.dataset["up"] ?? ""}`;
        if ("vibrate" in navigator) navigator.vibrate([400, 200, 400]);
      }
    }
  }
  draw();
  setInterval(draw, 1000);
}

/** `1:05:09`, `5:09` */
function clockText(seconds: number): string {
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const rest = String(seconds % 60).padStart(2, "0");
  return hours === 0 ? `${minutes}:${rest}` : `${hours}:${String(minutes).padStart(2, "0")}:${rest}`;
}

function readTimers(kept: string | null): readonly Timer[] {
  if (kept === null) return [];
  const read: unknown = JSON.parse(kept);
  return Array.isArray(read)
    ? read.filter((each): each is Timer => typeof each?.name === "string" && typeof each?.ends === "number")
    : [];
}
