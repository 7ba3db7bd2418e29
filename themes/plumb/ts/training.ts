// The training: questions in lessons, progress, due questions, export and import of
// answers, and the sign-off sheet.
import { answers, dueToday, exportAnswers, importAnswers } from "./answers";
import { all, make, uiText } from "./page";
import { Quiz } from "./quiz";
import { part } from "./result";
import { load, persistent, save } from "./store";

/** Starts the training parts of the page. */
export function startTraining(): void {
  for (const list of all(".questions > ol:has(> [data-question])")) new Quiz(list, showProgress);
  for (const box of all("[data-part=carry]")) startTransfer(box);
  for (const box of all(".signing")) startSigning(box);
  showProgress();
  for (const event of ["pageshow", "hashchange"]) addEventListener(event, showProgress);
}

/** An item in a course's list of lessons, with the ids of the lesson's questions. */
interface Lesson {
  item: HTMLElement;
  ids: string[];
}

function lessonsIn(place: ParentNode): Lesson[] {
  return all("[data-ids]", place).map((item) => ({ item, ids: item.dataset.ids!.trim().split(" ") }));
}

function showProgress(): void {
  const stored = answers();
  for (const course of all("[data-course]")) {
    const lessons = lessonsIn(course);
    const done = lessons.filter(({ ids }) => ids.every((id) => stored[id]?.ok));
    const lang = langOf(course);
    for (const { item, ids } of lessons) {
      item.querySelector(".mine")?.remove();
      item.querySelector(".tried")?.remove();
      const right = ids.filter((id) => stored[id]?.ok).length;
      if (right < ids.length && ids.some((id) => stored[id])) {
        item.append(make("p", "tried", uiText("ui.train.tried", { n: right, all: ids.length }, lang)));
      }
    }
    for (const { item } of done) item.prepend(make("span", "mine", uiText("ui.train.finished", {}, lang)), " ");
    part(course, "done").textContent = uiText("ui.train.done", { n: done.length, all: lessons.length }, lang);
  }
  for (const box of all("[data-part=due]")) showDue(box);
  for (const box of all("[data-part=next]")) showNext(box);
  const unknown = new Set(load("answers lost").split(" "));
  const n = dueToday().filter((id) => !unknown.has(id)).length;
  for (const slot of all("[data-due]")) {
    slot.hidden = n === 0;
    slot.textContent = slot.dataset.due!.replace("{n}", String(n));
  }
}

/**
 * Lists the due questions as links. Due questions that no lesson contains any more
 * are stored as "answers lost", so that pages without the list do not count them.
 */
function showDue(box: HTMLElement): void {
  const lang = langOf(box);
  const links = new Map<string, HTMLElement>();
  for (const { item, ids } of lessonsIn(box.closest("article")!)) {
    for (const id of ids) links.set(id, questionLink(item, id, lang));
  }
  const due = dueToday();
  const known = due.filter((id) => links.has(id));
  save("answers lost", due.filter((id) => !links.has(id)).join(" "));
  part(box, "due-said").textContent = uiText(known.length ? "ui.train.due.some" : "ui.train.due.none", { n: known.length }, lang);
  part(box, "due-list").replaceChildren(...known.map((id) => links.get(id)!));
}

/** Shows the link to the next lesson that is not done: of the reader's course, or of the first that has one. */
function showNext(box: HTMLElement): void {
  const stored = answers();
  const role = load("role");
  const courses = all("[data-course]", box.closest("article")!);
  const own = courses.filter((c) => role && c.dataset.for!.split(" ").includes(role));
  const open = [...own, ...courses].flatMap(lessonsIn).find(({ ids }) => !ids.every((id) => stored[id]?.ok));
  box.hidden = !open;
  if (!open) return;
  open.item.closest("details")?.setAttribute("open", "");
  const lesson = open.item.querySelector("a")!;
  const link = make("a", "button", uiText("ui.train.onward", { title: lesson.textContent! }, langOf(box)));
  link.href = lesson.getAttribute("href")!;
  box.replaceChildren(link);
}

function questionLink(lesson: HTMLElement, id: string, lang: string): HTMLElement {
  const n = id.split(".")[1];
  const link = make("a", "", uiText("ui.train.question", { lesson: lesson.querySelector("a")!.textContent!, n }, lang));
  link.href = lesson.dataset.each + n;
  return make("li", "", link);
}

function startTransfer(box: HTMLElement): void {
  part(box, "unkept").hidden = persistent;
  box.querySelector("[data-do=train-export]")!.addEventListener("click", () => exportAnswers(load("role")));
  const input = box.querySelector<HTMLInputElement>("[data-do=train-import]")!;
  input.addEventListener("change", async () => {
    const file = input.files?.[0];
    if (!file) return;
    const n = importAnswers(await file.text());
    input.value = ""; // so that the same file can be chosen again
    showProgress();
    part(box, "carried").textContent = n < 0 ? uiText("ui.train.strange", {}, langOf(box)) : uiText("ui.train.taken", { n }, langOf(box));
  });
}

function startSigning(box: HTMLElement): void {
  const input = part(box, "hand") as HTMLInputElement;
  const show = () => (part(box, "hand-name").textContent = input.value);
  input.value = load("hand");
  input.addEventListener("input", () => (save("hand", input.value.trim()), show()));
  box.querySelector("[data-do=sign-print]")!.addEventListener("click", () => print());
  show();
}

function langOf(place: Element): string {
  return place.closest<HTMLElement>("[lang]")!.lang;
}
