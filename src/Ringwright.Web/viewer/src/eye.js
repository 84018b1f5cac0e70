import { PerspectiveCamera, Spherical, Vector3 } from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';

const FIELD = 26; // degrees; long enough that a vase's walls do not run together
const FACE = { turn: -0.62, rise: 0.36 }; // radians: from the front, a little from above
const KEY_TURN = Math.PI / 24;
const GLIDE = 260; // ms

/** Where the piece is looked at from. z is up. */
export class Eye {
  constructor(canvas, changed) {
    this.changed = changed;
    this.camera = new PerspectiveCamera(FIELD, 1, 1, 1000);
    this.camera.up.set(0, 0, 1);
    this.camera.position.set(0, -10, 3);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.enablePan = false;
    this.controls.enableZoom = false; // until the picture has the focus: the wheel scrolls the page
    this.controls.rotateSpeed = 0.9;
    this.calm = matchMedia('(prefers-reduced-motion: reduce)');
    this.controls.enableDamping = !this.calm.matches;
    this.controls.addEventListener('change', changed);
    canvas.addEventListener('focus', () => { this.controls.enableZoom = true; });
    canvas.addEventListener('blur', () => { this.controls.enableZoom = false; });
    // Two fingers always zoom.
    canvas.addEventListener('touchstart', () => { this.controls.enableZoom = true; }, { passive: true });
    [this.radius, this.wide, this.tall] = [1, 1, 1];
    this.aspect = 1;
    this.glide = null;
    this.untouched = true;
    this.controls.addEventListener('start', () => {
      this.stop();
      this.untouched = false;
    });
  }

  /** Takes a cylinder of this middle, radius and height into sight, keeping direction and nearness. */
  fit(middle, wide, tall) {
    const nearness = this.untouched ? 1 : this.distance / this.fullDistance, radius = Math.hypot(wide, tall / 2);
    [this.radius, this.wide, this.tall] = [radius, wide, tall];
    const direction = this.spherical();
    this.controls.target.set(0, 0, middle);
    this.controls.minDistance = 1.15 * radius;
    this.controls.maxDistance = 5 * this.fullDistance;
    if (this.untouched) direction.set(this.fullDistance, Math.PI / 2 - FACE.rise, FACE.turn);
    else direction.radius = nearness * this.fullDistance;
    this.place(direction);
  }

  resize(width, height) {
    const nearness = this.distance / this.fullDistance;
    this.aspect = width / height;
    this.camera.aspect = this.aspect;
    const direction = this.spherical();
    direction.radius = nearness * this.fullDistance;
    this.place(direction);
  }

  /** From where the body fills the picture, seen from its face; never so near that it would not fit from above. */
  get fullDistance() {
    const half = Math.tan((FIELD * Math.PI) / 360), { wide, tall } = this;
    const s = Math.sin(FACE.rise), c = Math.cos(FACE.rise);
    const up = wide * s + (tall / 2) * c, near = wide * c - (tall / 2) * s;
    const face = Math.max(up / half + near * 0.5, wide / (half * this.aspect) + near * 0.5) * 1.16;
    const above = (wide / (half * Math.min(1, this.aspect)) + tall / 2) * 0.98;
    return Math.max(face, 0.82 * above);
  }

  get distance() {
    return this.camera.position.distanceTo(this.controls.target);
  }

  /** Azimuth of the eye around the lathe's axis, radians. */
  get turn() {
    return Math.atan2(this.camera.position.y, this.camera.position.x);
  }

  /** Sets near and far as close as can be: depth is scarce where segments touch. */
  prepare() {
    this.camera.near = Math.max(0.02 * this.radius, this.distance - 1.4 * this.radius);
    this.camera.far = this.distance + 3.4 * this.radius;
    this.camera.updateProjectionMatrix();
    this.camera.updateMatrixWorld();
  }

  /** Goes on with what moves; whether there is more to come. */
  step(now) {
    if (!this.glide) return this.controls.update();
    const { from, to, start } = this.glide;
    const done = Math.min(1, (now - start) / GLIDE), eased = done * done * (3 - 2 * done);
    this.place(new Spherical(from.radius + eased * (to.radius - from.radius), from.phi + eased * (to.phi - from.phi), from.theta + eased * (to.theta - from.theta)));
    if (done === 1) this.glide = null;
    return done < 1;
  }

  face() {
    this.untouched = true;
    this.go(new Spherical(this.fullDistance, Math.PI / 2 - FACE.rise, FACE.turn));
  }

  /** Brings a point in front. */
  turnTo(point) {
    this.untouched = false;
    const to = this.spherical();
    to.theta = Math.atan2(point[1], point[0]) + Math.PI / 2;
    this.go(to);
  }

  turnBy(across, up) {
    this.stop();
    this.untouched = false;
    const to = this.spherical();
    to.theta += across * KEY_TURN;
    to.phi = Math.min(Math.PI - 0.02, Math.max(0.02, to.phi - up * KEY_TURN));
    this.place(to);
    this.changed();
  }

  comeNearer(by) {
    this.stop();
    this.untouched = false;
    const to = this.spherical();
    to.radius = Math.min(this.controls.maxDistance, Math.max(this.controls.minDistance, to.radius * by));
    this.place(to);
    this.changed();
  }

  // theta 0 looks along +y, from the front; phi counts from the axis.
  spherical() {
    const offset = new Vector3().subVectors(this.camera.position, this.controls.target);
    const radius = Math.max(offset.length(), 1e-6);
    return new Spherical(radius, Math.acos(Math.min(1, Math.max(-1, offset.z / radius))), Math.atan2(offset.x, -offset.y));
  }

  place({ radius, phi, theta }) {
    const flat = radius * Math.sin(Math.min(Math.PI - 1e-3, Math.max(1e-3, phi)));
    this.camera.position.copy(this.controls.target).add(new Vector3(flat * Math.sin(theta), -flat * Math.cos(theta), radius * Math.cos(phi)));
    this.camera.lookAt(this.controls.target);
    this.controls.update();
  }

  go(to) {
    const from = this.spherical();
    to.theta = from.theta + Math.atan2(Math.sin(to.theta - from.theta), Math.cos(to.theta - from.theta));
    if (this.calm.matches) this.place(to);
    else this.glide = { from, to, start: performance.now() };
    this.changed();
  }

  stop() {
    this.glide = null;
  }

  dispose() {
    this.controls.dispose();
  }
}
