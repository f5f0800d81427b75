// Looking back on a day: what it says takes seconds to reckon, so it is asked for once the page
// stands.

import { post, say, sentence } from "/page.js";

const learnt = document.getElementById("learnt");
const at = `/api/gyles/${encodeURIComponent(learnt.dataset.gyle)}/learnt`;

function show(html) {
  learnt.innerHTML = html;
  learnt.removeAttribute("aria-busy");
}

async function look() {
  try {
    const answer = await fetch(at);
    const said = await answer.json();
    if (answer.ok) show(said.html);
    else say(sentence(said), true);
  } catch {
    say("The program does not answer. Is it still running? Load the page again.", true);
  }
}

learnt.addEventListener("click", async (event) => {
  const button = event.target.closest("[data-onto]");
  if (!button || button.disabled) return;
  button.disabled = true;
  say("Being written down.");
  const answer = await post(at, { onto: button.dataset.onto });
  if (answer.ok) {
    show(answer.said.html);
    say(`Kept: the rig of “${answer.said.kept}” has the numbers now.`);
  } else {
    button.disabled = false;
    say(sentence(answer.said), true);
  }
});

look();
