import { BufferAttribute, BufferGeometry, DataTexture, FloatType, RGBAFormat } from 'three';
import { PART_NUMBERS, ROWS } from './packet.js';
import { shadowTexture, wallTexture } from './shadows.js';

// Rows of parts stand side by side in a texture of this width; the shader knows it too.
const WIDTH = 2048;

/** One version of the piece on the graphics card, and where each segment lies in it. */
export class Solid {
  constructor(packet) {
    this.packet = packet;
    this.all = makeGeometry(packet);
    // Without the glue faces that nothing of is seen as long as the piece is whole: they come last.
    this.skin = new BufferGeometry();
    for (const [name, attribute] of Object.entries(this.all.attributes)) this.skin.setAttribute(name, attribute);
    this.skin.setIndex(this.all.index);
    this.skin.setDrawRange(0, packet.skin);
    this.parts = rowTexture(packet.rows, packet.parts);
    this.woods = new DataTexture(Float32Array.from(packet.woods.flatMap((w) => w.rows)), ROWS, packet.woods.length, RGBAFormat, FloatType);
    this.woods.needsUpdate = true;
    this.radius = Math.max(...packet.wall.outer);
    this.wall = wallTexture(packet.wall);
    this.shadows = shadowTexture(packet.wall, this.radius);
    this.bottom = packet.wall.bottom;
    this.top = packet.wall.top;
    this.byPlace = new Map();
    for (let part = 0; part < packet.parts; part++) this.byPlace.set(`${this.ringOf(part)} ${this.segmentOf(part)}`, part);
  }

  ringOf(part) {
    return this.packet.table[PART_NUMBERS * part];
  }

  segmentOf(part) {
    return this.packet.table[PART_NUMBERS * part + 1];
  }

  partAt(ring, segment) {
    return this.byPlace.get(`${ring} ${segment}`) ?? -1;
  }

  /** Middle of a segment's corners, mm. */
  middleOf(part) {
    const [first, count] = this.packet.table.subarray(PART_NUMBERS * part + 2, PART_NUMBERS * part + 4);
    const sum = [0, 0, 0];
    for (let i = 3 * first; i < 3 * (first + count); i++) sum[i % 3] += this.packet.positions[i] / count;
    return sum;
  }

  dispose() {
    for (const held of [this.all, this.skin, this.parts, this.woods, this.wall, this.shadows]) held.dispose();
  }
}

function makeGeometry(packet) {
  const partOf = new Uint32Array(packet.vertices);
  for (let part = 0; part < packet.parts; part++) {
    const first = packet.table[PART_NUMBERS * part + 2];
    partOf.fill(part, first, first + packet.table[PART_NUMBERS * part + 3]);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(packet.positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(packet.normals, 2, true));
  geometry.setAttribute('part', new BufferAttribute(partOf, 1));
  geometry.setIndex(new BufferAttribute(packet.triangles, 1));
  return geometry;
}

function rowTexture(rows, parts) {
  const height = Math.max(1, Math.ceil((ROWS * parts) / WIDTH));
  const padded = new Float32Array(4 * WIDTH * height);
  padded.set(rows);
  const texture = new DataTexture(padded, WIDTH, height, RGBAFormat, FloatType);
  texture.needsUpdate = true;
  return texture;
}
