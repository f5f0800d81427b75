// The pages of the instruments: what arrives is fetched each second while somebody looks.

import { post, say, sentence } from "/page.js";

const EVERY_MS = 1000;
const live = document.getElementById("live");
const form = document.getElementById("tie-form");
const sights = document.getElementById("sights");
let looking = false;

/** Does something again and again while the page is seen; one at a time. */
function eachSecond(does) {
  const again = async () => {
    if (!document.hidden) await does();
    setTimeout(again, EVERY_MS);
  };
  again();
}

async function refresh() {
  // Text that somebody is marking is not swapped under their hands.
  if (!getSelection().isCollapsed) return;
  try {
    const answer = await fetch(live.dataset.live);
    if (!answer.ok) return;
    const html = await answer.text();
    const focused = live.contains(document.activeElement) ? document.activeElement : null;
    const href = focused?.getAttribute("href");
    live.innerHTML = html;
    live.removeAttribute("aria-busy");
    if (href) live.querySelector(`a[href=${JSON.stringify(href)}]`)?.focus();
    else if (focused) live.querySelector("[tabindex]")?.focus();
  } catch {
    live.setAttribute("aria-busy", "true");
    say("The program does not answer: what you see is old.", true);
  }
}

function filled() {
  return Object.fromEntries(new FormData(form).entries());
}

/** Marks the field that does not fit and says why. */
function unfit(said) {
  for (const field of form.elements) field.removeAttribute("aria-invalid");
  const field = form.elements.namedItem(said.field ?? "");
  if (field) {
    field.setAttribute("aria-invalid", "true");
    const label = field.closest("label")?.firstChild?.textContent.trim() ?? "";
    say(`${label}: ${said.maybe}`, true);
    return field;
  }
  say(sentence(said), true);
  return null;
}

async function look() {
  if (!looking) return;
  const answer = await post("/api/instruments/look", filled());
  if (!looking) return;
  if (answer.ok) {
    if (!sights.contains(document.activeElement)) sights.innerHTML = answer.said.sights;
  } else {
    looking = false;
    unfit(answer.said)?.focus();
  }
}

async function tie(event) {
  event.preventDefault();
  looking = false;
  const answer = await post("/api/instruments/tie", filled());
  if (!answer.ok) {
    if (answer.status === 409) say(sentence(answer.said), true);
    else unfit(answer.said)?.focus();
    return;
  }
  const at = `/instruments/${encodeURIComponent(answer.said.name)}`;
  if (answer.said.token) showToken(answer.said.token, at);
  else location.assign(at);
}

function showToken(token, at) {
  const shown = document.createElement("section");
  shown.className = "plate";
  const words = document.createElement("p");
  words.textContent =
    "Tied. This is the board's token. It is shown now and never again; Gylebook keeps only its digest.";
  const code = document.createElement("code");
  code.id = "token";
  code.textContent = token;
  const how = document.createElement("p");
  how.textContent = `The board posts to ${location.origin}/api/readings with the header "Authorization: Bearer" and this token. What comes faster than five a second is answered like the rest, but left out and counted on the instrument's page.`;
  const on = document.createElement("a");
  on.href = at;
  on.textContent = "I have it; show what arrives";
  const place = document.createElement("p");
  place.append(code);
  shown.append(words, place, how, on);
  form.replaceWith(shown);
  on.focus();
}

document.addEventListener("click", async (event) => {
  const at = event.target.closest("button");
  if (!at) return;
  if (at.id === "look-there") {
    looking = !looking;
    at.textContent = looking ? "Look no more" : "Look what is there";
    if (looking) sights.textContent = "Looking ...";
  } else if (at.classList.contains("sight")) {
    for (const [name, value] of Object.entries(JSON.parse(at.dataset.fill))) {
      const field = form.elements.namedItem(name);
      if (field) field.value = value;
    }
    say("Taken into the form.");
    form.elements.namedItem("name").focus();
  } else if (at.classList.contains("act")) {
    const answer = await post("/api/rehearsal/act", { line: at.dataset.line });
    say(answer.ok ? `${at.textContent}.` : sentence(answer.said), !answer.ok);
  } else if (at.id === "loose") {
    const answer = await post("/api/instruments/loose", { name: at.dataset.name });
    if (answer.ok) location.assign("/instruments");
    else say(sentence(answer.said), true);
  }
});

const rehearsal = document.getElementById("rehearse-form");
rehearsal?.addEventListener("submit", async (event) => {
  event.preventDefault();
  const asked = Object.fromEntries(new FormData(rehearsal).entries());
  const answer = await post("/api/rehearsal", asked);
  say(answer.ok ? "It begins." : sentence(answer.said), !answer.ok);
  if (answer.said?.kettle) location.assign(answer.said.kettle);
});

if (form) {
  form.addEventListener("submit", tie);
  if (sights) eachSecond(look);
}
if (live) eachSecond(refresh);
