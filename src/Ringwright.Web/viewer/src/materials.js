import { BackSide, DoubleSide, FrontSide, GLSL3, RawShaderMaterial, Vector3, Vector4 } from 'three';
import grain from './glsl/grain.glsl';
import groundFragment from './glsl/ground.frag.glsl';
import groundVertex from './glsl/ground.vert.glsl';
import light from './glsl/light.glsl';
import lines from './glsl/lines.glsl';
import pickFragment from './glsl/pick.frag.glsl';
import solidFragment from './glsl/solid.frag.glsl';
import solidVertex from './glsl/solid.vert.glsl';
import { makeNoise } from './noise.js';

/** Values that all shaders share; set once for each frame or change. */
export function makeUniforms() {
  const value = (v) => ({ value: v });
  return {
    uParts: value(null), uWoods: value(null), uWall: value(null), uShadows: value(null), uNoise: value(makeNoise()),
    uSpan: value(new Vector4(0, 1, 1, 1)), uKey: value(new Vector3(0, 0, 1)), uSky: value(new Vector3()), uTable: value(new Vector3()),
    uCut: value(new Vector4(1, 0, 0, 0)), uApart: value(0), uOnly: value(-1), uPicked: value(-1), uPixel: value(0.001), uHatch: value(1),
    uAge: value(0), uFinish: value(1), uLines: value(0), uAccent: value(new Vector3()), uInk: value(new Vector3()), uGround: value(1),
  };
}

/** The materials, all on the same uniforms. */
export function makeMaterials(uniforms) {
  const solid = (defines, more) => new RawShaderMaterial({
    glslVersion: GLSL3, uniforms, defines, side: FrontSide,
    vertexShader: solidVertex, fragmentShader: solidFragment.replace('//INCLUDE', [grain, light, lines].join('\n')), ...more,
  });
  const pick = (defines, more) => new RawShaderMaterial({ glslVersion: GLSL3, uniforms, defines, vertexShader: solidVertex, fragmentShader: pickFragment, ...more });
  // Where two segments touch, the back of one and the front of the next lie in the same place: the back must win.
  const nearer = { side: BackSide, polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -4 };
  return {
    whole: solid({}),
    kept: solid({ CUT: '' }),
    cap: solid({ CUT: '', CAP: '' }, nearer),
    glass: solid({ GLASS: '' }, { side: DoubleSide, transparent: true, depthWrite: false, depthTest: false }),
    pick: pick({}),
    pickKept: pick({ CUT: '' }),
    pickCap: pick({ CUT: '' }, nearer),
    ground: new RawShaderMaterial({
      glslVersion: GLSL3, uniforms, transparent: true, depthWrite: false, vertexShader: groundVertex, fragmentShader: groundFragment.replace('//INCLUDE', light),
    }),
  };
}
