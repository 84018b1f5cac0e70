// The number of the segment as a colour.
precision highp float;
precision highp int;

uniform vec3 cameraPosition;
uniform vec4 uCut;

in vec3 vPlace;
flat in ivec3 vKind;

out vec4 colour;

void main() {
#ifdef CUT
  if (dot(vPlace, uCut.xyz) > uCut.w) discard;
#endif
  int n = vKind.x + 1;
  colour = vec4(float(n & 255), float((n >> 8) & 255), float((n >> 16) & 255), 255.0) / 255.0;
}
