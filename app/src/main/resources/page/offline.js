// What lets the page at the kettle be loaded again while the program is away: its last answers are
// held on this device. Whatever can be asked for is asked for; what is held is only shown when
// nobody answers, and says since when it is held. Nothing of anybody else is ever held.

const REVISION = "{{revision}}";
const HELD = `gylebook-${REVISION}`;
const DRAWN = ["/page.css", "/page.js", "/kettle.js", "/icon.svg"];
const KETTLE = /^\/gyles\/[^/]+\/kettle$/;
const DAY = /^\/api\/gyles\/[^/]+\/kettle$/;
const SINCE = "Gyle-Held";
const PATIENCE_MS = 8000;

self.addEventListener("install", (event) => {
  event.waitUntil(lay());
});

async function lay() {
  const held = await caches.open(HELD);
  for (const path of DRAWN) await hold(held, path, await fetch(path));
  await self.skipWaiting();
}

self.addEventListener("activate", (event) => {
  event.waitUntil(settle());
});

/** What an older program left is thrown away. */
async function settle() {
  for (const name of await caches.keys()) {
    if (name.startsWith("gylebook-") && name !== HELD) await caches.delete(name);
  }
  await self.clients.claim();
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (KETTLE.test(url.pathname) || DAY.test(url.pathname) || DRAWN.includes(url.pathname)) {
    event.respondWith(answer(request, url.pathname));
  }
});

async function answer(request, path) {
  const held = await caches.open(HELD);
  const last = await held.match(path);
  try {
    // With nothing held there is nothing to hurry for.
    const patience = last ? { signal: AbortSignal.timeout(PATIENCE_MS) } : {};
    const fresh = await fetch(request, patience);
    if (fresh.ok) await hold(held, path, fresh.clone());
    // This screen was turned out: it is not to go on showing what it holds.
    else if (fresh.status === 401) await caches.delete(HELD);
    return fresh;
  } catch (failure) {
    if (!last) throw failure;
    return KETTLE.test(path) ? marked(last) : last;
  }
}

async function hold(held, path, response) {
  if (!response.ok || response.redirected) return;
  const headers = new Headers(response.headers);
  headers.set(SINCE, String(Date.now()));
  await held.put(path, new Response(await response.blob(), { headers }));
}

/** The page says in itself since when it is held, because a page cannot see its own headers. */
async function marked(last) {
  const since = Number(last.headers.get(SINCE));
  const html = (await last.text()).replace('<div id="kettle"', `<div id="kettle" data-held="${since}"`);
  return new Response(html, { headers: last.headers });
}
