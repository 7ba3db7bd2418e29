// A calculator in a procedure or lesson is a closed card with a link to the
// calculator's page. This script replaces the link by a button that opens the form
// below itself. The form is taken from the calculator's page, which is fetched
// once; in the one-file edition, from that calculator's article.
import { startCalculator } from "./calculator";
import type { Entry } from "./entries";
import { dropPage, fetchPage } from "./fetched";
import { all, byId, facts, make, uiText, Unavailable } from "./page";
import { isPart, release } from "./release";
import { part } from "./result";

/** Starts all cards of the page. */
export function startCards(): void {
  for (const card of all("[data-card]")) new Card(card);
}

let forms = 0; // number of inserted forms, for ids

class Card {
  private link: HTMLAnchorElement;
  private button: HTMLButtonElement;
  private form?: HTMLElement;
  private source?: Element; // in the one-file edition: a copy of the form before any script changed it
  private loading = false;

  constructor(private card: HTMLElement) {
    this.link = card.querySelector(".open a")!;
    this.button = make("button", "", this.link.textContent!) as HTMLButtonElement;
    this.button.type = "button";
    this.button.setAttribute("aria-expanded", "false");
    this.button.addEventListener("click", () => void this.toggle());
    this.link.replaceWith(this.button);
    if (facts.pocket) this.source = originalForm(this.link.hash, card.dataset.card!);
  }

  private async toggle(): Promise<void> {
    if (this.loading) return;
    const open = this.button.getAttribute("aria-expanded") !== "true";
    if (open && !this.form && !(await this.insert())) return;
    this.form!.hidden = !open;
    this.button.setAttribute("aria-expanded", String(open));
    this.button.textContent = open ? this.card.dataset.close! : this.link.textContent;
    this.card.classList.toggle("opened", open);
  }

  /** Puts the form below the button. On failure shows the reason and the link. */
  private async insert(): Promise<boolean> {
    const failed = part(this.card, "failed");
    failed.hidden = true;
    this.loading = true; // a disabled button would lose the focus
    try {
      this.form = await this.load();
    } catch (e) {
      if (!(e instanceof Unavailable)) console.error(e);
      if (e instanceof Unavailable && e.message === "ui.update.newer") failed.textContent = uiText(e.message);
      failed.hidden = false;
      this.button.after(" ", this.link);
      return false;
    } finally {
      this.loading = false;
    }
    this.link.remove();
    this.form.dataset.page = this.link.href;
    this.card.append(this.form);
    startCalculator(this.form, JSON.parse(this.card.dataset.set ?? "[]") as Entry[]);
    return true;
  }

  private async load(): Promise<HTMLElement> {
    if (this.source) return importForm(this.source);
    await release(); // throws "ui.update.newer" where this page is of another edition
    const page = await fetchPage(this.link.href);
    const form = page?.querySelector(`[data-calc="${this.card.dataset.card}"]`);
    if (!form || !(await isPart(page!))) {
      dropPage(this.link.href);
      throw new Error(this.link.href + ": no form of this edition");
    }
    importTexts(page!);
    return importForm(form);
  }
}

/** The form of a calculator's article, before a script has changed it. */
function originalForm(hash: string, id: string): Element | undefined {
  return byId(decodeURIComponent(hash.slice(1)))?.querySelector(`[data-calc="${id}"]`)?.cloneNode(true) as Element | undefined;
}

/** Adds the interface texts of calculators to this page, once. */
function importTexts(page: Document): void {
  const texts = page.querySelector(`[id^="say-calc-"]`);
  if (texts && !byId(texts.id)) document.body.append(document.importNode(texts, true));
}

const references = ["id", "for", "name", "aria-describedby", "aria-labelledby", "aria-controls"];

/** A copy of a form for this page, with unique ids and with headings one level below the card's. */
function importForm(source: Element): HTMLElement {
  const form = document.importNode(source, true) as HTMLElement;
  const prefix = `card${++forms}-`;
  for (const e of all("*", form)) {
    for (const name of references) {
      const ids = e.getAttribute(name);
      if (ids) e.setAttribute(name, ids.split(" ").map((id) => prefix + id).join(" "));
    }
  }
  for (const head of all("h2", form)) {
    const lower = make("h4", head.className);
    lower.append(...head.childNodes);
    head.replaceWith(lower);
  }
  return form;
}
