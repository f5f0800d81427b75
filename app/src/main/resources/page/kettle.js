// At the kettle: the page goes on when the network does not. Whatever is noted here is kept on this
// device until the book has it, each note under a name of its own, so that it is written once.

import { post, say, sentence } from "/page.js";

const kettle = document.getElementById("kettle");
const strip = document.getElementById("strip");
const gyle = kettle.dataset.gyle;
const WAITING = `waiting-${gyle}`;
const SLOW_MS = 20_000;
const AWAY_MS = 3_000;
const HOLD_MS = 1_000;
// A page that this device held says since when; its time was right then.
let asOfMs = Number(kettle.dataset.held ?? Date.now());
let shownMs = Number(kettle.dataset.now);
// The clock of a day for practice may go faster than life.
const pace = Number(kettle.dataset.pace || 1);
let sending = null;
let reached = !kettle.dataset.held;

const now = () => shownMs + (Date.now() - asOfMs) * pace;

// ---- notes that wait ----

function waiting() {
  try {
    return JSON.parse(localStorage.getItem(WAITING) ?? "[]");
  } catch {
    return [];
  }
}

function keep(notes) {
  localStorage.setItem(WAITING, JSON.stringify(notes));
}

/** The newest thing said about the line; nothing when all is well. */
function line() {
  const count = waiting().length;
  const apart = pace === 1 && Math.abs(shownMs - asOfMs) > 120_000;
  const words = [];
  if (!reached) words.push("Working from the plan on this device; the program does not answer.");
  if (count) words.push(`${count} ${count === 1 ? "note waits" : "notes wait"} here, not in the book yet.`);
  if (apart) words.push("This device's clock and the program's do not agree; the program's counts.");
  strip.textContent = words.join(" ");
  strip.hidden = words.length === 0;
}

function name() {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 12)}`;
}

let stampedMs = 0;

/** Notes of now keep their order, whatever is learnt of the clocks between two of them. */
function stamp() {
  stampedMs = Math.max(stampedMs + 1, now());
  return new Date(stampedMs).toISOString();
}

/** Who hears what is wrong with a note: the form it was typed in. */
const hearers = new Map();

/** Keeps the note here first, then sends it. */
async function note(body, problem = (words) => say(words, true)) {
  const whole = { at: stamp(), ...body };
  if (body.do !== "read") waysAt = 0;
  const once = name();
  try {
    keep([...waiting(), { once, body: whole }]);
  } catch {
    problem("Not saved: this device keeps nothing. Note it on paper.");
    return;
  }
  hearers.set(once, problem);
  await send();
}

/** Sends what waits, one sender at a time; what is noted meanwhile goes with it. */
function send() {
  sending ??= deliver();
  return sending;
}

/** In order; stops at the first that cannot be delivered. */
async function deliver() {
  // The sender is known before its work begins, and with it that there is one.
  await null;
  try {
    for (let first = waiting()[0]; first; first = waiting()[0]) {
      const answer = await fetch(`/api/gyles/${gyle}/day`, {
        method: "POST",
        headers: { "Content-Type": "application/json", "Gyle-Once": first.once },
        body: JSON.stringify(first.body),
      });
      const told = await answer.json().catch(() => ({}));
      reached = true;
      const hearer = hearers.get(first.once) ?? ((words) => say(words, true));
      if (answer.ok) {
        done(first);
        show(told);
        say("Noted.");
      } else if (answer.status === 422 || answer.status === 400) {
        // It makes no sense to the book: the person hears why; it does not hold up the others.
        done(first);
        hearer(sentence(told));
      } else {
        say(sentence(told) || "Not saved: the program could not write. It is kept here.", true);
        break;
      }
    }
  } catch {
    reached = false;
  } finally {
    sending = null;
    line();
  }
}

function done(first) {
  keep(waiting().slice(1));
  hearers.delete(first.once);
}

// ---- what is shown ----

function show(told) {
  if (!told.html) return;
  // What had to wait was true when it came, not when it is shown.
  if (told.now && !told.cameMs) {
    told.cameMs = told.heldMs || Date.now();
    asOfMs = told.cameMs;
    shownMs = told.now;
  }
  // Nothing is taken from under a finger or a keyboard.
  const busy = kettle.contains(document.activeElement) && document.activeElement.matches("input, select")
    && document.activeElement.value;
  if (busy || fingers.size || kettle.matches(":active")) {
    later = told;
    if (!busy) setTimeout(() => later && show(later), 200);
    return;
  }
  later = null;
  const begun = entries();
  const stood = places();
  const focused = kettle.contains(document.activeElement) ? key(document.activeElement) : "";
  const open = new Set([...kettle.querySelectorAll("details[open] > summary")].map((s) => s.textContent));
  // What could be done now stays for a while: it is being read.
  const ways = Date.now() - waysAt < 180_000 ? kettle.querySelector("#levers") : null;
  kettle.innerHTML = told.html;
  if (ways) kettle.querySelector("#levers")?.replaceWith(ways);
  for (const summary of kettle.querySelectorAll("details > summary")) {
    if (open.has(summary.textContent)) summary.parentElement.open = true;
  }
  kettle.dataset.seq = told.seq;
  begun.forEach(goOn);
  hold();
  ticked();
  times();
  tick();
  restNew(stood, focused);
}

let later = null;
let waysAt = 0;

// ---- a finger on its way to a button meets the button it was sent to, or none ----

const REST_MS = 600;
const FINGER_MS = 5_000;
const MOVED_PX = 12;
/** Pointers that are down on this page, with when they came; one whose end was lost is forgotten. */
const fingers = new Map();

document.addEventListener("pointerdown", ({ pointerId }) => {
  fingers.set(pointerId, setTimeout(() => fingers.delete(pointerId), FINGER_MS));
});
for (const end of ["pointerup", "pointercancel"]) {
  document.addEventListener(end, ({ pointerId }) => {
    clearTimeout(fingers.get(pointerId));
    // The click comes after the end of the touch.
    setTimeout(() => fingers.delete(pointerId), 100);
  });
}

/** What a control does, whatever words stand on it. */
function key({ tagName, dataset, textContent, form, name }) {
  const does = ["do", "what", "value", "snooze", "open", "line", "levers", "take"].map((one) => dataset[one] ?? "");
  const own = does.some(Boolean) || dataset.levers === "" || dataset.take === "" ? "" : textContent.trim();
  return [tagName, name ?? "", ...does, form?.dataset.what ?? "", own].join("|");
}

const doers = () => [...kettle.querySelectorAll("button[data-do]")];

function places() {
  return new Map(doers().map((button) => [key(button), button.getBoundingClientRect()]));
}

/** A button that is new where it stands takes no press for a moment: nobody can have meant it yet. */
function restNew(stood, focused) {
  if (!stood.size) return;
  const resting = doers().filter((button) => {
    const before = stood.get(key(button));
    const now = button.getBoundingClientRect();
    const still = before && Math.abs(before.top - now.top) < MOVED_PX && Math.abs(before.left - now.left) < MOVED_PX;
    return !still && !button.disabled && now.height > 0;
  });
  for (const button of resting) button.disabled = true;
  setTimeout(() => {
    for (const button of resting) button.disabled = false;
    if (resting.some((button) => key(button) === focused)) refocus(focused);
  }, REST_MS);
  refocus(focused);
}

/** Who goes by the keyboard is not thrown back to the top of the page when it is told anew. */
function refocus(focused) {
  if (!focused || document.activeElement !== document.body) return;
  const same = [...kettle.querySelectorAll("button, summary, input, select")].find((one) => key(one) === focused);
  same?.focus({ preventScroll: true });
}

/** What stands in the forms. */
function entries() {
  return [...kettle.querySelectorAll("form.entry")].map((form) => ({
    form,
    problem: form.querySelector(".problem").textContent,
    fields: [...form.elements].filter((field) => field.name).map((field) => [field.name, field.value]),
  }));
}

/** The form of the same entry in the page as it now stands. */
function same(form) {
  const forms = [...kettle.querySelectorAll("form.entry")];
  const alike = ({ dataset }) => dataset.do === form.dataset.do && dataset.what === form.dataset.what;
  return forms.find(alike) ?? form;
}

function goOn({ form, problem, fields }) {
  const now = same(form);
  now.querySelector(".problem").textContent = problem;
  for (const [name, value] of fields) {
    const field = now.elements.namedItem(name);
    if (field) field.value = value;
  }
}

// ---- one screen is at the kettle, the others watch ----

/** The name this screen gave itself; where nothing can be kept it has one until it is loaded anew. */
const me = (() => {
  const made = name();
  try {
    const kept = localStorage.getItem("screen") ?? made;
    localStorage.setItem("screen", kept);
    return kept;
  } catch {
    return made;
  }
})();

function called() {
  const touch = matchMedia("(pointer: coarse)").matches;
  const small = Math.min(screen.width, screen.height) < 600;
  return touch || small ? (small ? "a phone" : "a tablet") : "a computer";
}

function hold() {
  const holder = kettle.querySelector(".holder")?.dataset.holder ?? "";
  kettle.classList.toggle("watching", holder !== "" && holder !== me);
}

const take = () => note({ do: "here", what: me, value: called() });

let holding = 0;

function press(button) {
  clearTimeout(holding);
  button.classList.add("holding");
  say("Keep holding.");
  holding = setTimeout(() => {
    button.classList.remove("holding");
    take();
  }, HOLD_MS);
}

function release() {
  clearTimeout(holding);
  kettle.querySelector(".holding")?.classList.remove("holding");
}

document.addEventListener("pointerdown", (event) => {
  const button = event.target.closest("[data-take]");
  if (button) press(button);
});
for (const end of ["pointerup", "pointercancel", "keyup"]) document.addEventListener(end, release);
document.addEventListener("keydown", (event) => {
  const button = event.target.closest("[data-take]");
  if (button && !event.repeat && (event.key === "Enter" || event.key === " ")) press(button);
});

// ---- lists to tick off: ticks are kept on this device ----

const TICKS = `ticks-${gyle}`;

function ticks() {
  try {
    return new Set(JSON.parse(localStorage.getItem(TICKS) ?? "[]"));
  } catch {
    return new Set();
  }
}

function ticked() {
  const kept = ticks();
  for (const box of kettle.querySelectorAll(".checklist input")) {
    box.checked = kept.has(box.parentElement.textContent.trim());
  }
}

document.addEventListener("change", (event) => {
  const box = event.target.closest(".checklist input");
  if (!box) return;
  const kept = ticks();
  const item = box.parentElement.textContent.trim();
  if (box.checked) kept.add(item);
  else kept.delete(item);
  try {
    localStorage.setItem(TICKS, JSON.stringify([...kept]));
  } catch {
    // Ticks then last as long as the page.
  }
});

/** Somebody turned this screen out on the program's machine. Notes that wait stay on this device. */
function out() {
  const words = document.createElement("p");
  words.textContent = "This screen is not let in any more. ";
  const door = document.createElement("a");
  door.href = "/come-in";
  door.textContent = "Come in with a code";
  words.append(door);
  kettle.replaceChildren(words);
  reached = true;
  line();
}

async function look() {
  try {
    const answer = await fetch(`/api/gyles/${gyle}/kettle`);
    if (answer.status === 401) return out();
    if (!answer.ok) throw new Error(`answered ${answer.status}`);
    const heldMs = Number(answer.headers.get("Gyle-Held"));
    const told = { ...(await answer.json()), heldMs };
    // What this device held is shown only where it is newer than what is seen.
    if (!heldMs || told.now > shownMs) show(told);
    reached = !heldMs;
    if (reached) await send();
  } catch {
    reached = false;
  }
  line();
}

function times() {
  for (const time of kettle.querySelectorAll("time")) {
    const at = new Date(time.dateTime);
    if (!Number.isNaN(at.valueOf())) {
      time.title = time.textContent;
      time.textContent = at.toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hour12: false });
    }
  }
}

/** Stop repeats until its cause has cleared; Soon speaks once, then every two minutes; Note is mute. */
const EVERY_MS = { STOP: 20_000, SOON: 120_000 };
const spoken = new Map();

function guards() {
  const plates = [...kettle.querySelectorAll(".guards [data-guard]")];
  const there = new Set(plates.map((plate) => `${plate.dataset.level} ${plate.dataset.guard}`));
  for (const key of spoken.keys()) if (!there.has(key)) spoken.delete(key);
  for (const plate of plates) {
    const key = `${plate.dataset.level} ${plate.dataset.guard}`;
    const every = EVERY_MS[plate.dataset.level];
    if (!every || Date.now() - (spoken.get(key) ?? 0) < every) continue;
    spoken.set(key, Date.now());
    aloud(`${plate.querySelector("h2").textContent.trim()} ${plate.querySelector(".do").textContent}`, plate.dataset.level);
    return true;
  }
  return false;
}

/** Until when a point that is due is not spoken of; what was put off is put off for that point alone. */
const quietUntil = new Map();
const DUE_MS = 120_000;

/** What is due: what the day went past without a word, and what is under way when its time is over. */
function dueNow(over) {
  const main = over ? ".thumb .main" : ".thumb.due .main";
  return [...kettle.querySelectorAll(main)].filter((button) => button.dataset.do === "reach");
}

function speakDue(over) {
  for (const button of dueNow(over)) {
    const point = button.dataset.what;
    if (Date.now() < (quietUntil.get(point) ?? 0)) continue;
    quietUntil.set(point, Date.now() + DUE_MS);
    aloud(`Due: ${button.textContent.replace(/^(Done: |Due, done\? )/, "")}.`, "DUE");
    return;
  }
}

function snooze(min) {
  for (const { dataset } of dueNow(true)) quietUntil.set(dataset.what, Date.now() + min * 60_000);
  say(`Reminding again in ${min} min.`);
}

function tick() {
  const spoke = guards();
  const left = kettle.querySelector(".left");
  if (!left) return;
  const sec = Math.round((Number(left.dataset.ends) - now()) / 1000);
  const over = sec < 0;
  const shown = Math.abs(sec);
  const h = Math.floor(shown / 3600);
  const clock = `${h ? `${h}:` : ""}${String(Math.floor((shown % 3600) / 60)).padStart(h ? 2 : 1, "0")}:${String(shown % 60).padStart(2, "0")}`;
  left.textContent = over ? `${clock} over` : `${left.dataset.about}${clock} left`;
  if (!spoke) speakDue(over);
}

// ---- sound, with words; a silent device shows the words all the same ----

let sound = null;

/** Each kind of word has its own tones, so that it is known across the room before it is read. */
const TONES_HZ = { STOP: [880, 660, 880, 660], SOON: [660, 880], DUE: [660] };
const TONE_SEC = 0.35;

/** A browser lets a page sound once somebody has touched it. */
function awaken() {
  try {
    sound ??= new AudioContext();
    if (sound.state === "suspended") sound.resume();
  } catch {
    // No sound on this device; the words stand on the page.
  }
}
document.addEventListener("pointerdown", awaken);
document.addEventListener("keydown", awaken);

async function tones(kind) {
  navigator.vibrate?.(TONES_HZ[kind].flatMap(() => [300, 50]));
  awaken();
  if (!sound) return false;
  await Promise.race([sound.resume(), new Promise((soon) => setTimeout(soon, 300))]);
  // What could not be heard at its time is not played later.
  if (sound.state !== "running") return false;
  TONES_HZ[kind].forEach((hz, turn) => {
    const wave = sound.createOscillator();
    const level = sound.createGain();
    level.gain.value = 0.2;
    wave.frequency.value = hz;
    wave.connect(level).connect(sound.destination);
    wave.start(sound.currentTime + turn * TONE_SEC);
    wave.stop(sound.currentTime + (turn + 1) * TONE_SEC - 0.05);
  });
  return true;
}

function aloud(words, kind) {
  say(words, true);
  // A screen that watches shows the words; the one at the kettle is heard.
  if (kettle.classList.contains("watching")) return;
  tones(kind).then((heard) => {
    if (!heard) say(`${words} (This screen is silent: touch it once.)`, true);
  });
  if ("speechSynthesis" in window) speechSynthesis.speak(new SpeechSynthesisUtterance(words));
}

/** A device that keeps no screen awake, or does so over an encrypted line alone, is told of. */
async function stayAwake() {
  const says = document.getElementById("awake");
  try {
    await navigator.wakeLock.request("screen");
    says.textContent = "This screen is kept awake while this page is seen.";
  } catch {
    says.textContent =
      "This screen may go dark: the browser does not keep it awake here. Set the device to stay on, or nothing will sound.";
  }
}

// A browser lets the screen sleep again once another page was in front.
document.addEventListener("visibilitychange", () => {
  if (document.visibilityState === "visible") stayAwake();
});

// ---- hands ----

function atTyped(text) {
  const match = /^\s*(\d{1,2})[:.](\d{2})\s*$/.exec(text);
  if (!text.trim()) return stamp();
  if (!match) return null;
  const at = new Date(now());
  at.setHours(Number(match[1]), Number(match[2]), 0, 0);
  if (at.valueOf() > now() + 120_000) at.setDate(at.getDate() - 1);
  return at.toISOString();
}

/** In a rehearsal: asks the hidden rig what an instrument shows, and says it. */
async function readByEye(line) {
  const newest = async () => (await fetch("/api/rehearsal/newest")).text();
  try {
    const before = await newest();
    const answer = await post("/api/rehearsal/act", { line });
    if (!answer.ok) return say(sentence(answer.said), true);
    for (let turn = 0; turn < 20; turn++) {
      await new Promise((soon) => setTimeout(soon, 150));
      const told = await newest();
      if (told !== before) return say(told.replace(/^\d+ /, ""));
    }
    say("The hidden rig does not answer.", true);
  } catch {
    say("The program does not answer.", true);
  }
}

document.addEventListener("click", async (event) => {
  const at = event.target.closest("button");
  if (!at) return;
  if (at.dataset.levers !== undefined) {
    const place = document.getElementById("levers");
    place.textContent = "Simulating ...";
    try {
      const answer = await fetch(`/api/gyles/${gyle}/levers`);
      const html = (await answer.json()).html;
      // The page may have been told anew meanwhile.
      document.getElementById("levers").innerHTML = html;
      waysAt = Date.now();
    } catch {
      place.textContent = "The program does not answer; the wall sheet has what a deviation does.";
    }
  } else if (at.dataset.trySound !== undefined) {
    tones("SOON");
    say("If you heard nothing, this device is silent: watch it.");
  } else if (at.dataset.open) {
    const place = document.getElementById(at.dataset.open);
    place.open = true;
    place.scrollIntoView({ block: "start" });
    place.querySelector("summary").focus({ preventScroll: true });
  } else if (at.dataset.snooze) {
    snooze(Number(at.dataset.snooze));
  } else if (at.dataset.line) {
    await readByEye(at.dataset.line);
  } else if (at.dataset.sure && at.textContent !== at.dataset.sure) {
    // What changes the plan is asked for once more; after a while the first press is forgotten.
    const words = at.textContent;
    at.textContent = at.dataset.sure;
    at.removeAttribute("aria-label");
    say(at.dataset.sure);
    setTimeout(() => {
      at.textContent = words;
    }, 15_000);
  } else if (at.dataset.do && at.type === "button") {
    at.disabled = true;
    if (at.dataset.do === "start") stayAwake();
    await note({ do: at.dataset.do, what: at.dataset.what ?? "", value: at.dataset.value ?? "" });
    // Whoever starts the day stands at the kettle.
    if (at.dataset.do === "start") {
      // The button stood at the end of a list; the day is looked at from its top.
      scrollTo(0, 0);
      await take();
    }
    at.disabled = false;
  }
});

document.addEventListener("submit", (event) => {
  const form = event.target.closest("form.entry");
  if (!form) return;
  event.preventDefault();
  const fields = Object.fromEntries(new FormData(form));
  const problem = form.querySelector(".problem");
  problem.textContent = "";
  const at = atTyped(fields.at ?? "");
  if (!at) {
    problem.textContent = "The time is not clear. Type it as 10:32.";
    return;
  }
  const kept = form.elements.namedItem("value").value;
  let refused = false;
  document.activeElement?.blur();
  note({ ...fields, at, do: form.dataset.do, what: form.dataset.what }, (words) => {
    refused = true;
    const there = same(form);
    there.querySelector(".problem").textContent = words;
    const field = there.elements.namedItem("value");
    // Who has typed the next value already keeps that; the words say which one was not taken.
    if (!field.value) field.value = kept;
  });
  // A note that is kept on this device is noted, so the field is free for the next at once: cleared
  // only when the book has answered, it would take away what was typed meanwhile.
  if (!refused) form.reset();
});

document.addEventListener("focusout", () => {
  if (later) setTimeout(() => later && show(later), 300);
});

// ---- loaded again while the program is away ----

/** Says what a reload of this page needs; browsers hold pages over secure lines only. */
async function holdPage() {
  const says = document.getElementById("reload");
  if (!isSecureContext || !navigator.serviceWorker) {
    says.textContent =
      "To load this page again the program must answer: this line is not encrypted, so nothing is held on this device.";
    return;
  }
  try {
    await navigator.serviceWorker.register("/offline.js");
    if (!navigator.serviceWorker.controller) {
      await new Promise((done) => {
        navigator.serviceWorker.addEventListener("controllerchange", done, { once: true });
      });
    }
    // What is shown now may have come before the worker that holds it.
    if (reached) await Promise.all([fetch(location.pathname), look()]);
    says.textContent = "This page is held on this device: it can be loaded again while the program is away.";
  } catch {
    says.textContent = "To load this page again the program must answer: this device holds no pages.";
  }
}

function listen() {
  const live = new EventSource(`/api/gyles/${gyle}/live`);
  live.addEventListener("written", look);
  live.addEventListener("there", look);
  live.addEventListener("error", () => {
    reached = false;
    line();
    // It may be that this screen was turned out.
    look();
  });
}

hold();
ticked();
times();
tick();
line();
listen();
setInterval(tick, 1000);
setInterval(look, SLOW_MS);
// Whoever waits for the program is not to wait for the slow round.
setInterval(() => {
  if (!reached || waiting().length) look();
}, AWAY_MS);
holdPage();
addEventListener("online", look);
stayAwake();
