import { Data3DTexture, LinearFilter, RepeatWrapping, RGBAFormat, UnsignedByteType } from 'three';

const SIDE = 32;

/** Four independent values at each point of a lattice that repeats: the shader's chance. Always the same. */
export function makeNoise() {
  const values = new Uint8Array(4 * SIDE ** 3);
  let state = 20251;
  for (let i = 0; i < values.length; i++) {
    // Numerical Recipes' linear congruence; its upper bits are good enough to look at.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    values[i] = state >>> 24;
  }
  const texture = new Data3DTexture(values, SIDE, SIDE, SIDE);
  texture.format = RGBAFormat;
  texture.type = UnsignedByteType;
  texture.minFilter = texture.magFilter = LinearFilter;
  texture.wrapS = texture.wrapT = texture.wrapR = RepeatWrapping;
  texture.needsUpdate = true;
  return texture;
}
