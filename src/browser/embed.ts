import type { PlanCard } from "../exports/page/card-shape.js";
import { cardView, type CardView } from "./card-view.js";
import { element } from "./elements.js";
import { embedStyle } from "./embed-style.js";
import { embedLanguage, embedWords, spokenTag, type EmbedWords } from "./embed-words.js";
import { cardAddress, fetchCard, type Fetched } from "./fetch-card.js";

/** How long a reader is let wait before the link is offered instead, in milliseconds. */
const patience = 20_000;

/**
 * `<prepwright-plan src="https://plans.example/p/publisher/plan" servings="6"><a href="…">The plan</a></prepwright-plan>`
 *
 * Shows a plan inside another page. The link inside stands where there is no script, until the plan is there, and where it cannot
 * be had. Styles are made as a sheet object, so that a page that allows no inline style can hold it. `theme`, `view`, `pictures` and
 * `lang` choose how it is shown; it tells of itself by the events `load`, `change` and `error`.
 */
class PrepwrightPlan extends HTMLElement {
  static readonly observedAttributes = ["src", "servings", "lang", "view", "pictures"];

  readonly #body = element("div");
  readonly #status = element("p", { role: "status", part: "status" });
  readonly #title = element("h2", { id: "title", part: "title" });
  readonly #count = element("input", { type: "number", id: "count", min: "1", step: "1", inputmode: "numeric" });
  readonly #label = element("label", { for: "count" });
  readonly #button = element("button", { type: "submit" });
  readonly #form = this.#control();
  readonly #got = new Set<string>();
  #asking: AbortController | null = null;
  #card: PlanCard | null = null;

  constructor() {
    super();
    const root = this.attachShadow({ mode: "open", delegatesFocus: true });
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(embedStyle);
    root.adoptedStyleSheets = [sheet];
    root.append(
      element(
        "article",
        { "aria-labelledby": "title", part: "card" },
        this.#title,
        element("slot"),
        this.#status,
        this.#form,
        this.#body,
      ),
    );
    this.#title.hidden = true;
    this.#form.hidden = true;
  }

  connectedCallback(): void {
    void this.#ask();
  }

  disconnectedCallback(): void {
    this.#asking?.abort();
  }

  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (!this.isConnected || before === after) return;
    if (name !== "view" && name !== "pictures") void this.#ask();
    else if (this.#card !== null) this.#draw(this.#card);
  }

  get #words(): EmbedWords {
    return embedWords(this.getAttribute("lang") ?? this.#card?.wordsIn ?? null);
  }

  get #view(): CardView {
    const view = this.getAttribute("view");
    return view === "compact" || view === "list" ? view : "whole";
  }

  #tell(kind: "load" | "change" | "error", detail: object): void {
    this.dispatchEvent(new CustomEvent(kind, { detail }));
  }

  #control(): HTMLFormElement {
    const form = element(
      "form",
      { novalidate: "", part: "form" },
      element("div", {}, this.#label, this.#count),
      this.#button,
    );
    this.#body.addEventListener("change", () => this.#tell("change", { got: [...this.#got] }));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const servings = this.#count.value;
      if (!isCount(servings)) {
        this.#show({ told: this.#words.servings, status: null });
        return;
      }
      this.#tell("change", { servings: Number(servings) });
      if (servings === this.getAttribute("servings")) void this.#ask();
      else this.setAttribute("servings", servings);
    });
    return form;
  }

  async #ask(): Promise<void> {
    this.#asking?.abort();
    const asking = new AbortController();
    this.#asking = asking;
    const words = this.#words;
    const servings = this.getAttribute("servings");
    const lang = this.getAttribute("lang");
    const address = cardAddress(this.getAttribute("src") ?? "", servings, spokenTag(lang));
    if (address === null || (servings !== null && servings !== "" && !isCount(servings))) {
      this.#show({ told: address === null ? words.noAddress : words.servings, status: null });
      return;
    }
    this.#status.textContent = words.loading;
    const slow = setTimeout(() => asking.abort("slow"), patience);
    try {
      const fetched = await fetchCard(address, asking.signal, words.unreachable);
      if (this.#asking === asking) this.#show(fetched);
    } catch (error) {
      // Given up for a newer question, or taken off the page: nobody waits for this answer.
      if (!asking.signal.aborted) throw error;
      if (asking.signal.reason === "slow") this.#show({ told: words.slow, status: null });
    } finally {
      clearTimeout(slow);
    }
  }

  #show(fetched: Fetched): void {
    const slot = this.shadowRoot?.querySelector("slot");
    if ("told" in fetched) {
      this.#status.textContent = fetched.told;
      this.#status.lang = embedLanguage(this.getAttribute("lang") ?? this.#card?.wordsIn ?? null);
      this.#tell("error", { message: fetched.told, status: fetched.status });
      if (slot) slot.hidden = false;
      return;
    }
    const { card } = fetched;
    this.#card = card;
    if (slot) slot.hidden = true;
    this.#title.hidden = false;
    this.#form.hidden = false;
    this.#title.textContent = card.title;
    this.#title.lang = card.language;
    this.#title.dir = card.direction;
    this.#count.value = String(card.servings);
    this.#draw(card);
    const { title, servings, revision, page } = card;
    this.#tell("load", { title, servings, revision, page });
  }

  #draw(card: PlanCard): void {
    const words = this.#words;
    const view = this.#view;
    const article = this.shadowRoot?.querySelector("article");
    if (article) article.lang = embedLanguage(this.getAttribute("lang") ?? card.wordsIn);
    this.#label.textContent = words.people;
    this.#button.textContent = words.update;
    this.#status.textContent = `${words.workedOut} ${card.servings}`;
    const pictures = this.getAttribute("pictures") === "yes";
    this.#body.replaceChildren(...cardView(card, this.#got, { view, pictures, words }));
  }
}

/** Whether somebody wrote how many eat: anything else is told before anything is asked. */
const isCount = (text: string): boolean => /^[1-9]\d{0,6}$/.test(text.trim());

if (customElements.get("prepwright-plan") === undefined) customElements.define("prepwright-plan", PrepwrightPlan);
