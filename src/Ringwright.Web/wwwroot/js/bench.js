// What the page does by itself: keys that the browser would take, going to a field, and waiting for the server.
(() => {
  const press = (id) => {
    const button = document.getElementById(id);
    if (button && !button.disabled) button.click();
  };

  // The bench keeps its own steps; the browser's own undo would only know one field.
  document.addEventListener("keydown", (event) => {
    const key = event.key.toLowerCase();
    if ((event.ctrlKey || event.metaKey) && !event.altKey && (key === "z" || key === "y")) {
      event.preventDefault();
      press(key === "y" || event.shiftKey ? "redo" : "undo");
    } else if (event.target.closest?.("[data-own-arrows]") && /^(Arrow|Home$|End$)/.test(event.key)) {
      event.preventDefault();
    }
  });

  window.ringwright = {
    goTo(id) {
      const element = document.getElementById(id);
      if (!element) return;
      for (let box = element.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
      const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
      element.scrollIntoView({ block: "center", behavior: calm ? "auto" : "smooth" });
      element.focus({ preventScroll: true });
    },
  };

  // While the server is away nothing can be typed, so nothing typed is lost; a restarted server needs a fresh page.
  document.addEventListener("DOMContentLoaded", () => {
    const bar = document.getElementById("components-reconnect-modal");
    let waiting = false;

    const reloadWhenBack = async () => {
      if (waiting) return;
      waiting = true;
      for (;;) {
        try {
          if ((await fetch("/", { cache: "no-store" })).ok) break;
        } catch {
          // Not back yet.
        }
        await new Promise((done) => setTimeout(done, 700));
      }
      location.reload();
    };

    bar.addEventListener("components-reconnect-state-changed", (event) => {
      const state = event.detail.state;
      const page = document.querySelector(".page");
      if (page) page.inert = state !== "hide";
      if (state === "show" || state === "retrying") document.body.dataset.away = "";
      if (state === "hide") delete document.body.dataset.away;
      if (state === "failed" || state === "rejected") reloadWhenBack();
    });
  });
})();
