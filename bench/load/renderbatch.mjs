// Reads of a Blazor render batch where what is typed into fields goes. Layout: ASP.NET Core's RenderBatchWriter.

const ELEMENT = 1, ATTRIBUTE = 3, FRAME = 20; // kinds of frames; bytes of one
const PREPEND = 1, SET_ATTRIBUTE = 3, EDIT = 16; // kinds of edits; bytes of one

/** Notes in `fields`, by id, the component and the handler of each field that a batch draws or draws anew: `{ component, handler }`. */
export function noteHandlers(bytes, fields) {
  const batch = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), end = batch.length;
  const int = at => batch.readInt32LE(at);
  const [components, frames, strings] = [20, 16, 4].map(back => int(end - back));
  const text = index => {
    if (index < 0) return null;
    let at = int(strings + 4 * index), length = 0;
    for (let shift = 0, byte = 0x80; byte & 0x80; shift += 7) {
      byte = batch[at++];
      length |= (byte & 0x7f) << shift;
    }
    return batch.toString('utf8', at, at + length);
  };
  const frame = index => frames + 4 + FRAME * index;
  const handler = at => Number(batch.readBigUInt64LE(at + 12));
  for (let c = 0; c < int(components); c++) {
    const diff = int(components + 4 + 4 * c), component = int(diff);
    for (let e = 0; e < int(diff + 4); e++) {
      const edit = diff + 8 + EDIT * e, kind = int(edit), first = int(edit + 8);
      if (kind === PREPEND && int(frame(first)) === ELEMENT) {
        for (let i = first, id = null; i < first + int(frame(first) + 4); i++) {
          const at = frame(i);
          if (int(at) === ELEMENT) id = null;
          if (int(at) !== ATTRIBUTE) continue;
          const name = text(int(at + 4));
          if (name === 'id') id = text(int(at + 8));
          if (name === 'oninput' && id !== null) fields.set(id, { component, handler: handler(at) });
        }
      } else if (kind === SET_ATTRIBUTE && text(int(frame(first) + 4)) === 'oninput') {
        // The field is not named here, but a component has only one.
        for (const field of fields.values()) if (field.component === component) field.handler = handler(frame(first));
      }
    }
  }
}
