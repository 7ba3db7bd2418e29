// The script of every page. Its files:
//
//   page.ts      data of the page, texts of the interface, helpers for elements
//   release.ts   the release of the page; files.ts reads its files
//   store.ts     what is stored on the device
//   choices.ts   the settings: language, units, decimal mark, role, site, light;
//                marks.ts writes the decimal mark in the text
//   checks.ts    checklists
//   folds.ts     folded sections that a link opens
//   terms.ts     the meaning of a glossary term, below its paragraph
//   reader.ts    reads the steps aloud
//   module.ts    the WebAssembly module; wasi.ts implements its imports
//   records.ts   the text format of requests and answers
//   cards.ts     a calculator in a procedure: a button that opens its form, which
//                fetched.ts loads from the calculator's page
//   calculator.ts  a calculator: entries.ts reads and fills its inputs, own.ts
//                  knows which are the reader's, typing.ts and keys.ts help a
//                  thumb, result.ts shows the answer, bar.ts the line of it at
//                  the foot of the screen, figure.ts draws
//   training.ts  courses and lessons: quiz.ts shows one question at a time,
//                question.ts marks its answer, answers.ts stores the answers and
//                the days of repetition
//   search.ts    the search box
//   edition.ts   the name of the edition, and the update box
//   today.ts     the home page: last page; ticks on the page of a stage
//   share.ts     shares the address of the manual, installs it
//   offline.ts   the service worker: saving on the device, updates
//   pocket.ts    the one-file edition
//   print.ts     opens folded parts for printing
//
// It runs in the head, so that the settings apply before the first paint; the
// rest runs when the document is parsed. No script computes with quantities.
import { startCalculators } from "./calculator";
import { startCards } from "./cards";
import { startChecks } from "./checks";
import { applyChoices, startChoices } from "./choices";
import { startEdition } from "./edition";
import { startOffline } from "./offline";
import { startFolds } from "./folds";
import { all, facts, root } from "./page";
import { startPocket } from "./pocket";
import { startPrint } from "./print";
import { startReader } from "./reader";
import { release } from "./release";
import { startSearch } from "./search";
import { startShare } from "./share";
import { startToday } from "./today";
import { startTerms } from "./terms";
import { startTraining } from "./training";

// The page for missing addresses asks for this script in several folders: the first that is
// found begins, and a second one has nothing to do.
if (!document.documentElement.classList.contains("js")) begin();

function begin(): void {
  document.documentElement.classList.add("js");
  applyChoices();
  release().catch(() => {}); // starts the request early; callers of release handle its errors

  document.addEventListener("DOMContentLoaded", () => {
    // Its links are written from the root of the site.
    if (facts.astray) for (const link of all<HTMLAnchorElement>("a[href]")) link.href = new URL(link.getAttribute("href")!, root).href;
    startChoices();
    startChecks();
    startFolds();
    startCards(); // before startCalculators: in the one-file edition cards copy the unchanged forms
    startCalculators();
    startTraining();
    startTerms();
    startReader();
    startSearch();
    startPrint();
    startToday();
    startShare();
    startEdition();
    if (facts.pocket) startPocket();
    else startOffline();
  });
}
