// Other pages of the site, fetched as documents whose scripts do not run. The
// browser parses them while it loads them; no script turns text into markup.

const pages = new Map<string, Promise<Document | null>>();

/** A page of the site, cached; null if it cannot be loaded, which a later call tries again. */
export function fetchPage(address: string): Promise<Document | null> {
  let page = pages.get(address);
  if (!page) {
    page = fetchDocument(address);
    pages.set(address, page);
    void page.then((doc) => doc ?? pages.delete(address));
  }
  return page;
}

/** Removes a page from the cache, such as a network's sign-in page. */
export function dropPage(address: string): void {
  pages.delete(address);
}

function fetchDocument(address: string): Promise<Document | null> {
  return new Promise((done) => {
    const xhr = new XMLHttpRequest();
    xhr.open("GET", address);
    xhr.responseType = "document";
    xhr.onload = () => done(xhr.status === 200 ? xhr.responseXML : null);
    xhr.onerror = () => done(null);
    xhr.send();
  });
}
