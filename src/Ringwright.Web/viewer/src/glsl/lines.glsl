// Lines on the wood: glue joints, and the hatches that tell woods apart as on paper.
uniform float uHatch; // mm of the piece for a millimetre of the paper's hatch

// 1 within so many pixels of a plane, 0 on a face that lies in it.
float nearPlane(float away, float pixels) {
  float step_ = fwidth(away);
  return step_ < 1e-5 ? 0.0 : 1.0 - smoothstep(pixels - 0.5, pixels + 0.5, abs(away) / step_);
}

float joint(vec4 planes, vec2 strip, float pixels) {
  float near = max(max(nearPlane(planes.x, pixels), nearPlane(planes.y, pixels)), max(nearPlane(planes.z, pixels), nearPlane(planes.w, pixels)));
  return max(near, max(nearPlane(strip.x, pixels), nearPlane(strip.y, pixels)));
}

float family(vec4 lines, vec2 at, float px) {
  float c = cos(lines.x), s = sin(lines.x);
  vec2 turned = vec2(c * at.x - s * at.y, s * at.x + c * at.y) / uHatch;
  float row_ = floor(turned.y / lines.y + 0.5);
  float across = abs(turned.y - row_ * lines.y), soft = 0.7 * px / uHatch;
  float ink = 1.0 - smoothstep(0.17 - soft, 0.17 + soft, across);
  if (lines.z > 0.0) {
    float period = lines.z + lines.w, along = mod(turned.x + mod(row_, 2.0) * 0.5 * period, period);
    ink *= smoothstep(-soft, soft, along) * (1.0 - smoothstep(-soft, soft, along - max(lines.z, 0.55)));
  }
  return ink;
}

float hatch(int wood, vec3 place, vec3 n, float px) {
  float away = max(length(place.xy), 1e-3), around = atan(place.y, place.x) * uSpan.z, out_ = abs(dot(n.xy, place.xy)) / away;
  vec2 at = abs(n.z) > 0.75 ? vec2(around, away) : out_ > 0.5 ? vec2(around, place.z) : vec2(away, place.z);
  int count = int(texelFetch(uWoods, ivec2(4, wood), 0).y + 0.5);
  float ink = 0.0;
  if (count > 0) ink = family(texelFetch(uWoods, ivec2(5, wood), 0), at, px);
  if (count > 1) ink = max(ink, family(texelFetch(uWoods, ivec2(6, wood), 0), at, px));
  return ink;
}
