// Other screens: letting one in and turning one out, on the program's own machine; and the other
// side, where a screen asks to be let in.

import { post, say, sentence } from "/page.js";

const EVERY_MS = 2000;
const list = document.getElementById("screens");
const invitation = document.getElementById("invitation");
const asked = document.getElementById("come-in");

function times(within) {
  for (const time of within.querySelectorAll("time")) {
    const at = new Date(time.dateTime);
    if (!Number.isNaN(at.valueOf())) {
      time.textContent = at.toLocaleString([], { dateStyle: "medium", timeStyle: "short", hour12: false });
    }
  }
}

function show(told) {
  const focused = list.contains(document.activeElement) ? document.activeElement.dataset.out : "";
  list.innerHTML = told.html;
  times(list);
  if (focused) list.querySelector(`[data-out="${focused}"]`)?.focus();
  if (!told.code && invitation.childElementCount) {
    invitation.textContent = "The code was used, or its time is over.";
  }
}

async function look() {
  try {
    const answer = await fetch("/api/screens");
    if (answer.ok) show(await answer.json());
  } catch {
    say("The program does not answer: what you see is old.", true);
  }
}

document.addEventListener("click", async (event) => {
  const at = event.target.closest("button");
  if (!at || !list) return;
  if (at.id === "invite") {
    const answer = await post("/api/screens/invite", {});
    if (answer.ok) invitation.innerHTML = answer.said.html;
    else say(sentence(answer.said), true);
  } else if (at.id === "uninvite") {
    const answer = await post("/api/screens/uninvite", {});
    if (answer.ok) invitation.textContent = "The code is good for nothing any more.";
    else say(sentence(answer.said), true);
  } else if (at.dataset.out) {
    const answer = await post("/api/screens/out", { screenId: at.dataset.out });
    if (answer.ok) show(answer.said);
    say(answer.ok ? answer.said.remark || "It is out." : sentence(answer.said), !answer.ok);
  }
});

/** What the screen calls itself when nobody says otherwise. */
function guess() {
  const told = navigator.userAgent;
  if (/iPad|Tablet/.test(told) || (/Android/.test(told) && !/Mobile/.test(told))) return "Tablet";
  if (/iPhone|Mobile/.test(told)) return "Phone";
  return "Computer";
}

if (asked) {
  const field = (name) => asked.elements.namedItem(name);
  field("name").value = guess();
  const code = location.hash.replace(/[^0-9]/g, "");
  if (code) {
    field("code").value = code;
    // A code is not to stay in the history.
    history.replaceState(null, "", location.pathname);
    field("name").focus();
    field("name").select();
  } else {
    field("code").focus();
  }
  asked.addEventListener("submit", async (event) => {
    event.preventDefault();
    const answer = await post("/api/come-in", Object.fromEntries(new FormData(asked).entries()));
    if (answer.ok) location.replace("/");
    else say(sentence(answer.said), true);
  });
}

if (list) {
  times(list);
  const again = async () => {
    if (!document.hidden) await look();
    setTimeout(again, EVERY_MS);
  };
  setTimeout(again, EVERY_MS);
}
