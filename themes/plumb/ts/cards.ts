// A calculator in a procedure or lesson is a closed card with a link to the
// calculator's own page. Here a button takes the link's place: it opens the form
// below itself. The form comes from the calculator's own page, fetched once; in
// the one-file edition, from that calculator's article.
import { startCalculator } from "./calculator";
import type { Entry } from "./entries";
import { forget, pageAt } from "./fetched";
import { all, byId, facts, make, say, Unavailable } from "./page";
import { isPart, release } from "./release";
import { part } from "./result";

export function startCards(): void {
  for (const card of all("[data-card]")) new Card(card);
}

let forms = 0; // inserted so far, for ids

class Card {
  private link: HTMLAnchorElement;
  private button: HTMLButtonElement;
  private form?: HTMLElement;
  private source?: Element; // in the one-file edition, the form as it came
  private loading = false;

  constructor(private card: HTMLElement) {
    this.link = card.querySelector(".open a")!;
    this.button = make("button", "", this.link.textContent!) as HTMLButtonElement;
    this.button.type = "button";
    this.button.setAttribute("aria-expanded", "false");
    this.button.addEventListener("click", () => void this.toggle());
    this.link.replaceWith(this.button);
    if (facts.pocket) this.source = pristine(this.link.hash, card.dataset.card!);
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

  /** Puts the form below the button. Where it cannot be had, gives the reason and shows the link again. */
  private async insert(): Promise<boolean> {
    const failed = part(this.card, "failed");
    failed.hidden = true;
    this.loading = true; // a disabled button would lose the focus
    try {
      this.form = await this.load();
    } catch (e) {
      if (!(e instanceof Unavailable)) console.error(e);
      if (e instanceof Unavailable && e.message === "ui.update.newer") failed.textContent = say(e.message);
      failed.hidden = false;
      this.button.after(" ", this.link);
      return false;
    } finally {
      this.loading = false;
    }
    this.link.remove();
    this.card.append(this.form);
    startCalculator(this.form, JSON.parse(this.card.dataset.set ?? "[]") as Entry[]);
    return true;
  }

  private async load(): Promise<HTMLElement> {
    if (this.source) return adapted(this.source);
    await release(); // gives its own reason where this page is of another edition
    const page = await pageAt(this.link.href);
    const found = page?.querySelector(`[data-calc="${this.card.dataset.card}"]`);
    if (!found || !(await isPart(page!))) {
      forget(this.link.href);
      throw new Error(this.link.href + ": no form of this edition");
    }
    takeTexts(page!);
    return adapted(found);
  }
}

/** The form of a calculator's article, before a script has changed it. */
function pristine(hash: string, id: string): Element | undefined {
  return byId(decodeURIComponent(hash.slice(1)))?.querySelector(`[data-calc="${id}"]`)?.cloneNode(true) as Element | undefined;
}

/** Takes over the texts that a calculator shows, once. */
function takeTexts(page: Document): void {
  const texts = page.querySelector(`[id^="say-calc-"]`);
  if (texts && !byId(texts.id)) document.body.append(document.importNode(texts, true));
}

const references = ["id", "for", "name", "aria-describedby", "aria-labelledby", "aria-controls"];

/** A copy of a form, fitted into this page: its ids are new on this page, its headings lie below the card's. */
function adapted(found: Element): HTMLElement {
  const form = document.importNode(found, true) as HTMLElement;
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
