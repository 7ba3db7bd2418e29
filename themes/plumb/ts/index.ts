// The script of every page, in the order of what it does:
//
//   page.ts      what the page says of itself, and the texts of the interface
//   store.ts     what is kept on the device
//   choices.ts   language, units, decimal mark, role, site, light
//   checks.ts    ticks
//   module.ts    the WebAssembly module; wasi.ts is the host it runs in
//   records.ts   the text that page and module exchange
//   calculator.ts  a calculator: entries.ts reads and fills its inputs,
//                  result.ts shows the answer, figure.ts draws, keys.ts adds
//                  the signs a number pad lacks
//   training.ts  courses and lessons: question.ts asks, answers.ts keeps what
//                was answered and when it comes back
//   search.ts    the search box
//   offline.ts   saving on the device, and new editions
//   pocket.ts    the one-file edition
//   print.ts     opens what is folded before it goes to paper
//
// It runs in the head, so that choices are made before anything is painted;
// the rest waits for the page. There is no arithmetic on quantities here.
import { startCalculators } from "./calculator";
import { startChecks } from "./checks";
import { applyChoices, startChoices } from "./choices";
import { startOffline } from "./offline";
import { facts } from "./page";
import { startPocket } from "./pocket";
import { startPrint } from "./print";
import { startSearch } from "./search";
import { startTraining } from "./training";

document.documentElement.classList.add("js");
applyChoices();

document.addEventListener("DOMContentLoaded", () => {
  startChoices();
  startChecks();
  startCalculators();
  startTraining();
  startSearch();
  startPrint();
  if (facts.pocket) startPocket();
  else startOffline();
});
