// Each vertex knows its segment; the segment's rows say where in its tree the vertex was and how far the glue planes are.
precision highp float;
precision highp int;
precision highp sampler2D;

uniform mat4 modelViewMatrix;
uniform mat4 projectionMatrix;
uniform sampler2D uParts;
uniform float uApart; // mm from ring to ring when pulled apart
uniform int uOnly;    // the one ring that is shown, -1 for all

in vec3 position;
in vec2 normal;
in uint part;

out vec3 vPlace;
out vec3 vNormal;
out vec3 vTree;
out vec4 vJoint; // distances from the glue planes: start, end, below, above
out vec2 vStrip; // and from those of the segment that a strip is part of
flat out vec3 vAlong;
flat out vec3 vAcross;
flat out vec3 vThrough;
flat out ivec3 vKind; // segment, ring, wood

vec4 row(int which) {
  int at = int(part) * 8 + which;
  return texelFetch(uParts, ivec2(at & 2047, at >> 11), 0);
}

// Octahedral: Meyer and others, On Floating-Point Normal Vectors, 2010.
vec3 unfold(vec2 folded) {
  vec3 n = vec3(folded, 1.0 - abs(folded.x) - abs(folded.y));
  float under = max(-n.z, 0.0);
  n.xy -= vec2(n.x >= 0.0 ? under : -under, n.y >= 0.0 ? under : -under);
  return normalize(n);
}

void main() {
  vec4 x = row(0), y = row(1), z = row(2), start = row(3), end = row(4), rest = row(5), inFrom = row(6), inTo = row(7);
  vec4 place = vec4(position, 1.0);
  vec4 back = vec4(position, -1.0);
  vTree = vec3(dot(x, place), dot(y, place), dot(z, place));
  vJoint = vec4(dot(start, back), dot(end, back), position.z - rest.x, rest.y - position.z);
  vStrip = vec2(dot(inFrom, back), dot(inTo, back));
  vAlong = x.xyz;
  vAcross = y.xyz;
  vThrough = z.xyz;
  vNormal = unfold(normal);
  vKind = ivec3(int(part), int(rest.w + 0.5), int(rest.z + 0.5));
  place.z += uApart * rest.w;
  vPlace = place.xyz;
  gl_Position = projectionMatrix * modelViewMatrix * place;
  // Rings that are not shown are folded away.
  if (uOnly >= 0 && vKind.y != uOnly) gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
}
