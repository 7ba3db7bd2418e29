// Other pages of the site, fetched as documents whose scripts do not run. The
// browser's own loader parses them: text is never made into markup here.

const pages = new Map<string, Promise<Document | null>>();

/** A page of the site; null where it cannot be had. Only a page that came is cached. */
export function pageAt(address: string): Promise<Document | null> {
  let page = pages.get(address);
  if (!page) {
    page = request(address);
    pages.set(address, page);
    void page.then((doc) => doc ?? pages.delete(address));
  }
  return page;
}

/** Drops a page that is not what was wanted, such as a network's sign-in page. */
export function forget(address: string): void {
  pages.delete(address);
}

function request(address: string): Promise<Document | null> {
  return new Promise((done) => {
    const request = new XMLHttpRequest();
    request.open("GET", address);
    request.responseType = "document";
    request.onload = () => done(request.status === 200 ? request.responseXML : null);
    request.onerror = () => done(null);
    request.send();
  });
}
