// Saving the whole manual on the device, and changing to a new edition when
// the reader wants to. "Saved" is only said once the worker has counted.
import { facts, root, say } from "./page";
import { kept } from "./store";
import type { Report, Wish } from "../worker/messages";

const policy = (window as any).trustedTypes?.createPolicy("coursebook", {
  createScriptURL: (url: string) => {
    if (url !== "sw.js") throw new TypeError(url);
    return new URL(url, root).href;
  },
});

let line: HTMLElement;
let offered = false; // a newer edition waits for the reader
let failed = ""; // why the last attempt to save ended; the worker's word stands

export function startOffline(): void {
  line = document.getElementById("saved")!;
  const why = hindrance();
  if (why) return tell(why);
  const workers = navigator.serviceWorker;
  let controlled = Boolean(workers.controller);
  workers.addEventListener("message", (e) => hear(e.data));
  workers.addEventListener("controllerchange", () => {
    // A page that no worker served is the same edition as the first to claim
    // it, unless a newer one was waiting.
    if (controlled || offered) return location.reload();
    controlled = true;
    askStatus();
  });
  const script = policy ? policy.createScriptURL("sw.js") : new URL("sw.js", root).href;
  workers.register(script, { updateViaCache: "none" }).then(watch, () => {
    if (controlled) askStatus();
    else tell("ui.saved.failed");
  });
}

/** Why this page cannot be saved at all; empty where it can. */
function hindrance(): string {
  if (location.protocol === "file:") return "ui.saved.file";
  if (!isSecureContext) return "ui.saved.http";
  return "serviceWorker" in navigator && "caches" in window ? "" : "ui.saved.never";
}

function tell(key: string, slots = {}): void {
  line.textContent = say(key, slots) + (kept ? "" : " " + say("ui.unkept"));
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
      if (worker.state === "installed" && registration.active && registration.active !== worker) offer(registration);
      if (worker.state === "activated") askStatus();
      if (worker.state === "redundant" && !registration.active) tell(failed || "ui.saved.failed");
    });
  };
  follow(registration.installing);
  registration.addEventListener("updatefound", () => follow(registration.installing));
  if (registration.waiting && registration.active) offer(registration);
  if (registration.active) askStatus();
}

/** Offers the waiting edition; it takes over when the reader says so. */
function offer(registration: ServiceWorkerRegistration): void {
  offered = true;
  const box = document.getElementById("edition")!;
  box.hidden = false;
  box.querySelector("button")!.onclick = () => ask(registration.waiting, "accept");
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
      if (report.release !== facts.release) tell("ui.saved.other");
      else if (report.count === report.total) tell("ui.saved.yes");
      else tell("ui.saved.part", { n: report.count, all: report.total });
  }
}
