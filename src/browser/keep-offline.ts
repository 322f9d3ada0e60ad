/**
 * Has the page kept for when there is no network, where the browser can. It is a convenience: where it fails the page works as it is.
 * A page that tells of diets was sent for in a body; at its address alone lies another page, so neither is kept.
 */
export function keepOffline(): void {
  if (!("serviceWorker" in navigator) || document.querySelector("[data-private]") !== null) return;
  addEventListener("load", () => {
    navigator.serviceWorker.register("/p/offline.js").then(
      // The worker answers from the next page on: this one is asked for again, so that it lies there too.
      async ({ active }) => {
        if (active === null && location.search.length < 4000) {
          await navigator.serviceWorker.ready;
          await caches.open("prepwright-pages-1").then((kept) => kept.addAll([location.href, ...ownFiles()]));
        }
      },
      (error: unknown) => console.info("This page is not kept for later:", error),
    );
  });
}

const ownFiles = (): readonly string[] =>
  [...document.querySelectorAll<HTMLLinkElement | HTMLScriptElement>("link[rel=stylesheet], script[src]")].map(
    (each) => (each instanceof HTMLScriptElement ? each.src : each.href),
  );
