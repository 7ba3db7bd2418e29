// Glossary terms in the text. A touch opens the meaning below the paragraph, taken from
// the glossary; Escape, the button or another touch on the term closes it. Where the
// glossary cannot be read here, the term remains a link to it.
import { style } from "./choices";
import { fetchPage } from "./fetched";
import { writeMarks } from "./marks";
import { all, byId, facts, make, uiText } from "./page";
import { isPart } from "./release";

let panel: HTMLElement | undefined;
let opener: HTMLAnchorElement | undefined;

/** Starts the terms of the page. */
export function startTerms(): void {
  document.addEventListener("click", (e) => {
    const link = (e.target as Element).closest<HTMLAnchorElement>("a.term");
    if (!link || e.ctrlKey || e.metaKey || e.shiftKey || e.altKey) return;
    e.preventDefault();
    if (link === opener) close();
    else void open(link);
  });
  document.addEventListener("keydown", (e) => {
    if (e.key === "Escape" && panel) close();
  });
}

async function open(link: HTMLAnchorElement): Promise<void> {
  const entry = await entryOf(link);
  if (!entry) return void (location.href = link.href);
  close();
  const end = make("button", "", uiText("ui.close"));
  end.type = "button";
  end.addEventListener("click", close);
  const meaning = make("p", "", ...entry.nodes);
  const more = make("a", "", entry.title);
  more.href = link.href;
  panel = make("aside", "meaning", meaning, make("p", "meaning-foot", more, " ", end));
  panel.tabIndex = -1;
  panel.setAttribute("aria-label", link.textContent!);
  const block = link.closest("p, li, td, dd, figcaption, aside")!;
  if (block.matches("p, figcaption")) block.after(panel);
  else block.append(panel);
  opener = link;
  link.setAttribute("aria-expanded", "true");
  writeMarks(style().mark);
  panel.focus({ preventScroll: true });
  panel.scrollIntoView({ block: "nearest", behavior: "instant" });
}

function close(): void {
  if (!panel) return;
  const inside = panel.contains(document.activeElement);
  panel.remove();
  opener!.setAttribute("aria-expanded", "false");
  if (inside) opener!.focus({ preventScroll: true });
  panel = opener = undefined;
}

/** The entry of a term and the title of the glossary; undefined where they cannot be read or are of another edition. */
async function entryOf(link: HTMLAnchorElement): Promise<{ nodes: Node[]; title: string } | undefined> {
  const id = decodeURIComponent(link.hash.slice(1));
  let source: HTMLElement | null | undefined;
  let page: ParentNode | null | undefined;
  if (facts.pocket) {
    source = byId(id);
    page = source?.closest(".article");
  } else {
    const address = new URL(link.href);
    address.hash = "";
    const fetched = await fetchPage(address.href);
    if (fetched && (await isPart(fetched))) page = fetched;
    source = fetched?.getElementById(id);
  }
  if (!page || !source) return undefined;
  const copy = document.importNode(source, true);
  const links = all<HTMLAnchorElement>("a", source);
  all<HTMLAnchorElement>("a", copy).forEach((a, i) => (a.href = links[i].href));
  return { nodes: [...copy.childNodes], title: page.querySelector("h1")!.textContent! };
}
