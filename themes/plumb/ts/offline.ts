// Registers the service worker, which saves the whole manual on the device; shows
// how much is saved and offers a waiting edition. "Saved" is shown only after the
// worker has counted the cached files.
import { offer, offerReload } from "./edition";
import { all, root, uiText } from "./page";
import { release } from "./release";
import { persistent } from "./store";
import type { PageMessage, WorkerMessage } from "../worker/messages";

let statusLines: HTMLElement[];
let offered = false; // the update box is open for a waiting edition
let failure = ""; // key of the text for the last failed installation

/** Starts the service worker and the display of its status. */
export function startOffline(): void {
  statusLines = all(".saved");
  const why = unsupportedReason();
  if (why) return showState(why);
  const workers = navigator.serviceWorker;
  workers.addEventListener("message", (e) => onMessage(e.data));
  workers.addEventListener("controllerchange", () => void onControllerChange());
  const policy = (window as any).trustedTypes?.createPolicy("coursebook", {
    createScriptURL: (url: string) => {
      if (url !== "sw.js") throw new TypeError(url);
      return new URL(url, root).href;
    },
  });
  const script = policy ? policy.createScriptURL("sw.js") : new URL("sw.js", root).href;
  workers.register(script, { updateViaCache: "none" }).then(watch, () => {
    if (workers.controller) requestStatus();
    else showState("ui.saved.failed");
  });
}

/**
 * Handles a change of the worker that controls this page. The page is reloaded
 * only if the reader accepted the waiting edition, in this tab or another, and if
 * the new worker serves the page.
 */
async function onControllerChange(): Promise<void> {
  if (!navigator.serviceWorker.controller) return showState("ui.saved.gone");
  if (!offered) return requestStatus();
  offered = false;
  const response = await fetch(location.href, { cache: "no-store" }).catch(() => undefined);
  if (response?.ok) location.reload();
  else requestStatus();
}

/** The key of the text that gives why this page cannot be saved; empty if it can. */
function unsupportedReason(): string {
  if (location.protocol === "file:") return "ui.saved.file";
  if (!isSecureContext) return "ui.saved.http";
  return "serviceWorker" in navigator && "caches" in window ? "" : "ui.saved.never";
}

function showState(key: string, slots = {}): void {
  for (const line of statusLines) {
    line.textContent = uiText(key, slots) + (persistent ? "" : " " + uiText("ui.unkept"));
    line.dataset.state = key.split(".").pop();
  }
}

function send(worker: ServiceWorker | null | undefined, type: PageMessage["type"]): void {
  worker?.postMessage({ type } satisfies PageMessage);
}

function requestStatus(): void {
  const worker = navigator.serviceWorker.controller;
  if (worker) send(worker, "status");
  else navigator.serviceWorker.getRegistration(root.href).then((r) => send(r?.active, "status"));
}

function watch(registration: ServiceWorkerRegistration): void {
  const follow = (worker: ServiceWorker | null) => {
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && registration.active && registration.active !== worker) offerUpdate(registration);
      if (worker.state === "activated") requestStatus();
      if (worker.state === "redundant" && !registration.active) showState(failure || "ui.saved.failed");
    });
  };
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration.installing));
  if (registration.waiting && registration.active) offerUpdate(registration);
  if (registration.active) requestStatus();
}

/** Offers the waiting edition; it takes over when the reader accepts it. */
function offerUpdate(registration: ServiceWorkerRegistration): void {
  offered = true;
  offer("", () => send(registration.waiting, "accept"));
}

function onMessage(report: WorkerMessage): void {
  switch (report.kind) {
    case "saving":
      if (!navigator.serviceWorker.controller) showState("ui.saved.going", { n: report.count, all: report.total });
      return;
    case "failed":
      failure = "ui.saved." + report.why;
      if (!navigator.serviceWorker.controller) showState(failure);
      return;
    case "status":
      void showStatus(report);
  }
}

async function showStatus({ edition, count, total }: Extract<WorkerMessage, { kind: "status" }>): Promise<void> {
  let ownEdition = edition; // where release.json cannot be read, the count is shown all the same
  await release().then((r) => (ownEdition = r.edition), (e) => e.message === "ui.update.newer" && (ownEdition = ""));
  if (edition !== ownEdition) {
    showState("ui.saved.other");
    if (ownEdition && navigator.serviceWorker.controller && !offered) offerReload();
  } else if (count === total) showState("ui.saved.yes");
  else showState("ui.saved.part", { n: count, all: total });
}
