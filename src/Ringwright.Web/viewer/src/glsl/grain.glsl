// Solid grain: what the wood looks like at a point of its tree. q is in tree coordinates, mm: x along the pith, growth rings are
// circles about it. Details smaller than a pixel (px, mm) fade into their mean.
struct Wood {
  vec3 colour;
  float ringWidth, contrast, pores, poreSize, poreShare, fibre, rayHeight, rays, curl, ribbon, stripe;
};

struct Grain {
  vec3 colour;
  vec2 lean;   // of the fibres: along the rings and across them
  float fleck; // of a ray, 0 to 1
};

uniform highp sampler3D uNoise;
uniform sampler2D uWoods;
uniform float uAge;

Wood woodOf(int which) {
  vec4 a = texelFetch(uWoods, ivec2(0, which), 0), b = texelFetch(uWoods, ivec2(1, which), 0), c = texelFetch(uWoods, ivec2(2, which), 0);
  vec4 d = texelFetch(uWoods, ivec2(3, which), 0), e = texelFetch(uWoods, ivec2(4, which), 0);
  return Wood(mix(a.rgb, b.rgb, uAge), a.w, b.w, c.x, c.y, c.z, c.w, d.x, d.y, d.z, d.w, e.x);
}

// Four smooth values around 0, from -0.5 to 0.5.
vec4 noise(vec3 p) {
  vec3 cell = floor(p), f = p - cell;
  return texture(uNoise, (cell + f * f * (3.0 - 2.0 * f) + 0.5) / 32.0) - 0.5;
}

// Four values from 0 to 1 for a cell (PCG, Jarzynski and Olano 2020).
vec4 chance(ivec3 cell) {
  uvec4 v = uvec4(uvec3(cell), uint(cell.x) * 747796405u ^ uint(cell.y)) * 1664525u + 1013904223u;
  v.x += v.y * v.w;
  v.y += v.z * v.x;
  v.z += v.x * v.y;
  v.w += v.y * v.z;
  v ^= v >> 16u;
  v.x += v.y * v.w;
  v.y += v.z * v.x;
  v.z += v.x * v.y;
  v.w += v.y * v.z;
  return vec4(v >> 8u) / 16777216.0;
}

// One layer of pores: tubes along the trunk that wander a little, so that a lengthwise cut shows them as short dashes.
float poreLayer(Wood w, vec2 across, float x, float spacing, float early, float f, float px, int layer) {
  vec2 at = across / spacing + float(layer) * 0.37;
  ivec2 cell = ivec2(floor(at));
  vec4 c = chance(ivec3(cell, layer));
  vec4 run = chance(ivec3(cell, int(floor(x / 22.0 + c.x * 9.0)) + 31 * layer));
  float here = w.pores > 1.5 ? mix(0.16, 1.0, early) : w.pores > 0.5 ? mix(1.0, 0.35, f) : 0.8;
  float size = w.poreSize * (0.5 + 0.4 * run.z) * (w.pores > 1.5 ? mix(0.3, 1.0, early) : w.pores > 0.5 ? mix(1.0, 0.6, f) : 0.85);
  float away = length(at - vec2(cell) - 0.5 - 0.45 * (run.xy - 0.5)) * spacing;
  float open = clamp((size * 0.6 - away) / max(px, 0.02) + 0.5, 0.0, 1.0) * min(1.0, 1.6 * size / max(px, 1e-4));
  return step(run.w, w.poreShare * here) * open;
}

Grain grainAt(Wood w, vec3 q, float px) {
  Grain g;
  float r = length(q.yz), angle = atan(q.z, q.y);
  vec4 broad = noise(q * vec3(1.0 / 95.0, 1.0 / 30.0, 1.0 / 30.0));
  vec4 near = noise(q * vec3(1.0 / 24.0, 1.0 / 7.0, 1.0 / 7.0) + 11.3);
  float scale = w.ringWidth / 2.8;

  // Growth rings, uneven in width and never quite round.
  float rr = r + scale * (6.0 * broad.x + 1.1 * near.x);
  float t = rr / w.ringWidth;
  vec4 bands = noise(vec3(t / 5.0, 3.7, q.x / 900.0));
  t += 1.7 * bands.x;
  float year = floor(t), f = t - year, blur = fwidth(t);
  float ageing = chance(ivec3(int(year), 7, 3)).x;
  float late = smoothstep(0.25, 0.90, f) * (1.0 - smoothstep(0.93, 1.0, f));
  late = mix(late, 0.36, smoothstep(0.30, 1.0, blur));
  float early = 1.0 - smoothstep(0.12, 0.36, f);
  early = mix(early, 0.24, smoothstep(0.30, 1.0, blur));

  // Streaks along the fibres, coarse and fine.
  vec4 streak = noise(q * vec3(1.0 / 40.0, 1.0 / 1.3, 1.0 / 1.3)) * (1.0 - smoothstep(0.6, 2.2, px));
  vec4 fine = noise(q * vec3(1.0 / 11.0, 1.0 / 0.32, 1.0 / 0.32)) * (1.0 - smoothstep(0.16, 0.55, px));

  float dark = w.contrast * (0.45 + 0.9 * ageing) * (late - 0.36)
    + w.fibre * (0.42 * streak.x + 0.34 * fine.x)
    + 0.16 * broad.z + 0.08 * near.y;

  // Dark stripes that follow the rings.
  float stripe = smoothstep(-0.02, 0.20, bands.y + 0.35 * bands.z) * (0.75 + 0.5 * late);
  dark += 1.5 * w.stripe * (stripe - 0.25);

  // Earlywood of ring-porous woods is a band of holes: from afar it looks darker.
  float spacing = max(2.1 * w.poreSize, 0.16);
  float far = smoothstep(0.7 * spacing, 1.8 * spacing, px);
  vec2 wander = q.yz + 1.6 * broad.yw + 0.55 * near.zw;
  float holes = 0.0;
  if (far < 1.0) {
    holes = poreLayer(w, wander, q.x, spacing, early, f, px, 0);
    holes = max(holes, poreLayer(w, wander.yx + 0.3, q.x + 8.0, spacing * 1.3, early, f, px, 1)) * (1.0 - far);
  }
  float mean = w.poreShare * min(1.0, 3.0 * w.poreSize) * (w.pores > 1.5 ? 0.75 * early : 0.30);
  dark += mix(0.30, 0.95, smoothstep(0.08, 0.24, w.poreSize)) * holes + mean * mix(0.25, 0.55, far);

  // Rays: thin sheets from the pith outward, seen as flecks where the surface runs along them.
  g.fleck = 0.0;
  float thick = 0.10 + 0.022 * w.rayHeight;
  float lost = smoothstep(1.2 * thick, 5.0 * thick, px);
  if (w.rays > 0.02 && lost < 1.0) {
    float wide = 1.1 + 0.16 * w.rayHeight, tall = 2.6 * w.rayHeight;
    float u = (angle * 90.0 + 9.0 * thick * near.w + 1.2 * broad.y) / wide;
    float column = floor(u);
    vec4 c = chance(ivec3(int(column), 5, 1));
    float v = q.x / tall + 7.0 * c.x, piece = floor(v);
    vec4 d = chance(ivec3(int(column), int(piece), 17 + int(floor(r / 14.0 + 3.0 * c.y))));
    float lens = 1.0 - pow(abs(2.0 * (v - piece) - 1.0), 2.0);
    float inside = thick * lens * (0.6 + 0.6 * d.y) - abs(u - column - 0.5 - 0.5 * (d.x - 0.5)) * wide;
    g.fleck = clamp(inside / max(px, 0.05) + 0.5, 0.0, 1.0) * step(d.z, 0.75) * (1.0 - lost);
  }
  // Large rays shine lighter than the wood around them, small ones stand darker in it.
  dark += g.fleck * w.rays * mix(0.28, -0.26, smoothstep(1.0, 4.0, w.rayHeight));

  // Fibres that wave or lean by turns throw the light back by turns.
  float wave = sin(6.2832 * (q.x / 8.5 + 1.3 * near.y + 2.2 * broad.w));
  float band = sin(6.2832 * (rr / 8.0 + 0.6 * broad.w) + 5.0 * near.x);
  g.lean = vec2(0.30 * w.ribbon * band, 0.26 * w.curl * wave * (0.5 + broad.y + 0.5));
  dark -= 0.05 * w.curl * wave + 0.07 * w.ribbon * band;

  // What is darker is also redder: blue light goes first.
  g.colour = w.colour * exp(-dark * vec3(0.82, 1.0, 1.18));
  return g;
}
