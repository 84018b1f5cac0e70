// The surface of the piece. With CUT only what lies behind a plane is kept; with CAP it is the cut face itself: a segment is a
// closed solid of its own, so the first thing a ray meets behind the plane is a back face exactly where the plane is in wood, and
// it belongs to the segment that was cut. The face's points are then found on the plane.
precision highp float;
precision highp int;
precision highp sampler2D;

uniform vec3 cameraPosition;
uniform sampler2D uParts;
uniform vec4 uCut;      // the plane: its normal towards the part that is taken away, and its distance
uniform float uPixel;   // size of a pixel at a distance of 1
uniform int uPicked;
uniform vec3 uAccent;
uniform vec3 uInk;
uniform int uLines;     // woods told apart by lines

in vec3 vPlace;
in vec3 vNormal;
in vec3 vTree;
in vec4 vJoint;
in vec2 vStrip;
flat in vec3 vAlong;
flat in vec3 vAcross;
flat in vec3 vThrough;
flat in ivec3 vKind;

out vec4 colour;

//INCLUDE

vec4 row(int which) {
  int at = vKind.x * 8 + which;
  return texelFetch(uParts, ivec2(at & 2047, at >> 11), 0);
}

void main() {
  vec3 place = vPlace, n = normalize(vNormal), tree = vTree;
  vec4 planes = vJoint;
  vec2 strip = vStrip;
  bool cut = false;
#ifdef CUT
  if (dot(place, uCut.xyz) > uCut.w) discard;
#endif
#ifdef CAP
  vec3 ray = place - cameraPosition;
  float reach = (uCut.w - dot(cameraPosition, uCut.xyz)) / dot(ray, uCut.xyz);
  if (!(reach > 0.0) || reach > 1.0) discard;
  place = cameraPosition + reach * ray;
  vec3 moved = place - vPlace;
  tree += vec3(dot(vAlong, moved), dot(vAcross, moved), dot(vThrough, moved));
  planes += vec4(dot(row(3).xyz, moved), dot(row(4).xyz, moved), moved.z, -moved.z);
  strip += vec2(dot(row(6).xyz, moved), dot(row(7).xyz, moved));
  n = uCut.xyz;
  cut = true;
#endif
  vec3 view = cameraPosition - place;
  float distance_ = length(view);
  view /= distance_;
  if (dot(n, view) < 0.0 && !cut) n = -n;
  float px = uPixel * distance_;

  Wood wood = woodOf(vKind.z);
#ifdef GLASS
  float edge = joint(planes, strip, 1.6);
  float picked_ = vKind.x == uPicked ? 1.0 : 0.0;
  float rim = pow(1.0 - abs(dot(n, view)), 3.0);
  float inner = min(min(abs(planes.x), abs(planes.y)), min(abs(planes.z), abs(planes.w))) < 0.01 ? 1.0 : 0.0;
  vec3 glass = mix(encode(wood.colour), uInk, 0.85 * edge);
  glass = mix(glass, uAccent, picked_ * (0.4 + 0.6 * edge));
  colour = vec4(glass, clamp(mix(0.05 + 0.16 * rim, 0.04, inner) + (0.9 - 0.35 * inner) * edge + 0.22 * picked_, 0.0, 1.0));
#else
  vec3 treeNormal = vec3(dot(vAlong, n), dot(vAcross, n), dot(vThrough, n));
  float end = smoothstep(0.10, 0.95, abs(treeNormal.x));
  vec3 fibre = vAlong, surface = wood.colour;
  if (uLines == 0) {
    Grain grain = grainAt(wood, tree, px);
    surface = grain.colour * mix(1.0, 0.62, end);
    float r = max(length(tree.yz), 1e-3);
    vec3 outward = (tree.y * vAcross + tree.z * vThrough) / r, round_ = cross(vAlong, outward);
    fibre = normalize(vAlong + grain.lean.x * round_ + grain.lean.y * outward);
  } else {
    float light = dot(surface, vec3(0.2126, 0.7152, 0.0722));
    surface = mix(surface, light < 0.18 ? vec3(0.98, 0.90, 0.76) : vec3(0.02, 0.012, 0.008), 0.85 * hatch(vKind.z, place, n, px));
  }
  float line = joint(planes, strip, uLines == 1 ? 0.9 : 0.45);
  surface *= mix(1.0, uLines == 1 ? 0.25 : 0.62, line);
  vec3 light = shade(surface, n, fibre, place, view, cut);
  colour = vec4(encode(light), 1.0);
  if (vKind.x == uPicked) {
    // Light within dark, so that it is seen on every wood.
    colour.rgb = mix(colour.rgb, vec3(0.07, 0.05, 0.03), joint(planes, strip, 4.6));
    colour.rgb = mix(colour.rgb, uAccent, joint(planes, strip, 3.0));
  }
#endif
}
