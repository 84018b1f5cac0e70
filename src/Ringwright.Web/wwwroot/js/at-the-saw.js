// Counting at the saw. Every tap is a mark with a name of its own, kept in this browser and sent to the bench as soon as it
// answers; sent twice it counts once. The rules of counting are those of CutTally.
(() => {
  const page = document.querySelector(".saw-page");
  const job = JSON.parse(page.dataset.job);
  const key = `ringwright.saw.${job.piece}/${job.ring}`;
  const out = (name) => page.querySelector(`[data-out="${name}"]`);
  const put = (name, text) => {
    const element = out(name);
    if (element.textContent !== String(text)) element.textContent = text;
  };

  const load = (name = key) => {
    try {
      return JSON.parse(localStorage.getItem(name)) ?? { marks: [], sent: [] };
    } catch {
      return { marks: [], sent: [] };
    }
  };
  let kept = load();
  let told = "";
  let cut = job.cuts[0];
  let unkept = false;
  let away = false;
  let busy = false;

  const keep = () => {
    try {
      localStorage.setItem(key, JSON.stringify(kept));
      unkept = false;
    } catch {
      unkept = true;
    }
  };
  const add = (marks) => {
    const known = new Set(kept.marks.map((one) => one.id));
    kept.marks.push(...marks.filter((one) => !known.has(one.id)));
  };
  // Taps were once kept under the names of piece and ring.
  const adopt = () => {
    const old = `ringwright.saw.${job.name} | ${job.ringName}`;
    const marks = load(old).marks;
    if (marks.length === 0) return;
    add(marks);
    keep();
    if (!unkept) localStorage.removeItem(old);
  };
  const waiting = () => {
    const sent = new Set(kept.sent);
    return kept.marks.filter((mark) => !sent.has(mark.id));
  };

  const tally = () => {
    const mine = kept.marks.filter((mark) => mark.cut === cut.key).sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
    // A mark stands unless one that takes it back stands; the clocks of tablets differ, so times decide nothing here.
    const undoing = new Map();
    for (const mark of mine) if (mark.kind === "undone" && mark.of) undoing.set(mark.of, [...(undoing.get(mark.of) ?? []), mark]);
    const known = new Map();
    const stands = (mark) => {
      if (!known.has(mark.id)) {
        known.set(mark.id, false);
        known.set(mark.id, !(undoing.get(mark.id) ?? []).some(stands));
      }
      return known.get(mark.id);
    };
    const sum = { good: 0, lost: 0, inBoard: 0, last: null };
    for (const mark of mine) {
      if (mark.kind === "undone" || !stands(mark)) continue;
      if (mark.kind === "bad" && sum.good === 0) continue;
      if (mark.kind === "sawn") sum.good++;
      if (mark.kind === "lost") sum.lost++;
      if (mark.kind === "bad") {
        sum.good--;
        sum.lost++;
      }
      if (mark.kind === "sawn" || mark.kind === "lost") sum.inBoard++;
      if (mark.kind === "board") sum.inBoard = 0;
      if (mark.kind === "cleared") sum.good = sum.lost = sum.inBoard = 0;
      sum.last = mark.kind === "recorded" ? null : mark;
    }
    return sum;
  };

  const show = () => {
    const now = tally();
    const done = now.good >= cut.needed;
    const spares = Math.max(0, cut.toSaw - cut.needed - now.lost);
    const full = now.inBoard >= cut.perBoard;
    put("title", done ? "Enough for the ring" : "Next wedge");
    put("next", done && now.good >= cut.needed + spares ? "Done" : now.good + 1);
    out("how-box").hidden = cut.hows.length === 0;
    put("how", cut.hows.length === 0 ? "" : cut.hows[now.inBoard % 2]);
    put("good", now.good);
    put("needed", cut.needed);
    put("spares", spares);
    put("note", full
      ? "This board should be used up. Take a new one, square its end, saw the first offcut, then tap New board."
      : now.lost > cut.toSaw - cut.needed ? "More were lost than there are spares: saw on until the good ones are enough."
      : done ? "The ring has all it needs; what is sawn now is spare." : "");
    put("told", told);
    for (const box of page.querySelectorAll("[data-cut]")) box.hidden = box.dataset.cut !== cut.key;
    page.querySelector('[data-mark="undone"]').disabled = !now.last;
    page.querySelector('[data-mark="bad"]').disabled = now.good === 0;
    const count = waiting().length;
    put("net", unkept ? "This browser keeps nothing: do not close the page before the bench answers." : away ? `The bench does not answer. Count on: ${count} ${count === 1 ? "tap is" : "taps are"} kept here and sent later.` : "In step with the bench.");
    page.toggleAttribute("data-away", away);
  };

  const fresh = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

  const mark = (kind) => {
    const last = tally().last;
    if (kind === "undone" && !last) return;
    // The clock may stand still or go back; a mark never comes before the one it follows.
    const at = Math.max(Date.now(), ...kept.marks.map((one) => one.at + 1));
    kept.marks.push({ id: fresh(), cut: cut.key, kind, at, of: kind === "undone" ? last.id : null });
    keep();
    show();
    send();
  };

  const send = async () => {
    if (busy) return;
    busy = true;
    try {
      const marks = waiting();
      const stop = new AbortController();
      const limit = setTimeout(() => stop.abort(), 5000);
      const answer = await fetch("/saw/marks", {
        method: "POST", headers: { "Content-Type": "application/json" }, signal: stop.signal,
        body: JSON.stringify({ piece: job.piece, ring: job.ring, marks, basis: job.cuts.map((one) => one.basis) }),
      });
      clearTimeout(limit);
      away = !answer.ok;
      if (answer.ok) {
        const all = await answer.json();
        add(all.marks);
        kept.sent = all.marks.map((one) => one.id);
        told = all.told ?? "";
        keep();
      } else if (answer.status === 404) {
        told = await answer.text();
      }
    } catch {
      away = true;
    }
    busy = false;
    show();
    if (!away && waiting().length > 0) send();
  };

  page.addEventListener("click", (event) => {
    const button = event.target.closest("[data-mark]");
    if (button) mark(button.dataset.mark);
    // Some tablets keep the screen on only after a tap.
    if (button) stayOn();
  });
  page.addEventListener("change", (event) => {
    const chosen = job.cuts.find((one) => one.key === event.target.value);
    if (chosen) cut = chosen;
    show();
  });
  window.addEventListener("online", send);
  window.addEventListener("storage", (event) => {
    if (event.key === key) kept = load();
    show();
  });
  setInterval(send, 4000);

  // The screen stays on while the page is looked at; where the tablet refuses that, it says so.
  let awake = null;
  const stayOn = async () => {
    if (document.visibilityState !== "visible" || !window.isSecureContext || (awake && !awake.released)) return;
    try {
      awake = await navigator.wakeLock.request("screen");
      put("awake", "");
    } catch {
      put("awake", "This tablet does not keep its screen on by itself; set it to stay on while you saw.");
    }
  };
  document.addEventListener("visibilitychange", stayOn);
  stayOn();

  // The page, what it is drawn with and the job sheet are kept for when the bench cannot be reached.
  const settle = async () => {
    if (!navigator.serviceWorker) return;
    await navigator.serviceWorker.register("/saw-worker.js", { scope: "/saw/" });
    const ready = await navigator.serviceWorker.ready;
    const files = [...document.querySelectorAll("link[href], script[src]")].map((one) => one.href ?? one.src);
    ready.active.postMessage({ keep: [location.href, new URL(job.sheet, location.href).href, ...files] });
  };
  settle().catch(() => {});

  // Browsers keep pages, and the screen on, only for the machine itself or over an encrypted line.
  if (!window.isSecureContext) put("open", "Leave this page open: it goes on counting without the bench, but it cannot be opened anew until the bench answers, and the screen may go dark.");

  adopt();
  show();
  send();
})();
