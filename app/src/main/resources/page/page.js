// The page of one gyle: a value is changed where it stands, and the forecast follows.
// Whatever is shown as HTML comes from our own server, which has escaped what people typed.

const gyle = document.getElementById("gyle");
const state = document.getElementById("state");
let notes = 0;
let reader = null;

/** Says something where a screen reader hears it. */
export function say(words, loud = false) {
  if (!state) return;
  state.textContent = words;
  state.classList.toggle("loud", loud);
}

function seen() {
  return document.querySelector("[data-seq]")?.dataset.seq ?? "0";
}

/** Every note gets a name of its own, so that sending it twice writes it once. */
function once() {
  notes += 1;
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}-${notes}`;
}

export async function post(path, body, name = once()) {
  const raw = body instanceof Blob;
  try {
    const answer = await fetch(path, {
      method: "POST",
      headers: {
        "Gyle-Seen": seen(),
        "Gyle-Once": name,
        "Content-Type": raw ? "application/octet-stream" : "application/json",
      },
      body: raw ? body : JSON.stringify(body),
    });
    const text = await answer.text();
    let said = {};
    try {
      said = JSON.parse(text);
    } catch {
      said = { what: text || `The program answered ${answer.status}.`, maybe: "Try again." };
    }
    return { ok: answer.ok, status: answer.status, said };
  } catch {
    return {
      ok: false,
      status: 0,
      said: { what: "Not saved: the program does not answer.", maybe: "Is it still running? Try again." },
    };
  }
}

export function sentence(said) {
  const value = said.value ? ` (“${said.value}”)` : "";
  return `${said.what ?? "That did not work."}${value} ${said.maybe ?? ""}`.trim();
}

/**
 * Puts the new sentences in place and the forecast that came with them, or asks for it.
 * @param glimpsed whether the first look at this is on the page already
 */
function show(said, focusSlot, glimpsed = false) {
  // What has to be asked for is on its way while the sentences are put in place.
  if (!said.look && !glimpsed) forecast();
  const busy = [replace(document.getElementById("papers"), said.papers)];
  // A rig that stayed as it was is not told again.
  if (said.rig) busy.push(replace(document.getElementById("rig-papers"), said.rig));
  if (said.look || glimpsed) forecast(glimpsed ? null : said.look, glimpsed);
  if (focusSlot && !busy.includes(true)) focusOn(focusSlot, gyle);
}

function focusOn(name, within) {
  [...within.querySelectorAll(".slot")].find((s) => s.dataset.slot === name)?.focus();
}

/** Keeps open what the reader had opened. */
function replace(place, html) {
  const open = new Set(
    [...place.querySelectorAll("details[open] > summary")].map((s) => s.firstChild?.textContent),
  );
  const busy = fill(place, html);
  for (const summary of place.querySelectorAll("details > summary")) {
    if (open.has(summary.firstChild?.textContent)) summary.parentElement.open = true;
  }
  return busy;
}

// Sections and what stands in them; to look deeper costs more than it spares.
const DEEP = 1;

/** What reads as before stays in its place: less to lay out, nothing that jumps, the focus kept. */
function renew(place, html) {
  const made = document.createElement("template");
  made.innerHTML = html;
  settle(place, made.content, DEEP);
}

/** What a reader opened stays open. */
function dress(node, like) {
  for (const { name } of [...node.attributes]) {
    if (!like.hasAttribute(name) && name !== "open") node.removeAttribute(name);
  }
  for (const { name, value } of like.attributes) {
    if (node.getAttribute(name) !== value) node.setAttribute(name, value);
  }
}

function settle(place, made, deep) {
  const now = [...place.childNodes];
  const next = [...made.childNodes];
  if (now.length !== next.length || next.some((node, i) => node.nodeName !== now[i].nodeName)) {
    place.replaceChildren(...next);
    return;
  }
  next.forEach((node, i) => {
    if (now[i].isEqualNode(node)) return;
    if (!deep || !node.hasChildNodes()) return now[i].replaceWith(node);
    dress(now[i], node);
    settle(now[i], node, deep - 1);
  });
}

/** Somebody who types the next value while the last is being saved goes on typing. */
function fill(place, html) {
  const form = [...place.querySelectorAll("form.editing")].find((one) => !one.dataset.done);
  const name = form?.previousElementSibling?.dataset.slot;
  const typed = form?.querySelector("input, select")?.value;
  renew(place, html);
  const slot = name && [...place.querySelectorAll(".slot")].find((one) => one.dataset.slot === name);
  if (!slot) return false;
  edit(slot);
  slot.nextElementSibling.querySelector("input, select").value = typed;
  return true;
}

// ---- a value is a control ----

function edit(slot) {
  if (slot.nextElementSibling?.classList.contains("editing")) return;
  const form = document.createElement("form");
  form.className = "editing";
  const field = control(slot);
  const problem = document.createElement("span");
  problem.className = "problem";
  problem.id = `problem-${notes}`;
  problem.setAttribute("role", "alert");
  field.setAttribute("aria-describedby", problem.id);
  const done = button("Take it", "submit");
  const leave = button("Leave it", "button");
  form.append(field, done, leave, ...takeOut(slot, field, form), problem);
  slot.hidden = true;
  slot.after(form);
  field.focus();
  field.select?.();
  const close = () => {
    form.remove();
    slot.hidden = false;
    slot.focus();
  };
  leave.addEventListener("click", close);
  form.addEventListener("keydown", (event) => {
    if (event.key === "Escape") close();
    event.stopPropagation();
  });
  field.addEventListener("input", () => ahead(slot, field.value));
  const name = once();
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (field.value === slot.dataset.typed) return close();
    done.disabled = true;
    const label = slot.getAttribute("aria-label").split(":")[0];
    const newcomer = document.getElementById("newcomer");
    const body = { of: slot.dataset.of, slot: slot.dataset.slot, typed: field.value, hint: label };
    const asked = slot.dataset.of === "newcomer";
    if (asked) body.answers = newcomer.dataset.answers;
    const path = asked ? "/api/newcomer" : `/api/gyles/${gyle.dataset.gyle}/fill`;
    const sent = post(path, body, `${name}-${field.value}`);
    const glimpsed = !asked && glimpse(slot, field.value);
    const answer = await sent;
    done.disabled = false;
    if (answer.ok && asked) {
      form.dataset.done = "yes";
      newcomer.dataset.answers = answer.said.answers;
      if (!fill(newcomer, answer.said.words)) focusOn(slot.dataset.slot, newcomer);
    } else if (answer.ok) {
      form.dataset.done = "yes";
      say("Saved.");
      show(answer.said, slot.dataset.slot, glimpsed);
    } else if (answer.status === 409) {
      form.dataset.done = "yes";
      show(answer.said, slot.dataset.slot);
      say(sentence(answer.said), true);
    } else {
      // What was typed stays in the field: nothing is lost; the forecast is that of what is saved.
      if (glimpsed) forecast();
      problem.textContent = sentence(answer.said);
      field.setAttribute("aria-invalid", "true");
      field.focus();
    }
  });
}

let typedNext = null;
let telling = false;
/** The first look at what was typed last, as far as it is there. */
let ready = { asked: "", look: null };

/** Names a look: what is typed where, on the page as it stands. */
const typing = (slot, typed) =>
  new URLSearchParams({ of: slot.dataset.of, slot: slot.dataset.slot, seq: seen(), typed }).toString();

/** Tells what is being typed, so that its forecast is there when it is taken; only the newest counts. */
async function ahead(slot, typed) {
  if (!gyle || slot.dataset.of === "newcomer") return;
  typedNext = typing(slot, typed);
  if (telling) return;
  telling = true;
  try {
    while (typedNext) {
      const asked = typedNext;
      typedNext = null;
      const answer = await fetch(`/api/gyles/${gyle.dataset.gyle}/ahead?${asked}`);
      ready = { asked, look: answer.status === 200 ? (await answer.json()).look : null };
    }
  } catch {
    // Nothing hangs on it: the forecast then begins when the value is taken.
  } finally {
    telling = false;
  }
}

/** What is taken is on the glass before it is written, where the look at it is there. */
function glimpse(slot, typed) {
  const { asked, look } = ready;
  ready = { asked: "", look: null };
  if (!look || asked !== typing(slot, typed)) return false;
  const place = document.getElementById("forecast");
  reader?.abort();
  place.setAttribute("aria-busy", "true");
  tell(look, place);
  return true;
}

/** A line that can go has a button for it; nobody has to know that nought does the same. */
function takeOut(slot, field, form) {
  if (!slot.getAttribute("aria-label").includes("; 0 takes it out")) return [];
  const out = button("Take it out", "button");
  out.addEventListener("click", () => {
    field.value = "0";
    form.requestSubmit();
  });
  return [out];
}

function control(slot) {
  const label = slot.getAttribute("aria-label").split(":")[0];
  let field;
  if (slot.dataset.kind === "choice") {
    field = document.createElement("select");
    for (const choice of slot.dataset.choices.split("|")) {
      const option = document.createElement("option");
      option.textContent = choice;
      option.selected = choice === slot.dataset.typed;
      field.append(option);
    }
  } else {
    field = document.createElement("input");
    field.value = slot.dataset.typed;
    field.size = Math.max(6, Math.min(28, slot.dataset.typed.length + 2));
    field.autocomplete = "off";
    field.spellcheck = false;
  }
  field.setAttribute("aria-label", label);
  return field;
}

function button(words, type) {
  const made = document.createElement("button");
  made.type = type;
  made.textContent = words;
  return made;
}

// ---- the forecast, as it comes ----

/**
 * @param look the first look, where it came along
 * @param glimpsed whether it is on the page already
 */
async function forecast(look, glimpsed = false) {
  const place = document.getElementById("forecast");
  reader?.abort();
  const mine = new AbortController();
  reader = mine;
  place.setAttribute("aria-busy", "true");
  try {
    if (look) tell(look, place);
    if (look || glimpsed) say(`Saved. ${FIRST}`);
    else await glance("first", mine, place);
    // The whole forecast takes every processor; what is there already is to be seen first.
    if (!glimpsed) await painted();
    await glance("whole", mine, place);
    if (reader === mine) place.removeAttribute("aria-busy");
  } catch (failure) {
    if (failure.name !== "AbortError") {
      say("The forecast did not come: the program does not answer. What you see is the last one.", true);
    }
  } finally {
    if (reader === mine) document.getElementById("progress").hidden = true;
  }
}

async function glance(which, mine, place) {
  if (reader !== mine) return;
  const path = `/api/gyles/${gyle.dataset.gyle}/forecast?look=${which}`;
  const answer = await fetch(path, { signal: mine.signal });
  for await (const report of lines(answer)) {
    if (reader !== mine) return;
    if ("progress" in report) {
      progress(report.progress);
    } else if (report.forecast) {
      tell(report, place);
    }
  }
}

const FIRST = "A first look; the whole forecast follows.";

function tell(report, place) {
  replace(place, report.forecast);
  document.getElementById("expect").innerHTML = report.expect;
  place.dataset.days = report.days;
  say(report.last ? "" : FIRST);
}

function progress(percent) {
  const bar = document.getElementById("progress");
  bar.hidden = false;
  bar.value = percent;
}

/** What was changed is on the glass; a page nobody sees is never painted and does not wait. */
function painted() {
  return new Promise((go) => {
    setTimeout(go, 100);
    requestAnimationFrame(() => setTimeout(go, 0));
  });
}

async function* lines(answer) {
  if (!answer.ok) throw new Error(`answered ${answer.status}`);
  const text = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  for (;;) {
    const { value, done } = await text.read();
    if (done) return;
    rest += value;
    const whole = rest.split("\n");
    rest = whole.pop();
    for (const line of whole) yield JSON.parse(line);
  }
}

// ---- the rest of the page ----

async function act(path, done, body = {}) {
  const answer = await post(path, body);
  if (answer.said.papers) show(answer.said);
  say(answer.ok ? done : sentence(answer.said), !answer.ok);
}

/** What was found goes into the recipe; the gyle's page shows it, and can undo it. */
async function takeLiquor(at) {
  const id = document.getElementById("liquor").dataset.gyle;
  at.disabled = true;
  const answer = await post(`/api/gyles/${id}/liquor`, JSON.parse(at.dataset.ask));
  if (answer.ok) location.assign(`/gyles/${id}`);
  else {
    at.disabled = false;
    say(sentence(answer.said), true);
    // On a page that was changed elsewhere the amounts are to be found anew.
    if (answer.status === 409) at.hidden = true;
  }
}

async function units(body) {
  const answer = await post("/api/units", body);
  if (answer.ok) location.reload();
  else say(sentence(answer.said), true);
}

function look(name) {
  if (name) document.documentElement.dataset.look = name;
  else delete document.documentElement.dataset.look;
  try {
    localStorage.setItem("look", name);
  } catch {
    // A browser that keeps nothing shows the system's look next time.
  }
}

function keptLook() {
  try {
    return localStorage.getItem("look") ?? "";
  } catch {
    return "";
  }
}

async function bring(file) {
  const preview = document.getElementById("preview");
  const name = encodeURIComponent(file.name);
  const answer = await post(`/api/recipes/look?name=${name}`, file);
  if (!answer.ok) {
    preview.textContent = sentence(answer.said);
    return;
  }
  preview.innerHTML = answer.said.preview;
  document.getElementById("keep").addEventListener("click", async () => {
    const rigOf = encodeURIComponent(document.getElementById("rig-of").value);
    const kept = await post(`/api/recipes/keep?name=${name}&rigOf=${rigOf}`, file);
    if (kept.ok) location.assign(`/gyles/${kept.said.gyle}`);
    else preview.textContent = sentence(kept.said);
  });
}

const KEYS = [
  ["Tab", "to the next value; Enter opens it, Enter takes it, Escape leaves it"],
  ["Backspace", "undo the last change"],
  ["/", "to the first value"],
  ["t, d, g, w, r", "to do, day chart, what could go wrong, why, the rig"],
  ["p", "print the wall sheet"],
  ["?", "this list"],
];

function keys() {
  const there = document.getElementById("key-list");
  if (there) {
    there.close();
    there.remove();
    return;
  }
  const list = document.createElement("dialog");
  list.id = "key-list";
  list.setAttribute("aria-label", "Keys");
  const rows = document.createElement("dl");
  for (const [key, does] of KEYS) {
    const dt = document.createElement("dt");
    dt.textContent = key;
    const dd = document.createElement("dd");
    dd.textContent = does;
    rows.append(dt, dd);
  }
  const off = document.createElement("label");
  const box = document.createElement("input");
  box.type = "checkbox";
  box.checked = !singleKeys();
  box.addEventListener("change", () => localStorage.setItem("single-keys", box.checked ? "off" : "on"));
  off.append(box, " switch the single-letter keys off");
  const close = button("Close", "button");
  close.addEventListener("click", keys);
  list.append(rows, off, close);
  list.addEventListener("close", () => list.remove());
  document.body.append(list);
  list.showModal();
}

function singleKeys() {
  try {
    return localStorage.getItem("single-keys") !== "off";
  } catch {
    return true;
  }
}

const PLACES = { t: "todo", d: "day", g: "guards", w: "why", r: "rig" };

document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.target.closest("input, select, textarea, dialog") && event.key !== "Escape") return;
  if (event.key === "?") {
    keys();
  } else if (!singleKeys()) {
    return;
  } else if (event.key === "/") {
    event.preventDefault();
    (document.querySelector(".slot") ?? document.querySelector("main a, main input"))?.focus();
  } else if (event.key === "Backspace" && gyle) {
    event.preventDefault();
    document.getElementById("undo")?.click();
  } else if (event.key === "p" && gyle) {
    location.assign(`/gyles/${gyle.dataset.gyle}/sheet`);
  } else if (PLACES[event.key]) {
    const place = document.getElementById(PLACES[event.key]);
    place?.scrollIntoView();
    if (place?.querySelector("details") && event.key === "r") place.querySelector("details").open = true;
  }
});

document.addEventListener("click", (event) => {
  const at = event.target.closest("button");
  if (!at) return;
  if (at.classList.contains("slot")) edit(at);
  else if (at.id === "undo") act(`/api/gyles/${gyle.dataset.gyle}/undo`, "Undone.");
  else if (at.id === "fix") {
    act(`/api/gyles/${gyle.dataset.gyle}/fix`, "This is the plan of the day now; it is kept as it is.");
  } else if (at.id === "take-liquor") takeLiquor(at);
  else if (at.dataset.set) units({ quantity: "", symbol: at.dataset.set });
  else if (at.id === "use-rig") {
    const answers = document.getElementById("newcomer").dataset.answers;
    act(`/api/gyles/${gyle.dataset.gyle}/newcomer`, "This gyle is brewed on your rig now.", { answers });
  } else if (at.id === "keys") keys();
});

document.addEventListener("change", async (event) => {
  const at = event.target;
  if (at.dataset.quantity) units({ quantity: at.dataset.quantity, symbol: at.value });
  else if (at.id === "look") look(at.value);
  else if (at.id === "recipe-file" && at.files[0]) bring(at.files[0]);
  else if (at.id === "rig-file" && at.files[0]) {
    const file = at.files[0];
    const path = `/api/gyles/${gyle.dataset.gyle}/rig?name=${encodeURIComponent(file.name)}`;
    const answer = await post(path, file);
    if (answer.said.papers) show(answer.said);
    say(answer.ok ? "The rig was taken from the file." : sentence(answer.said), !answer.ok);
  }
});

look(keptLook());
const chosen = document.getElementById("look");
if (chosen) chosen.value = keptLook();
if (gyle) forecast();
