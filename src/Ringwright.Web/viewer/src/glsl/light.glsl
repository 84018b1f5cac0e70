// Light of a quiet room: a large window, the sky's and the table's shine, and the shadow that a turned shape throws on itself.
uniform sampler2D uWall;    // over the height: outer and inner radius, radius and height of the edge that hides most of the sky
uniform sampler2D uShadows; // around from the window: light on the outside over the height, on the table over the distance
uniform vec4 uSpan;         // bottom, top, greatest radius, how much shadow
uniform vec3 uKey;          // towards the window
uniform vec3 uSky;
uniform vec3 uTable;
uniform int uFinish;        // 0 raw, 1 oiled, 2 gloss

float around(vec2 at) {
  return (atan(at.y, at.x) - atan(uKey.y, uKey.x)) / 6.2831853;
}

float upAt(float z) {
  return clamp((z - uSpan.x) / (uSpan.y - uSpan.x), 0.002, 0.998);
}

// How much of the window is seen from inside past that edge.
float litInside(vec3 p, vec4 wall) {
  vec3 out_ = p + uKey * (max(uSpan.x + wall.w - p.z, 0.0) / uKey.z);
  float soft = 0.02 * uSpan.z + 0.10 * length(out_ - p);
  return 1.0 - smoothstep(-soft, 0.6 * soft, length(out_.xy) - wall.z);
}

// Light thrown back by wood: diffuse, along its fibres, and from what lies on it.
vec3 shade(vec3 colour, vec3 n, vec3 fibre, vec3 place, vec3 view, bool cut) {
  float away = length(place.xy);
  vec4 wall = texture(uWall, vec2(upAt(place.z + 0.012 * uSpan.z * n.z), 0.5));
  bool inside = !cut && wall.y > 0.0 && away < 0.5 * (wall.x + wall.y) && place.z < uSpan.y - 0.003 * uSpan.z;
  float sun = 1.0;
  if (uSpan.w > 0.0) sun = inside ? litInside(place, wall) : n.z > 0.9 ? 1.0 : texture(uShadows, vec2(around(place.xy), upAt(place.z))).r;
  float facing = dot(n, uKey);
  float key = smoothstep(-0.12, 1.0, facing) * sun;
  // Share of the sky that is seen past the edge: a disc from a point on its axis.
  float depth = max(uSpan.x + wall.w - place.z, 0.0);
  float open = inside ? mix(1.0, wall.z * wall.z / (wall.z * wall.z + depth * depth + 1e-3), 0.72 * uSpan.w) : 1.0;
  float low = inside ? 1.0 : mix(0.62, 1.0, smoothstep(0.0, 0.22 * uSpan.z, place.z - uSpan.x + 0.12 * uSpan.z * (n.z + 1.0)));
  vec3 room = mix(uTable, uSky, 0.5 + 0.5 * n.z) * open * low;
  if (cut) room *= 1.25;
  if (inside) room += colour * 0.22 * (1.0 - open);

  if (uFinish == 0) colour = mix(colour, vec3(dot(colour, vec3(0.3, 0.59, 0.11))), 0.10) * 1.06;
  else colour = pow(colour, vec3(1.10, 1.14, 1.17)) * (uFinish == 2 ? 1.06 : 1.02);

  vec3 half_ = normalize(uKey + view);
  float along = dot(fibre, half_);
  float satin = pow(max(1.0 - along * along, 0.0), 14.0) * max(facing, 0.0) * sun;
  float gain = uFinish == 0 ? 0.10 : uFinish == 1 ? 0.24 : 0.30;
  vec3 light = colour * (room + vec3(1.02, 0.98, 0.91) * (0.90 - 0.35 * gain) * key + vec3(1.0, 0.95, 0.85) * gain * satin);

  float edge = pow(1.0 - max(dot(n, view), 0.0), 5.0);
  float shine = max(dot(n, half_), 0.0);
  if (uFinish == 1) light += (0.055 * pow(shine, 26.0) * sun + 0.05 * edge * open) * vec3(1.0, 0.98, 0.94);
  if (uFinish == 2) {
    // The window, with its cross, in the film.
    vec3 back = reflect(-view, n), right = normalize(cross(vec3(0.0, 0.0, 1.0), uKey)), up = cross(uKey, right);
    vec2 pane = vec2(dot(back, right), dot(back, up)) / max(dot(back, uKey), 1e-3);
    vec2 in_ = smoothstep(vec2(0.34, 0.44), vec2(0.28, 0.37), abs(pane)) * smoothstep(0.0, 0.012, abs(pane) - 0.008);
    float window = dot(back, uKey) > 0.0 ? in_.x * in_.y : 0.0;
    float coat = 0.04 + 0.55 * edge;
    light += coat * (window * 4.2 * sun + mix(0.25, 0.75, 0.5 + 0.5 * back.z) * open) * vec3(1.0, 0.99, 0.97);
    light += 0.05 * pow(shine, 90.0) * sun;
  }
  return light;
}

vec3 encode(vec3 light) {
  // A soft shoulder, so that highlights keep their colour.
  light = light / (1.0 + max(max(light.r, max(light.g, light.b)) - 0.85, 0.0));
  vec3 low = 12.92 * light, high = 1.055 * pow(max(light, 1e-6), vec3(1.0 / 2.4)) - 0.055;
  return mix(high, low, lessThanEqual(light, vec3(0.0031308)));
}
