/** The component's inputs: read by name, told apart by data-viewer. */
export class Panel {
  constructor(root, changed) {
    this.root = root;
    this.on = new AbortController();
    root.addEventListener('input', (event) => {
      const what = event.target.dataset?.viewer;
      if (what) changed(what);
    }, { signal: this.on.signal });
    this.measures = { CutOpen: 500, PulledApart: 450, OneRing: 0 };
    this.shown = null;
  }

  find(part) {
    return this.root.querySelector(`[data-viewer="${part}"]`);
  }

  chosen(part) {
    return this.root.querySelector(`[data-viewer="${part}"]:checked`)?.value;
  }

  choose(part, value) {
    const input = this.root.querySelector(`[data-viewer="${part}"][value="${value}"]`);
    if (input) input.checked = true;
  }

  get age() {
    return this.find('age').value / 100;
  }

  /** What the slider of the chosen view says, 0 to 1. */
  get measure() {
    return this.find('slider').value / 1000;
  }

  set measure(value) {
    this.find('slider').value = 1000 * value;
  }

  /** Shows the slider that belongs to a view, where it was left. */
  lay(view, rings) {
    const words = { CutOpen: 'Where it is cut, from front to back', PulledApart: 'How far apart', OneRing: 'Which ring, from the bottom up' }[view];
    const slide = this.find('slide'), slider = this.find('slider');
    if (this.shown in this.measures && this.shown !== view) this.measures[this.shown] = slider.value;
    slide.hidden = !words || (view === 'OneRing' && rings < 2);
    this.find('slide-words').textContent = words ?? '';
    slider.step = view === 'OneRing' ? 1000 / Math.max(1, rings - 1) : 1;
    if (view in this.measures && this.shown !== view) slider.value = this.measures[view];
    this.shown = view;
  }

  say(sentence) {
    this.find('note').textContent = sentence;
  }

  dispose() {
    this.on.abort();
  }
}
