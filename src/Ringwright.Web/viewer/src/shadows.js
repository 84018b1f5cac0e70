import { ClampToEdgeWrapping, DataTexture, DataUtils, HalfFloatType, LinearFilter, RepeatWrapping, RGBAFormat, RGFormat, UnsignedByteType } from 'three';

const AROUND = 128, STEPS = 28;

/** How far the window stands above the table, as the sine and cosine of an angle; the shader's light comes from there too. */
export const KEY = { up: 0.757, out: 0.653 };

/** On the table shadows are worked out as far as so many radii. */
export const TABLE = 3;

/**
 * Radii of the wall over the height, and for each height the edge that hides most of the sky from the axis: outer, inner, the edge's
 * radius and its height above the bottom, mm.
 */
export function wallTexture(wall) {
  const { outer, inner, bottom, top } = wall, count = outer.length, step = (top - bottom) / count;
  const values = new Uint16Array(4 * count);
  for (let i = 0; i < count; i++) {
    let edge = count - 1;
    for (let j = i + 1; j < count; j++) if ((j - i) * inner[edge] > (edge - i) * inner[j]) edge = j;
    [outer[i], inner[i], inner[edge], (edge + 1) * step].forEach((value, k) => { values[4 * i + k] = DataUtils.toHalfFloat(value); });
  }
  const texture = new DataTexture(values, count, 1, RGBAFormat, HalfFloatType);
  texture.minFilter = texture.magFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}

/**
 * Light from the window on the outside (first value; over the height) and on the table (second; over the distance from the axis), all
 * around from where the window stands. The piece is a body of revolution and the window moves with whoever looks, so this is
 * worked out once and not for every point of every picture.
 */
export function shadowTexture(wall, radius) {
  const rows = 128, values = new Uint8Array(2 * AROUND * rows), height = wall.top - wall.bottom;
  const outerAt = (z) => wall.outer[Math.min(wall.outer.length - 1, Math.max(0, Math.floor((z / height) * wall.outer.length)))];
  const steps = Float64Array.from({ length: STEPS }, (_, i) => ((i + 1) / STEPS) ** 1.3);
  // A million steps for each edit of the shape: roots and powers are taken the quick way.
  const lit = (x, y, z, soft) => {
    let light = 1;
    const far = Math.min((height - z) / KEY.up, 4 * radius);
    for (const step of steps) {
      const along = far * step, width = soft * radius + 0.2 * along, away = x + along * KEY.out;
      const deep = outerAt(z + along * KEY.up) - Math.sqrt(away * away + y * y) - 0.008 * radius;
      const t = Math.min(1, Math.max(0, (deep + 0.3 * width) / (1.3 * width)));
      light = Math.min(light, 1 - t * t * (3 - 2 * t));
    }
    return 255 * light;
  };
  for (let row = 0; row < rows; row++) {
    const z = ((row + 0.5) / rows) * height, r = outerAt(z) + 0.01 * radius, table = ((row + 0.5) / rows) * TABLE * radius;
    for (let i = 0; i < AROUND; i++) {
      const turn = (2 * Math.PI * (i + 0.5)) / AROUND, c = Math.cos(turn), s = Math.sin(turn), at = 2 * (row * AROUND + i);
      values[at] = lit(r * c, r * s, z, 0.015);
      values[at + 1] = lit(table * c, table * s, 0, 0.05);
    }
  }
  const texture = new DataTexture(values, AROUND, rows, RGFormat, UnsignedByteType);
  texture.minFilter = texture.magFilter = LinearFilter;
  texture.wrapS = RepeatWrapping;
  texture.wrapT = ClampToEdgeWrapping;
  texture.unpackAlignment = 1;
  texture.needsUpdate = true;
  return texture;
}
