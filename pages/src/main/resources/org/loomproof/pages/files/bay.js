// The car on the screen answers at once: each turn of a control fetches the page that the form would lead to, and only its
// answer is put in place. Without script the button does the same.
"use strict";
const trying = document.querySelector("form[data-live]");
if (trying) {
  const said = document.getElementById("live-said");
  let latest = 0;
  trying.addEventListener("change", async () => {
    const mine = ++latest;
    const address = trying.action + "?" + new URLSearchParams(new FormData(trying));
    try {
      const answer = await fetch(address, { headers: { Accept: "text/html" }, redirect: "error" });
      if (mine !== latest || !answer.ok) {
        return;
      }
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const live = page.getElementById(trying.dataset.live);
      const old = document.getElementById(trying.dataset.live);
      const left = [...old.querySelectorAll(".drawn")].map((drawn) => drawn.scrollLeft);
      old.replaceWith(document.adoptNode(live));
      live.querySelectorAll(".drawn").forEach((drawn, at) => (drawn.scrollLeft = left[at] ?? 0));
      said.textContent = [...live.querySelectorAll(".stand, .danger .claim h3")].map((each) => each.textContent.trim()).join(". ");
      history.replaceState(null, "", address);
    } catch {
      trying.querySelector("button").style.display = "inline-block";
    }
  });
}

// A picture of a joint goes to the server as soon as it was taken. Without a network it stays where the device keeps pictures, and the
// page says so; without script the button sends it.
document.documentElement.dataset.script = "on";
document.addEventListener("change", async (event) => {
  const form = event.target.form;
  if (event.target.type !== "file" || !form?.matches("form[data-send]")) {
    return;
  }
  const said = form.querySelector(".said");
  form.classList.add("sending");
  try {
    const answer = await fetch(form.action, { method: "POST", body: new FormData(form) });
    if (answer.ok) {
      document.dispatchEvent(new Event("picture-kept"));
      return;
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    said.textContent = (page.querySelector(".problem") ?? page.querySelector("main h1"))?.textContent ?? String(answer.status);
  } catch {
    said.textContent = form.dataset.unsent;
  }
  form.classList.remove("sending");
  form.reset();
});

// The bench and the bay. What is noted goes into a queue on the device first and from there to the server, in order, each entry under
// a name drawn here, so that the server writes it once however often it is sent. An entry leaves the queue when the server has it.
const unsent = document.getElementById("unsent");
if (unsent) {
  const QUEUE = "unsent";
  const job = unsent.dataset.job;
  const queue = () => JSON.parse(localStorage.getItem(QUEUE) ?? "[]");
  const keep = (entries) => (entries.length ? localStorage.setItem(QUEUE, JSON.stringify(entries)) : localStorage.removeItem(QUEUE));
  const say = (words) => {
    if (localStorage.getItem("voice") !== "off" && "speechSynthesis" in window && words) {
      speechSynthesis.cancel();
      const spoken = new SpeechSynthesisUtterance(words);
      spoken.lang = document.documentElement.lang;
      speechSynthesis.speak(spoken);
    }
  };
  const beep = (hertz) => {
    if (localStorage.getItem("voice") === "off" || !("AudioContext" in window)) {
      return;
    }
    const audio = new AudioContext();
    const tone = audio.createOscillator();
    const loudness = audio.createGain();
    tone.frequency.value = hertz;
    loudness.gain.value = 0.2;
    tone.connect(loudness).connect(audio.destination);
    tone.start();
    tone.stop(audio.currentTime + 0.18);
    tone.onended = () => audio.close();
  };

  let trouble = "";
  const tell = () => {
    const all = queue();
    const mine = all.filter((each) => each.by === unsent.dataset.person);
    unsent.replaceChildren();
    unsent.classList.toggle("waits", all.length > 0);
    const line = document.createElement("p");
    line.textContent = all.length ? unsent.dataset.some.replace("{n}", all.length) : unsent.dataset.none;
    unsent.append(line);
    if (all.length && trouble) {
      const why = document.createElement("p");
      why.textContent = trouble === "sign" ? unsent.dataset.sign : trouble === "other" ? unsent.dataset.other.replace("{n}", all.length - mine.length) : unsent.dataset.later;
      unsent.append(why);
      if (trouble === "sign") {
        const link = document.createElement("a");
        link.href = "/sign-in";
        link.className = "act";
        link.textContent = unsent.dataset.sign;
        why.replaceWith(link);
      }
    }
    const refused = Number(sessionStorage.getItem("refused") ?? 0);
    if (refused) {
      const told = document.createElement("p");
      told.textContent = unsent.dataset.refused.replace("{n}", refused);
      unsent.append(told);
    }
    showKept(all.filter((each) => each.job === job));
  };

  // What waits to be sent stands on the page as well, where it belongs.
  const showKept = (entries) => {
    document.querySelectorAll(".kept-here").forEach((each) => each.remove());
    for (const form of document.querySelectorAll("form[data-reading]")) {
      const about = JSON.parse(form.querySelector("[name=entry]").value);
      let last = form;
      for (const each of entries.filter((one) => one.entry.what === "reading" && one.entry.circuit === about.circuit && one.entry.end === about.end)) {
        const line = document.createElement("p");
        line.className = "kept-here";
        line.textContent = `${each.entry.step}: ${each.entry.value} ${each.entry.unit} – ${unsent.dataset.kept} `;
        const undo = document.createElement("button");
        undo.type = "button";
        undo.textContent = unsent.dataset.undo;
        undo.addEventListener("click", () => {
          keep(queue().filter((one) => one.entry.id !== each.entry.id));
          tell();
        });
        line.append(undo);
        last.after(line);
        last = line;
      }
    }
    for (const form of document.querySelectorAll("form[data-tick]")) {
      const about = JSON.parse(form.querySelector("[name=entry]").value);
      const last = entries.filter((one) => one.entry.what === "tick" && one.entry.step === about.step && one.entry.of === about.of).pop();
      if (last) {
        const box = form.querySelector("button");
        const done = last.entry.done === "true";
        box.textContent = done ? "✓" : "";
        box.setAttribute("aria-pressed", done);
        form.closest(".lead").classList.toggle("ticked", done);
        form.querySelector("[name=entry]").value = JSON.stringify({ ...about, done: String(!done) });
      }
    }
  };

  // What is half typed when an answer comes stays, with the step that was chosen for it and the place of the cursor.
  const halfTyped = (part) => {
    const typed = [...part.querySelectorAll("form")].filter((form) => form.dataset.chosen || [...form.querySelectorAll("input:not([type=hidden], [type=radio])")].some((each) => each.value));
    const fields = typed.flatMap((form) => [...form.querySelectorAll("input[id]:not([type=hidden])")]).filter((each) => each.type !== "radio" || each.checked);
    const focused = part.contains(document.activeElement) ? document.activeElement.id : "";
    return () => {
      for (const field of fields) {
        const again = document.getElementById(field.id);
        if (again && again.type === "radio") {
          again.checked = true;
          again.form.dataset.chosen = "yes";
        } else if (again) {
          again.value = field.value;
        }
      }
      if (focused) {
        document.getElementById(focused)?.focus();
      }
    };
  };

  const refresh = async () => {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
    if (!answer.ok || answer.redirected) {
      return;
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const live = page.getElementById("live");
    const before = document.getElementById("live");
    if (!live || !before) {
      return;
    }
    const saidBefore = document.getElementById("says")?.textContent;
    const putBack = halfTyped(before);
    before.replaceWith(document.adoptNode(live));
    putBack();
    const says = document.getElementById("says");
    if (says && says.textContent !== saidBefore) {
      beep(says.dataset.kind === "this-is-it" ? 1320 : 440);
      say([...says.querySelectorAll("h2, .asks")].map((each) => each.textContent).join(". "));
    }
    tell();
  };

  document.addEventListener("picture-kept", () => refresh().catch(() => {}));
  let sending = null;
  const sendAll = async () => {
    let changed = false;
    while (queue().length) {
      const first = queue().find((each) => each.by === unsent.dataset.person);
      if (!first) {
        trouble = "other";
        break;
      }
      const batch = queue().filter((each) => each.by === first.by && each.job === first.job).slice(0, 50);
      try {
        const who = await fetch("/mark", { redirect: "manual" });
        if (!who.ok) {
          trouble = "sign";
          break;
        }
        const signed = await who.json();
        if (signed.person !== first.by) {
          trouble = "other";
          break;
        }
        const form = new URLSearchParams({ mark: signed.mark });
        batch.forEach((each) => form.append("line", JSON.stringify(each.entry)));
        const answer = await fetch(first.job + "/work", { method: "POST", body: form, redirect: "error" });
        if (!answer.ok) {
          trouble = "later";
          break;
        }
        const refused = (await answer.json()).refused.reduce((sum, one) => sum + one, 0);
        sessionStorage.setItem("refused", Number(sessionStorage.getItem("refused") ?? 0) + refused);
        const sent = new Set(batch.map((each) => each.entry.id));
        keep(queue().filter((each) => !sent.has(each.entry.id)));
        trouble = "";
        changed = true;
      } catch {
        trouble = "later";
        break;
      }
    }
    return changed;
  };
  // One at a time, whoever asks: two tabs of one device wait for each other, too.
  const send = () =>
    (sending ??= navigator.locks
      .request("unsent", sendAll)
      .finally(() => (sending = null))
      .then(async (changed) => {
        tell();
        if (changed) {
          await refresh().catch(() => {});
        }
      }));

  document.addEventListener("submit", async (event) => {
    const form = event.target;
    if (!form.matches("form[data-work]")) {
      return;
    }
    event.preventDefault();
    const entries = [...form.querySelectorAll("[name=entry]")].map((each) => JSON.parse(each.value));
    const data = new FormData(form);
    if (data.get("with")) {
      Object.assign(entries[0], JSON.parse(data.get("with")));
    }
    for (const [name, value] of data) {
      if (name.startsWith("field.")) {
        entries[0][name.slice("field.".length)] = value.trim();
      }
    }
    const now = Date.now();
    const noted = entries.map((entry, at) => ({ job, by: unsent.dataset.person, entry: { ...entry, id: crypto.randomUUID(), when: now + at } }));
    keep([...queue(), ...noted]);
    form.querySelectorAll("input:not([type=hidden], [type=radio])").forEach((typed) => (typed.value = ""));
    delete form.dataset.chosen;
    tell();
    await (sending ?? Promise.resolve());
    await send();
    if (form.dataset.next) {
      location.assign(form.dataset.next);
    }
  });

  document.addEventListener("change", (event) => {
    if (event.target.type === "radio" && event.target.form) {
      event.target.form.dataset.chosen = "yes";
    }
  });

  document.addEventListener("click", (event) => {
    const key = event.target.closest("[data-key]");
    if (key) {
      const digits = key.closest("form").querySelector(".digits");
      const what = key.dataset.key;
      digits.value = what === "back" ? digits.value.slice(0, -1) : what === "-" ? (digits.value.startsWith("-") ? digits.value.slice(1) : "-" + digits.value) : what.startsWith("=") ? what.slice(1) : digits.value + what;
    }
  });

  const toggle = (id, isOn, change) => {
    const button = document.getElementById(id);
    const show = () => button.setAttribute("aria-pressed", isOn());
    button.addEventListener("click", () => {
      change();
      show();
    });
    show();
  };
  toggle("night", () => localStorage.getItem("night") === "on", () => {
    const on = localStorage.getItem("night") !== "on";
    localStorage.setItem("night", on ? "on" : "off");
    if (on) {
      document.documentElement.dataset.theme = "night";
    } else {
      delete document.documentElement.dataset.theme;
    }
  });
  toggle("voice", () => localStorage.getItem("voice") !== "off", () => {
    localStorage.setItem("voice", localStorage.getItem("voice") === "off" ? "on" : "off");
    if (localStorage.getItem("voice") === "off") {
      speechSynthesis?.cancel();
    } else {
      say(document.getElementById("live").dataset.say);
    }
  });

  document.querySelector("form.who")?.addEventListener("submit", () => caches.delete("bay"));
  window.addEventListener("online", send);
  const AGAIN_MS = 5000;
  setInterval(() => queue().length && send(), AGAIN_MS);

  // Every page of the bay that this one leads to is kept for when there is no network.
  const keepPages = async () => {
    if (!("serviceWorker" in navigator)) {
      return;
    }
    await navigator.serviceWorker.register("/jobs/bay-worker.js");
    await navigator.serviceWorker.ready;
    const kept = await caches.open("bay");
    const pages = [...document.querySelectorAll("a[data-keep]")].map((link) => new URL(link.href).pathname);
    const files = [...document.querySelectorAll("link[rel=stylesheet], script[src]")].map((each) => new URL(each.href ?? each.src).pathname);
    for (const name of [location.pathname, ...pages, ...files]) {
      const answer = await fetch(name);
      if (answer.ok && !answer.redirected) {
        await kept.put(name, answer);
      }
    }
    unsent.dataset.ready = "yes";
  };
  keepPages().catch(() => {});
  tell();
  send();
  say(document.getElementById("live")?.dataset.say);
}
if (!unsent) {
  document.addEventListener("picture-kept", () => location.reload());
}
