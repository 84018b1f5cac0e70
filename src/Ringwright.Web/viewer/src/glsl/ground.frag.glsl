// The shadow on the table, on nothing else: the paper shows through.
precision highp float;
precision highp sampler2D;

uniform float uGround; // how dark

in vec3 vPlace;
out vec4 colour;

//INCLUDE

void main() {
  vec2 foot = texture(uWall, vec2(0.002, 0.5)).rg;
  float away = length(vPlace.xy), beside = max(max(away - foot.x, foot.y - away), 0.0);
  float shadow = (1.0 - texture(uShadows, vec2(around(vPlace.xy), away / (3.0 * uSpan.z))).g) * 0.42 * uSpan.w;
  float contact = 0.55 * exp(-beside / (0.16 * uSpan.z)) + 0.25 * exp(-beside / (0.03 * uSpan.z));
  float fade = 1.0 - smoothstep(1.5 * uSpan.z, 2.9 * uSpan.z, away);
  colour = vec4(0.09, 0.06, 0.03, uGround * fade * (1.0 - (1.0 - shadow) * (1.0 - contact)));
}
