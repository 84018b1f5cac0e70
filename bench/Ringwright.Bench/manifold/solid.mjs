// The turned vase of SolidBench.cs made with manifold-3d. Reads the name of a way per line, makes the vase that way, and answers
// with one line: milliseconds, volume in mm3, triangles. Volume and triangles of every segment are asked for, because
// the library works lazily; its buffers are not copied out, which is in its favour.
import { createInterface } from 'node:readline';
import Module from 'manifold-3d';

const rings = 40, count = 36, facets = 8, slices = 4, height = 6, wall = 6;
const radius = z => 60 + 25 * Math.sin(Math.PI * z / 240);
const degrees = 360 / count;

const wasm = await Module();
wasm.setup();
const { Manifold } = wasm;

function section(ring) {
  const levels = Array.from({ length: slices + 1 }, (_, i) => height * ring + height / slices * i);
  const outer = levels.map(z => [radius(z), z]);
  const inner = levels.map(z => [radius(z) - wall, z]).reverse();
  return [[...outer, ...inner]];
}

// A wedge of a disc from the axis past the wall, over one segment; its corner lies outside, so two points are enough.
function prism(ring, segment) {
  const reach = 120 / Math.cos(Math.PI / count);
  const at = angle => [reach * Math.cos(angle), reach * Math.sin(angle)];
  const from = 2 * Math.PI * segment / count;
  return Manifold.extrude([[[0, 0], at(from), at(from + 2 * Math.PI / count)]], height + 2).translate(0, 0, height * ring - 1);
}

const revolved = ring => Manifold.revolve(section(ring), count * facets);
const segments = Array.from({ length: count }, (_, i) => i);

const ways = {
  cutEach: ring => {
    const solid = revolved(ring);
    return segments.map(segment => solid.intersect(prism(ring, segment)));
  },
  cutOnce: ring => {
    const one = revolved(ring).intersect(prism(ring, 0));
    return segments.map(segment => one.rotate(0, 0, degrees * segment));
  },
  revolveEach: ring => {
    const outline = section(ring);
    return segments.map(segment => Manifold.revolve(outline, facets, degrees).rotate(0, 0, degrees * segment));
  },
  revolveOnce: ring => {
    const one = Manifold.revolve(section(ring), facets, degrees);
    return segments.map(segment => one.rotate(0, 0, degrees * segment));
  },
};

function run(way) {
  const start = performance.now();
  let volume = 0, triangles = 0;
  for (let ring = 0; ring < rings; ring++) {
    for (const solid of ways[way](ring)) {
      volume += solid.volume();
      triangles += solid.numTri();
      solid.delete();
    }
  }
  return `${performance.now() - start} ${volume} ${triangles}`;
}

for await (const line of createInterface({ input: process.stdin })) console.log(run(line));
