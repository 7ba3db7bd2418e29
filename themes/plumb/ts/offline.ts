// Saving the whole manual on the device, and changing to a new edition when
// the reader accepts it. "Saved" is only shown once the worker has counted.
import { offer, offerReload } from "./edition";
import { root, say } from "./page";
import { release } from "./release";
import { persistent } from "./store";
import type { Report, Wish } from "../worker/messages";

const policy = (window as any).trustedTypes?.createPolicy("coursebook", {
  createScriptURL: (url: string) => {
    if (url !== "sw.js") throw new TypeError(url);
    return new URL(url, root).href;
  },
});

let line: HTMLElement;
let offered = false; // a newer edition waits for the reader
let failed = ""; // the worker's reason why the last attempt to save ended

export function startOffline(): void {
  line = document.getElementById("saved")!;
  const why = hindrance();
  if (why) return tell(why);
  const workers = navigator.serviceWorker;
  workers.addEventListener("message", (e) => hear(e.data));
  workers.addEventListener("controllerchange", () => void changed());
  const script = policy ? policy.createScriptURL("sw.js") : new URL("sw.js", root).href;
  workers.register(script, { updateViaCache: "none" }).then(watch, () => {
    if (workers.controller) askStatus();
    else tell("ui.saved.failed");
  });
}

/**
 * Another worker serves this page, or none does. The page is only reloaded if
 * the reader accepted the waiting edition, in this tab or another, and if the
 * new worker has the page.
 */
async function changed(): Promise<void> {
  if (!navigator.serviceWorker.controller) return tell("ui.saved.gone");
  if (!offered) return askStatus();
  offered = false;
  const response = await fetch(location.href, { cache: "no-store" }).catch(() => undefined);
  if (response?.ok) location.reload();
  else askStatus();
}

/** Why this page cannot be saved at all; empty where it can. */
function hindrance(): string {
  if (location.protocol === "file:") return "ui.saved.file";
  if (!isSecureContext) return "ui.saved.http";
  return "serviceWorker" in navigator && "caches" in window ? "" : "ui.saved.never";
}

function tell(key: string, slots = {}): void {
  line.textContent = say(key, slots) + (persistent ? "" : " " + say("ui.unkept"));
  line.dataset.state = key.split(".").pop();
}

function ask(worker: ServiceWorker | null | undefined, type: Wish["type"]): void {
  worker?.postMessage({ type } satisfies Wish);
}

function askStatus(): void {
  const worker = navigator.serviceWorker.controller;
  if (worker) ask(worker, "status");
  else navigator.serviceWorker.getRegistration(root.href).then((r) => ask(r?.active, "status"));
}

function watch(registration: ServiceWorkerRegistration): void {
  const follow = (worker: ServiceWorker | null) => {
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && registration.active && registration.active !== worker) offerUpdate(registration);
      if (worker.state === "activated") askStatus();
      if (worker.state === "redundant" && !registration.active) tell(failed || "ui.saved.failed");
    });
  };
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration.installing));
  if (registration.waiting && registration.active) offerUpdate(registration);
  if (registration.active) askStatus();
}

/** Offers the waiting edition; it takes over when the reader accepts it. */
function offerUpdate(registration: ServiceWorkerRegistration): void {
  offered = true;
  offer("", () => ask(registration.waiting, "accept"));
}

function hear(report: Report): void {
  switch (report.kind) {
    case "saving":
      if (!navigator.serviceWorker.controller) tell("ui.saved.going", { n: report.count, all: report.total });
      return;
    case "failed":
      failed = "ui.saved." + report.why;
      if (!navigator.serviceWorker.controller) tell(failed);
      return;
    case "status":
      void showStatus(report);
  }
}

async function showStatus({ edition, count, total }: Extract<Report, { kind: "status" }>): Promise<void> {
  let own = edition; // where the list cannot be read, the count is still true
  await release().then((r) => (own = r.edition), (e) => e.message === "ui.update.newer" && (own = ""));
  if (edition !== own) {
    tell("ui.saved.other");
    if (own && navigator.serviceWorker.controller && !offered) offerReload();
  } else if (count === total) tell("ui.saved.yes");
  else tell("ui.saved.part", { n: count, all: total });
}
