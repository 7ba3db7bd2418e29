// The questions of a lesson, one at a time: choices first, then steps and numbers. A
// row of numbered marks shows which were right and leads to each. Without script all
// questions are listed.
import { answers } from "./answers";
import { all, make, uiText } from "./page";
import { button, Question } from "./question";

const kinds = ["choice", "order", "number"];

export class Quiz {
  private row = make("ol", "tally");
  private score = make("p", "score");
  private current = -1;
  private items: HTMLElement[];
  private lang: string;

  /** list contains the questions; onAnswered is called when an answer has been stored. */
  constructor(private list: HTMLElement, onAnswered: () => void) {
    this.lang = list.closest<HTMLElement>("[lang]")!.lang;
    const items = all("[data-question]", list);
    this.items = items.sort((a, b) => kinds.indexOf(a.dataset.kind!) - kinds.indexOf(b.dataset.kind!));
    this.items.forEach((item, i) => {
      new Question(item, () => this.onward(i), () => {
        this.refresh();
        onAnswered();
      });
      const mark = button(String(i + 1));
      mark.addEventListener("click", () => this.show(i, true));
      this.row.append(make("li", "", mark));
    });
    this.score.setAttribute("role", "status");
    list.before(make("div", "quiz", this.score, this.row));
    const first = Math.max(0, this.items.findIndex((item) => !answers()[item.dataset.question!]));
    if (!this.followHash()) this.show(first, false);
    addEventListener("hashchange", () => {
      if (!this.followHash() && !location.hash) this.show(first, false);
    });
  }

  /** Shows the question that the address names; returns false if it names none of this lesson. */
  private followHash(): boolean {
    const i = this.items.findIndex((item) => location.hash === "#" + item.id);
    if (i >= 0) this.show(i, true);
    return i >= 0;
  }

  private show(i: number, scroll: boolean): void {
    this.current = i;
    this.items.forEach((item, k) => (item.hidden = k !== i));
    this.refresh();
    if (scroll) this.list.previousElementSibling!.scrollIntoView({ block: "start", behavior: "instant" });
  }

  /** Writes the score and the marks. An answer counts as right once it was right. */
  private refresh(): void {
    const stored = answers();
    const marks = this.items.map((item) => item.dataset.verdict || (stored[item.dataset.question!] && (stored[item.dataset.question!].ok ? "right" : "wrong")) || "");
    const right = marks.filter((m) => m === "right").length;
    this.score.textContent = uiText("ui.train.at", { n: this.current + 1, all: marks.length }, this.lang) + " · " + uiText("ui.train.score", { n: right }, this.lang);
    all("button", this.row).forEach((mark, i) => {
      mark.dataset.mark = marks[i];
      const name = uiText("ui.train.at", { n: i + 1, all: marks.length }, this.lang);
      mark.setAttribute("aria-label", marks[i] ? name + ": " + uiText(marks[i] === "right" ? "ui.train.right" : "ui.train.wrong", {}, this.lang) : name);
      if (i === this.current) mark.setAttribute("aria-current", "true");
      else mark.removeAttribute("aria-current");
    });
  }

  /** The link to the next question; after the last one, the links to the next lessons. */
  private onward(i: number): HTMLElement[] {
    const next = this.items[i + 1];
    if (next) return [linkTo("#" + next.id, uiText("ui.train.next", {}, this.lang))];
    const lessons = all<HTMLAnchorElement>(".turn a[rel=next]", this.list.closest("article")!);
    const seen = new Set<string>();
    return lessons.filter((a) => !seen.has(a.href) && seen.add(a.href)).map((a) =>
      linkTo(a.getAttribute("href")!, uiText("ui.train.onward", { title: a.querySelector("span")!.textContent! }, this.lang)));
  }
}

function linkTo(address: string, text: string): HTMLAnchorElement {
  const link = make("a", "button", text);
  link.setAttribute("href", address);
  return link;
}
