// Settings: shares the address of the manual, and installs it where the browser offers that.
import { root, uiText } from "./page";

/** The event with which Chromium offers to install a page; not in the DOM's types. */
interface InstallEvent extends Event {
  prompt(): Promise<unknown>;
}

/** Starts the buttons that share and install the manual. */
export function startShare(): void {
  const share = document.querySelector<HTMLElement>("[data-do=share]");
  const install = document.querySelector<HTMLElement>("[data-do=install]");
  const said = document.querySelector<HTMLElement>("[data-part=shared]");
  if (!share || !install || !said) return;
  const data = { title: document.querySelector(".brand")!.textContent!.trim(), url: root.href };
  share.addEventListener("click", async () => {
    try {
      if (navigator.share) await navigator.share(data);
      else {
        await navigator.clipboard.writeText(data.url);
        said.textContent = uiText("ui.share.copied");
      }
    } catch (e) {
      // Who closes the list of programs wants no message.
      if ((e as Error).name !== "AbortError") said.textContent = data.url;
    }
  });
  let offer: InstallEvent | undefined;
  addEventListener("beforeinstallprompt", (e) => {
    e.preventDefault();
    offer = e as InstallEvent;
    install.hidden = false;
  });
  install.addEventListener("click", () => offer?.prompt());
  addEventListener("appinstalled", () => (install.hidden = true));
}
