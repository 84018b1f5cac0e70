import { Color } from 'three';
import { fetchPacket } from './packet.js';
import { Panel } from './panel.js';
import { Solid } from './solid.js';
import { Stage } from './stage.js';

const NO_SOLID = 'This browser draws nothing in three dimensions here, so these are the flat pictures.';
const TAP = 6;    // px a finger may stray and still tap
const SETTLE = 250; // ms after a coarse mesh before a fine one is asked for

/** The picture with its inputs: asks for the piece, shows it, and tells the page what is pointed at. */
export class PieceView {
  constructor(root, owner) {
    this.root = root;
    this.owner = owner;
    this.canvas = root.querySelector('canvas');
    this.panel = new Panel(root, (what) => this.changed(what));
    this.on = new AbortController();
    this.part = -1;
    root.pieceView = this; // for tests and benchmarks
    this.start();
  }

  start() {
    try {
      this.stage = new Stage(this.canvas);
    } catch {
      this.withoutSolid();
      return;
    }
    const listen = (target, name, act) => target.addEventListener(name, act, { signal: this.on.signal });
    listen(this.canvas, 'keydown', (event) => this.key(event));
    listen(this.canvas, 'pointerdown', (event) => { this.down = { x: event.clientX, y: event.clientY }; });
    listen(this.canvas, 'pointerup', (event) => {
      if (this.down && Math.hypot(event.clientX - this.down.x, event.clientY - this.down.y) < TAP) this.take(this.stage.pick(event.clientX, event.clientY));
    });
    listen(this.canvas, 'webglcontextlost', (event) => {
      event.preventDefault();
      this.stage.lost = true;
      this.panel.say('The graphics card is busy; the picture comes back by itself.');
    });
    listen(this.canvas, 'webglcontextrestored', () => {
      this.stage.lost = false;
      this.panel.say('');
      this.stage.invalidate();
    });
    listen(this.panel.find('home'), 'click', () => this.stage.eye.face());
    this.theme();
    const dark = matchMedia('(prefers-color-scheme: dark)');
    listen(dark, 'change', () => this.theme());
    this.watch = new MutationObserver(() => this.theme());
    this.watch.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    for (const what of ['finish', 'age', 'woods', 'view', 'picture']) this.changed(what);
  }

  withoutSolid() {
    this.panel.choose('picture', 'flat');
    this.root.dataset.flatOnly = ''; // what only the solid obeys is not shown
    this.panel.say(NO_SOLID);
    this.flat(true);
  }

  /** Shows a version of the piece; of a big one a coarse mesh, which a fine one follows when nothing newer came. */
  async show(version, big) {
    this.version = version;
    for (const image of this.root.querySelectorAll('[data-viewer="flat"] img')) image.removeAttribute('src');
    this.flat(this.panel.chosen('picture') === 'flat');
    if (!this.stage || version === this.finest) return;
    this.fetching?.abort();
    this.fetching = new AbortController();
    const { signal } = this.fetching;
    await this.fetch(version, big ? 'coarse' : 'fine', signal);
    if (big) setTimeout(() => this.fetch(version, 'fine', signal), SETTLE);
  }

  async fetch(version, detail, signal) {
    if (signal.aborted) return;
    try {
      this.takeIn(await fetchPacket(version, detail, signal), version);
      if (detail === 'fine') this.finest = version;
      this.panel.say('');
    } catch (error) {
      if (error.name !== 'AbortError') this.panel.say(error.message);
    }
  }

  takeIn(packet, version) {
    if (!packet || version !== this.version) return;
    const held = this.place, again = this.shown === version;
    this.stage.put(new Solid(packet));
    this.shown = version;
    this.canvas.dataset.version = version;
    this.lay();
    if (!held) return;
    // What is in hand stays in hand, and the page hears what it is in the new plan.
    const part = this.stage.solid.partAt(held.ring, held.segment);
    if (again) this.mark(part);
    else this.take(part, false);
  }

  // Colours of the page, as it is now.
  theme() {
    if (!this.stage) return;
    const style = getComputedStyle(this.root), { uniforms: u } = this.stage;
    const into = (vector, name) => {
      const c = new Color().setStyle(style.getPropertyValue(name).trim(), '');
      vector.set(c.r, c.g, c.b);
    };
    into(u.uAccent.value, '--viewer-accent');
    into(u.uInk.value, '--ink');
    const dark = style.colorScheme.includes('dark');
    u.uSky.value.set(...(dark ? [0.44, 0.45, 0.48] : [0.50, 0.52, 0.55]));
    u.uTable.value.set(...(dark ? [0.17, 0.155, 0.14] : [0.36, 0.335, 0.30]));
    u.uGround.value = dark ? 1.6 : 1;
    this.stage.invalidate();
  }

  changed(what) {
    if (what === 'picture') this.flat(this.panel.chosen('picture') === 'flat');
    if (!this.stage) return;
    const { uniforms: u } = this.stage;
    if (what === 'finish') u.uFinish.value = ['Raw', 'Oiled', 'Gloss'].indexOf(this.panel.chosen('finish'));
    if (what === 'age') u.uAge.value = this.panel.age;
    if (what === 'woods') u.uLines.value = this.panel.chosen('woods') === 'lines' ? 1 : 0;
    if (what === 'view' || what === 'slider') this.lay();
    this.stage.invalidate();
  }

  lay() {
    const view = this.panel.chosen('view'), rings = this.stage.solid?.packet.rings.length ?? 1;
    this.panel.lay(view, rings);
    if (view === 'OneRing') this.stage.ring = Math.round(this.panel.measure * (rings - 1));
    this.stage.stand(view, this.panel.measure);
  }

  flat(wanted) {
    const box = this.panel.find('flat');
    box.hidden = !wanted;
    this.canvas.hidden = wanted;
    this.panel.find('home').hidden = wanted;
    if (!wanted) return;
    for (const image of box.querySelectorAll('img')) if (!image.getAttribute('src') && image.dataset.src) image.src = image.dataset.src;
  }

  /** Takes a segment in hand, −1 for none, and tells the page, also whether a person did it or it only stayed in hand in a new plan. */
  take(part, byHand = true) {
    this.mark(part);
    const { ring, segment } = this.place ?? { ring: -1, segment: -1 };
    const planned = ring < 0 ? -1 : this.stage.solid.packet.rings[ring].planned;
    this.owner.invokeMethodAsync('Picked', this.shown, planned, segment, byHand);
  }

  mark(part) {
    const { stage } = this;
    this.part = part;
    this.place = part < 0 ? null : { ring: stage.solid.ringOf(part), segment: stage.solid.segmentOf(part) };
    stage.uniforms.uPicked.value = part;
    this.canvas.dataset.picked = part < 0 ? '' : `${this.place.ring} ${this.place.segment}`;
    stage.invalidate();
  }

  // From the segment in hand to another: rings up and down, segments around.
  walk(rings, segments) {
    const { solid } = this.stage, all = solid.packet.rings;
    const from = this.place ?? { ring: rings < 0 ? all.length : rings > 0 ? -1 : 0, segment: segments < 0 ? 0 : -1 };
    const ring = Math.min(all.length - 1, Math.max(0, from.ring + rings));
    const count = all[ring].segments, was = all[Math.min(all.length - 1, Math.max(0, from.ring))].segments;
    const segment = rings ? Math.floor(((Math.max(0, from.segment) + 0.5) / was) * count) : (from.segment + segments + count) % count;
    const part = solid.partAt(ring, segment);
    if (part < 0) return;
    if (this.panel.chosen('view') === 'OneRing') {
      this.panel.measure = ring / Math.max(1, all.length - 1);
      this.lay();
    }
    this.take(part);
    this.stage.eye.turnTo(solid.middleOf(part));
  }

  key(event) {
    if (event.ctrlKey || event.metaKey || event.altKey || !this.stage?.solid) return;
    const { eye } = this.stage;
    const act = {
      ArrowLeft: () => eye.turnBy(-1, 0), ArrowRight: () => eye.turnBy(1, 0), ArrowUp: () => eye.turnBy(0, 1), ArrowDown: () => eye.turnBy(0, -1),
      '+': () => eye.comeNearer(0.87), '=': () => eye.comeNearer(0.87), '-': () => eye.comeNearer(1.15), Home: () => eye.face(),
      '[': () => this.walk(-1, 0), ']': () => this.walk(1, 0), ',': () => this.walk(0, -1), '.': () => this.walk(0, 1), Escape: () => this.take(-1),
    }[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  }

  close() {
    this.fetching?.abort();
    this.on.abort();
    this.watch?.disconnect();
    this.panel.dispose();
    this.stage?.dispose();
  }
}
