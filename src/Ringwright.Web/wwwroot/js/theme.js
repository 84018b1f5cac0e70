// Light or dark: the system's choice until the switch is used; using it back returns to the system's.
(() => {
  const key = "ringwright.theme";
  const root = document.documentElement;
  const system = () => (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light");

  const show = (theme) => {
    if (theme === "light" || theme === "dark") root.dataset.theme = theme;
    else delete root.dataset.theme;
  };

  const turn = () => {
    const next = (root.dataset.theme ?? system()) === "dark" ? "light" : "dark";
    const kept = next === system() ? null : next;
    show(kept);
    try {
      if (kept) localStorage.setItem(key, kept);
      else localStorage.removeItem(key);
    } catch {
      // Without storage the choice lasts until the page is left.
    }
  };

  try {
    show(localStorage.getItem(key));
  } catch {
    // Storage may be switched off.
  }
  document.addEventListener("click", (event) => {
    if (event.target.closest("[data-turn-theme]")) turn();
  });
})();
