// Runs in the page beside the viewer: the same solid and the same shader, drawn as one mesh and as one mesh for each segment.
import { BufferAttribute, BufferGeometry, Mesh, MeshLambertMaterial, DirectionalLight, Scene } from 'three';

const PART_NUMBERS = 4;

/** Starts what is measured; gives a function that draws one frame one way and says how long it took. */
export function prepare(stage) {
  const { solid, renderer, materials } = stage, { camera } = stage.eye, gl = renderer.getContext(), pixel = new Uint8Array(4);
  stage.rescale(1);
  stage.eye.prepare();
  stage.light();
  const plain = new MeshLambertMaterial({ color: 0xb98257 });
  const scenes = {
    'the viewer as it draws: one mesh, hidden glue faces left out': scene([still(new Mesh(solid.skin, materials.whole))]),
    'one mesh, the viewer’s shader': scene([merged(solid, materials.whole, false)]),
    'separate meshes, the viewer’s shader': scene(separate(solid, materials.whole, false)),
    'one mesh, a plain material': scene([merged(solid, plain, true)]),
    'separate meshes, a plain material': scene(separate(solid, plain, true)),
  };
  return {
    ways: Object.keys(scenes),
    size: [gl.drawingBufferWidth, gl.drawingBufferHeight],
    segments: solid.packet.parts,
    draw(way) {
      renderer.info.reset();
      const start = performance.now();
      renderer.render(scenes[way], camera);
      const handedOver = performance.now();
      gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel); // waits until all is drawn
      return { handing: handedOver - start, frame: performance.now() - start, calls: renderer.info.render.calls, triangles: renderer.info.render.triangles };
    },
    pick() {
      const start = performance.now(), box = renderer.domElement.getBoundingClientRect();
      const part = stage.pick(box.left + box.width / 2, box.top + box.height / 2);
      return { part, ms: performance.now() - start };
    },
  };
}

function scene(meshes) {
  const made = new Scene();
  made.add(new DirectionalLight(0xffffff, 3), ...meshes);
  return made;
}

function still(mesh) {
  mesh.matrixAutoUpdate = false;
  mesh.frustumCulled = false;
  return mesh;
}

// A plain material needs normals as three numbers.
function unfolded(normals, first, count) {
  const out = new Float32Array(3 * count);
  for (let i = 0; i < count; i++) {
    let x = normals[2 * (first + i)] / 32767, y = normals[2 * (first + i) + 1] / 32767;
    const z = 1 - Math.abs(x) - Math.abs(y);
    if (z < 0) [x, y] = [(1 - Math.abs(y)) * Math.sign(x), (1 - Math.abs(x)) * Math.sign(y)];
    const length = Math.hypot(x, y, z);
    out.set([x / length, y / length, z / length], 3 * i);
  }
  return out;
}

function geometry(solid, first, count, triangles, plain) {
  const { positions, normals } = solid.packet, made = new BufferGeometry();
  made.setAttribute('position', new BufferAttribute(positions.slice(3 * first, 3 * (first + count)), 3));
  if (plain) made.setAttribute('normal', new BufferAttribute(unfolded(normals, first, count), 3));
  else {
    made.setAttribute('normal', new BufferAttribute(normals.slice(2 * first, 2 * (first + count)), 2, true));
    made.setAttribute('part', new BufferAttribute(solid.all.getAttribute('part').array.slice(first, first + count), 1));
  }
  made.setIndex(new BufferAttribute(triangles, 1));
  return made;
}

function merged(solid, material, plain) {
  const made = plain ? geometry(solid, 0, solid.packet.vertices, solid.packet.triangles, true) : solid.all;
  return still(new Mesh(made, material));
}

// The same triangles, each segment's in a mesh of its own.
function separate(solid, material, plain) {
  const { table, triangles, parts } = solid.packet, partOf = solid.all.getAttribute('part').array;
  const own = Array.from({ length: parts }, () => []);
  for (let i = 0; i < triangles.length; i += 3) {
    const part = partOf[triangles[i]], first = table[PART_NUMBERS * part + 2];
    own[part].push(triangles[i] - first, triangles[i + 1] - first, triangles[i + 2] - first);
  }
  return own.map((indices, part) => {
    const [first, count] = table.subarray(PART_NUMBERS * part + 2, PART_NUMBERS * part + 4);
    return still(new Mesh(geometry(solid, first, count, Uint16Array.from(indices), plain), material));
  });
}
