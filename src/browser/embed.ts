import { cardView } from "./card-view.js";
import { element } from "./elements.js";
import { embedStyle } from "./embed-style.js";
import { cardAddress, fetchCard, type Fetched } from "./fetch-card.js";

/** How long a reader is let wait before the link is offered instead, in milliseconds. */
const patience = 20_000;

/**
 * `<prepwright-plan src="https://plans.example/p/publisher/plan" servings="6"><a href="…">The plan</a></prepwright-plan>`
 *
 * Shows a plan inside another page. The link inside stands where there is no script, until the plan is there, and where it cannot
 * be had. Styles are made as a sheet object, so that a page that allows no inline style can hold it.
 */
class PrepwrightPlan extends HTMLElement {
  static readonly observedAttributes = ["src", "servings"];

  readonly #body = element("div");
  readonly #status = element("p", { role: "status" });
  readonly #title = element("h2", { id: "title" });
  readonly #count = element("input", { type: "number", id: "count", min: "1", step: "1", inputmode: "numeric" });
  readonly #form = this.#control();
  readonly #got = new Set<string>();
  #asking: AbortController | null = null;

  constructor() {
    super();
    const root = this.attachShadow({ mode: "open", delegatesFocus: true });
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(embedStyle);
    root.adoptedStyleSheets = [sheet];
    root.append(
      element(
        "article",
        { "aria-labelledby": "title" },
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

  attributeChangedCallback(_name: string, before: string | null, after: string | null): void {
    if (this.isConnected && before !== after) void this.#ask();
  }

  #control(): HTMLFormElement {
    const form = element(
      "form",
      { novalidate: "" },
      element("div", {}, element("label", { for: "count" }, "How many eat"), this.#count),
      element("button", { type: "submit" }, "Work it out"),
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      const servings = this.#count.value;
      if (servings === this.getAttribute("servings")) void this.#ask();
      else this.setAttribute("servings", servings);
    });
    return form;
  }

  async #ask(): Promise<void> {
    this.#asking?.abort();
    const asking = new AbortController();
    this.#asking = asking;
    const address = cardAddress(this.getAttribute("src") ?? "", this.getAttribute("servings"));
    if (address === null) {
      this.#show({ told: "This plan has no address that can be read." });
      return;
    }
    this.#status.textContent = "The plan is being worked out.";
    const slow = setTimeout(() => asking.abort("slow"), patience);
    try {
      const fetched = await fetchCard(address, asking.signal);
      if (this.#asking === asking) this.#show(fetched);
    } catch (error) {
      // Given up for a newer question, or taken off the page: nobody waits for this answer.
      if (!asking.signal.aborted) throw error;
      if (asking.signal.reason === "slow") this.#show({ told: "This takes too long. Please follow the link." });
    } finally {
      clearTimeout(slow);
    }
  }

  #show(fetched: Fetched): void {
    const slot = this.shadowRoot?.querySelector("slot");
    if ("told" in fetched) {
      this.#status.textContent = fetched.told;
      if (slot) slot.hidden = false;
      return;
    }
    const { card } = fetched;
    if (slot) slot.hidden = true;
    this.#title.hidden = false;
    this.#form.hidden = false;
    this.#title.textContent = card.title;
    this.#title.lang = card.language;
    this.#title.dir = card.direction;
    this.#count.value = String(card.servings);
    this.#status.textContent = card.servings === 1 ? "Worked out for 1." : `Worked out for ${card.servings}.`;
    this.#body.replaceChildren(...cardView(card, this.#got));
  }
}

if (customElements.get("prepwright-plan") === undefined) customElements.define("prepwright-plan", PrepwrightPlan);
