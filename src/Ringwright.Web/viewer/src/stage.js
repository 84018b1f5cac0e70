import { Mesh, PlaneGeometry, Scene, Vector2, WebGLRenderer, WebGLRenderTarget } from 'three';
import { Eye } from './eye.js';
import { makeMaterials, makeUniforms } from './materials.js';
import { KEY } from './shadows.js';

const SHARPEST = 2;      // pixels of the picture for one of the page
const SLOW = 45;         // ms a frame may take while the piece is turned, before the picture gets coarser
const REST = 160;        // ms without a change, after which it is drawn in full again
const SHADOWED = { Whole: 1, PulledApart: 0, CutOpen: 0, OneRing: 0, GlueJoints: 0 };

/** The drawn scene: one solid, a table, one draw call for each material. Draws only when something changed. */
export class Stage {
  constructor(canvas) {
    this.canvas = canvas;
    const wanted = { alpha: true, antialias: true, premultipliedAlpha: false, powerPreference: 'high-performance' };
    const fast = canvas.getContext('webgl2', { ...wanted, failIfMajorPerformanceCaveat: true });
    const context = fast ?? canvas.getContext('webgl2', wanted);
    if (!context) throw new Error('There is no WebGL 2 here.');
    this.renderer = new WebGLRenderer({ canvas, context, ...wanted });
    this.slow = !fast;
    this.renderer.setClearColor(0, 0);
    this.renderer.info.autoReset = false;
    this.uniforms = makeUniforms();
    this.materials = makeMaterials(this.uniforms);
    this.scene = new Scene();
    this.pickScene = new Scene();
    this.ground = new Mesh(new PlaneGeometry(1, 1), this.materials.ground);
    this.ground.renderOrder = 2;
    this.scene.add(this.ground);
    this.target = new WebGLRenderTarget(1, 1);
    this.eye = new Eye(canvas, () => this.invalidate());
    this.solid = null;
    this.view = 'Whole';
    this.measure = 0; // 0 to 1, what the slider of a view says
    this.ring = 0;
    this.cutTurn = 0;
    this.scale = 1;
    this.last = 0;
    this.observer = new ResizeObserver(() => this.resize());
    this.observer.observe(canvas.parentElement);
    this.resize();
  }

  /** Puts a solid on the stage in place of the one before; nothing flickers, as both are whole. */
  put(solid) {
    const before = this.solid;
    this.solid = solid;
    const u = this.uniforms;
    [u.uParts.value, u.uWoods.value, u.uWall.value, u.uShadows.value] = [solid.parts, solid.woods, solid.wall, solid.shadows];
    this.meshes ??= this.makeMeshes(solid.all);
    before?.dispose();
    this.ground.geometry.dispose();
    this.ground.geometry = new PlaneGeometry(6 * solid.radius, 6 * solid.radius).translate(0, 0, solid.bottom - 0.004 * solid.radius);
    u.uPicked.value = -1;
    this.ring = Math.min(this.ring, solid.packet.rings.length - 1);
    this.arrange();
  }

  // The body first: what it hides of the cut faces' backs is then not drawn at all.
  makeMeshes(geometry) {
    const add = (scene, material, renderOrder) => {
      const mesh = new Mesh(geometry, this.materials[material]);
      mesh.frustumCulled = false;
      mesh.matrixAutoUpdate = false;
      mesh.renderOrder = renderOrder;
      scene.add(mesh);
      return mesh;
    };
    return {
      body: add(this.scene, 'whole', 0), cap: add(this.scene, 'cap', 1),
      pickBody: add(this.pickScene, 'pick', 0), pickCap: add(this.pickScene, 'pickCap', 1),
    };
  }

  /** Which way the piece stands, and how far. */
  stand(view, measure) {
    if (view === 'CutOpen' && this.view !== view) this.cutTurn = this.eye.turn;
    this.view = view;
    this.measure = measure;
    this.arrange();
  }

  /** From view and measure to uniforms, visible meshes and what is in sight. */
  arrange() {
    const { solid, uniforms: u, view } = this;
    if (!solid) return;
    const cut = view === 'CutOpen', rings = solid.packet.rings, height = solid.top - solid.bottom;
    const apart = view === 'PulledApart' && rings.length > 1 ? (this.measure * (1.6 * solid.radius + height)) / (rings.length - 1) : 0;
    u.uApart.value = apart;
    u.uOnly.value = view === 'OneRing' ? this.ring : -1;
    const across = (2 * this.measure - 1) * solid.radius;
    u.uCut.value.set(Math.cos(this.cutTurn), Math.sin(this.cutTurn), 0, -across);
    u.uSpan.value.set(solid.bottom, solid.top, solid.radius, SHADOWED[view]);
    const seen = view === 'Whole' || cut ? solid.skin : solid.all;
    [this.meshes.body.geometry, this.meshes.pickBody.geometry, this.meshes.cap.geometry, this.meshes.pickCap.geometry] = [seen, seen, solid.all, solid.all];
    this.meshes.cap.visible = this.meshes.pickCap.visible = cut;
    this.meshes.body.material = view === 'GlueJoints' ? this.materials.glass : cut ? this.materials.kept : this.materials.whole;
    this.meshes.pickBody.material = cut ? this.materials.pickKept : this.materials.pick;
    this.ground.visible = view === 'Whole' || view === 'PulledApart';
    const [low, high] = view === 'OneRing' ? [rings[this.ring].bottom, rings[this.ring].top] : [solid.bottom, solid.top + apart * (rings.length - 1)];
    this.eye.fit((low + high) / 2, solid.radius, high - low);
    this.invalidate();
  }

  resize() {
    const box = this.canvas.parentElement.getBoundingClientRect();
    if (box.width < 1 || box.height < 1) return;
    this.size = new Vector2(Math.round(box.width), Math.round(box.height));
    this.sharpen();
    this.eye.resize(this.size.x, this.size.y);
    this.invalidate();
  }

  // A stage out of sight has no size yet; it is sharpened once it has one.
  sharpen() {
    if (!this.size) return;
    this.renderer.setPixelRatio(Math.min(devicePixelRatio, SHARPEST) * this.scale);
    this.renderer.setSize(this.size.x, this.size.y, false);
  }

  invalidate() {
    if (this.asked || this.lost) return;
    this.asked = requestAnimationFrame((now) => this.frame(now));
  }

  frame(now) {
    this.asked = 0;
    const moving = this.eye.step(now), since = now - this.last;
    this.last = now;
    // A slow machine turns a coarser picture, and draws it sharp once it rests.
    if (since < 1000 && (since > SLOW || this.slow) && this.scale > 0.5 && this.solid) this.rescale(0.5);
    clearTimeout(this.resting);
    if (this.scale < 1) this.resting = setTimeout(() => { this.rescale(1); this.last = 0; this.invalidate(); }, REST);
    this.draw();
    if (moving) this.invalidate();
  }

  rescale(scale) {
    this.scale = scale;
    this.sharpen();
  }

  draw() {
    if (!this.solid || !this.size) return;
    this.eye.prepare();
    this.light();
    this.renderer.info.reset();
    this.renderer.render(this.scene, this.eye.camera);
    const { calls, triangles } = this.renderer.info.render;
    // For tests and benchmarks.
    Object.assign(this.canvas.dataset, { calls, triangles, segments: this.solid.packet.parts });
  }

  // The window stands at the left of whoever looks, and above.
  light() {
    const { uniforms: u, eye } = this, side = eye.turn - 0.95;
    u.uKey.value.set(Math.cos(side) * KEY.out, Math.sin(side) * KEY.out, KEY.up);
    const height = this.renderer.domElement.height, half = (eye.camera.fov * Math.PI) / 360;
    u.uPixel.value = (2 * Math.tan(half)) / height;
    const page = (2 * Math.tan(half) * eye.distance) / this.size.y;
    u.uHatch.value = 4.2 * 2 ** Math.round(Math.log2(page));
  }

  /** The part under a point of the page, or −1. */
  pick(x, y) {
    if (!this.solid) return -1;
    const box = this.canvas.getBoundingClientRect(), { camera } = this.eye;
    this.eye.prepare();
    camera.setViewOffset(box.width, box.height, x - box.left, y - box.top, 1, 1);
    this.renderer.setRenderTarget(this.target);
    this.renderer.clear();
    this.renderer.render(this.pickScene, camera);
    const rgba = new Uint8Array(4);
    this.renderer.readRenderTargetPixels(this.target, 0, 0, 1, 1, rgba);
    this.renderer.setRenderTarget(null);
    camera.clearViewOffset();
    return rgba[3] === 0 ? -1 : rgba[0] + 256 * rgba[1] + 65536 * rgba[2] - 1;
  }

  dispose() {
    cancelAnimationFrame(this.asked);
    clearTimeout(this.resting);
    this.observer.disconnect();
    this.eye.dispose();
    this.solid?.dispose();
    for (const material of Object.values(this.materials)) material.dispose();
    this.uniforms.uNoise.value.dispose();
    this.target.dispose();
    this.renderer.dispose();
  }
}
