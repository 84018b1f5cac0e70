// Reads the bytes that ViewerPacket.cs writes; its comment says what is where.
export const PART_NUMBERS = 4;
export const ROWS = 8;

/** @param {ArrayBuffer} buffer */
export function readPacket(buffer) {
  const text = (from, length) => new TextDecoder().decode(new Uint8Array(buffer, from, length));
  if (text(0, 4) !== 'RWV1') throw new Error('The picture’s data is of another version; load the page again.');
  const length = new DataView(buffer).getInt32(4, true);
  const head = JSON.parse(text(8, length));
  let at = 8 + length;
  const take = (Kind, count) => {
    const taken = new Kind(buffer, at, count);
    at += taken.byteLength;
    return taken;
  };
  return {
    ...head,
    positions: take(Float32Array, 3 * head.vertices),
    normals: take(Int16Array, 2 * head.vertices),
    triangles: take(Uint32Array, head.indices),
    table: take(Int32Array, PART_NUMBERS * head.parts),
    rows: take(Float32Array, 4 * ROWS * head.parts),
  };
}

/** Asks for one version of the piece. A version that an edit has overtaken, or of an earlier run, gives null; a refusal throws its sentence. */
export async function fetchPacket(version, detail, signal) {
  const answer = await fetch(`/viewer/${version}/${detail}.bin`, { signal });
  if (answer.status === 204 || answer.status === 404) return null;
  if (!answer.ok) throw new Error(await answer.text());
  return readPacket(await answer.arrayBuffer());
}
