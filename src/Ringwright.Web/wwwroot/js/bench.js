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
    } else if (event.target.closest?.("[data-own-arrows]") && /^(Arrow|Home$|End$| $)/.test(event.key)) {
      event.preventDefault();
    }
  });

  window.ringwright = {
    // The element may only come with the page that is being opened.
    async goTo(id) {
      let element = document.getElementById(id);
      for (let tried = 0; !element && tried < 60; tried++) {
        await new Promise((done) => setTimeout(done, 50));
        element = document.getElementById(id);
      }
      if (!element) return;
      for (let box = element.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
      const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
      element.scrollIntoView({ block: "center", behavior: calm ? "auto" : "smooth" });
      element.focus({ preventScroll: true });
    },
  };

  // While the server is away nothing can be typed, so nothing typed is lost. As soon as it answers, the page takes up its
  // thread again; a restarted server does not know it any more, and the page is opened anew.
  document.addEventListener("DOMContentLoaded", () => {
    const bar = document.getElementById("components-reconnect-modal");
    let away = false;

    const answers = async () => {
      try {
        return (await fetch("/", { cache: "no-store" })).ok;
      } catch {
        return false;
      }
    };

    const comeBack = async () => {
      while (away) {
        if (await answers()) {
          // A reconnect that gets no word is as good as none: all that was typed is on the server, so the page may open anew.
          const silence = new Promise((done) => setTimeout(() => done(false), 4000));
          const known = await Promise.race([Blazor.reconnect().catch(() => false), silence]);
          if (!known && away) location.reload();
          return;
        }
        await new Promise((done) => setTimeout(done, 500));
      }
    };

    bar.addEventListener("components-reconnect-state-changed", (event) => {
      const wasAway = away;
      away = event.detail.state !== "hide";
      document.body.toggleAttribute("data-away", away);
      document.querySelector(".page").inert = away;
      if (away && !wasAway) comeBack();
    });
  });
})();
