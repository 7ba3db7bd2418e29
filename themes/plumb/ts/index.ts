// The script of every page, in the order of what it does:
//
//   page.ts      data of the page, texts of the interface, elements
//   release.ts   the release the page is part of; files.ts reads its files
//   store.ts     what is stored on the device
//   choices.ts   language, units, decimal mark, role, site, light
//   checks.ts    ticks
//   module.ts    the WebAssembly module; wasi.ts implements its imports
//   records.ts   the text that page and module exchange
//   cards.ts     a calculator in a procedure: closed, and its form on demand,
//                which fetched.ts gets from the calculator's own page
//   calculator.ts  a calculator: entries.ts reads and fills its inputs,
//                  result.ts shows the answer, figure.ts draws, keys.ts adds
//                  the signs a number pad lacks
//   training.ts  courses and lessons: question.ts asks, answers.ts keeps what
//                was answered and when it comes back
//   search.ts    the search box
//   edition.ts   the name of the edition, and the box that offers a newer one
//   offline.ts   saving on the device, and changing to a new edition
//   pocket.ts    the one-file edition
//   print.ts     opens what is folded before it is printed
//
// It runs in the head, so that choices are made before anything is painted;
// the rest waits for the page. There is no arithmetic on quantities here.
import { startCalculators } from "./calculator";
import { startCards } from "./cards";
import { startChecks } from "./checks";
import { applyChoices, startChoices } from "./choices";
import { startEdition } from "./edition";
import { startOffline } from "./offline";
import { facts } from "./page";
import { startPocket } from "./pocket";
import { startPrint } from "./print";
import { release } from "./release";
import { startSearch } from "./search";
import { startTraining } from "./training";

document.documentElement.classList.add("js");
applyChoices();
release().catch(() => {}); // starts the request; those who need the list handle its errors

document.addEventListener("DOMContentLoaded", () => {
  startChoices();
  startChecks();
  startCards(); // before startCalculators: the one-file edition takes forms as they came
  startCalculators();
  startTraining();
  startSearch();
  startPrint();
  startEdition();
  if (facts.pocket) startPocket();
  else startOffline();
});
