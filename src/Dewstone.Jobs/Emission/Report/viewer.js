// The unit in the hand: the predicted solid tinted by deviation or by water/cement, its pieces apart striped, the wanted solid, or the voids; the wanted
// surface as a ghost over any of them.
const SOLID_VERTEX = `#version 300 es
layout(location=0) in vec3 place; layout(location=1) in vec3 normal; layout(location=2) in float deviation; layout(location=3) in float water; layout(location=4) in float apart;
uniform mat3 turn; uniform vec3 middle; uniform vec2 scale; uniform float far;
out vec3 facing; out float off; out float wet; out float loose; out vec3 seen;
void main() {
  vec3 p = turn * (place - middle);
  facing = turn * normal; off = (deviation * 255.0 - 127.0) / 127.0; wet = water; loose = apart; seen = vec3(0.0, 0.0, far) - p;
  float away = far - p.z;
  gl_Position = vec4(p.xy * scale * far, 2.0 * away - 1.5 * far, away);
}`;
const SOLID_FRAGMENT = `#version 300 es
precision highp float;
in vec3 facing; in float off; in float wet; in float loose; in vec3 seen; out vec4 tone;
uniform int tint, pieces; uniform vec3 missing, excess, driest, midway, wettest, plain, line, paper; uniform float first, band, bands, most;
vec3 watered(float ratio) {
  float share = clamp(floor((ratio - first) / band), 0.0, bands - 1.0) / (bands - 1.0);
  return share < 0.5 ? mix(driest, midway, 2.0 * share) : mix(midway, wettest, 2.0 * share - 1.0);
}
void main() {
  vec3 n = normalize(facing);
  float sky = 0.5 + 0.5 * n.y, lamp = max(dot(n, normalize(vec3(-0.45, 0.6, 0.66))), 0.0);
  float light = 0.42 + 0.20 * sky + 0.38 * lamp;
  float part = clamp(off, -1.0, 1.0);
  vec3 own = tint == 2 ? plain : tint == 1 ? watered(wet * most) : mix(vec3(1.0), part < 0.0 ? missing : excess, abs(part));
  if (loose > 0.5) {
    if (pieces == 0) discard;
    own = mod(gl_FragCoord.x + gl_FragCoord.y, 10.0) < 5.0 ? line : paper;
  }
  tone = vec4(own * light, 1.0);
}`;
const GHOST_FRAGMENT = `#version 300 es
precision highp float;
in vec3 facing; in float off; in float wet; in float loose; in vec3 seen; out vec4 tone;
uniform vec3 line;
void main() {
  float rim = 1.0 - abs(dot(normalize(facing), normalize(seen)));
  tone = vec4(line, 0.04 + 0.62 * rim * rim * rim);
}`;

function program(gl, vertex, fragment) {
  const made = gl.createProgram();
  for (const [kind, text] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
    const shader = gl.createShader(kind);
    gl.shaderSource(shader, text);
    gl.compileShader(shader);
    gl.attachShader(made, shader);
  }
  gl.linkProgram(made);
  if (!gl.getProgramParameter(made, gl.LINK_STATUS)) throw new Error(gl.getProgramInfoLog(made));
  return made;
}

// Outward unit vectors of the corners: the mean of their triangles, by area.
function normalsOf(places, triangles) {
  const normals = new Float32Array(places.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t], b = 3 * triangles[t + 1], c = 3 * triangles[t + 2];
    const ux = places[b] - places[a], uy = places[b + 1] - places[a + 1], uz = places[b + 2] - places[a + 2];
    const vx = places[c] - places[a], vy = places[c + 1] - places[a + 1], vz = places[c + 2] - places[a + 2];
    const nx = uy * vz - uz * vy, ny = uz * vx - ux * vz, nz = ux * vy - uy * vx;
    for (const corner of [a, b, c]) { normals[corner] += nx; normals[corner + 1] += ny; normals[corner + 2] += nz; }
  }
  for (let i = 0; i < normals.length; i += 3) {
    const length = Math.hypot(normals[i], normals[i + 1], normals[i + 2]) || 1;
    for (let j = 0; j < 3; j++) normals[i + j] /= length;
  }
  return normals;
}

function surface(gl, bytes, counts) {
  const [corners, triangleCount] = counts.split(" ").map(Number);
  const places = new Uint16Array(bytes, 0, 3 * corners);
  const first = Math.ceil(6 * corners / 4) * 4;
  const triangles = new Uint32Array(bytes, first, 3 * triangleCount);
  const marks = first + 12 * triangleCount;
  const held = gl.createVertexArray();
  gl.bindVertexArray(held);
  const fill = (slot, data, count, type, normalised) => {
    gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
    gl.bufferData(gl.ARRAY_BUFFER, data, gl.STATIC_DRAW);
    gl.enableVertexAttribArray(slot);
    gl.vertexAttribPointer(slot, count, type, normalised, 0, 0);
  };
  fill(0, places, 3, gl.UNSIGNED_SHORT, true);
  fill(1, normalsOf(places, triangles), 3, gl.FLOAT, false);
  if (bytes.byteLength > marks) {
    for (let mark = 0; mark < 3; mark++) fill(2 + mark, new Uint8Array(bytes, marks + mark * corners, corners), 1, gl.UNSIGNED_BYTE, true);
  }
  gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, gl.createBuffer());
  gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, triangles, gl.STATIC_DRAW);
  return { held, count: 3 * triangleCount };
}

async function startViewer(figure) {
  const canvas = figure.querySelector("canvas"), form = figure.querySelector("form"), data = figure.dataset;
  const gl = canvas.getContext("webgl2", { antialias: true, alpha: false });
  if (!gl || data.predicted === "0 0") return;
  const bodies = {}, plain = { wanted: "solid", voids: "midway" };
  for (const name of ["predicted", "wanted", "voids"]) bodies[name] = surface(gl, await unpack(`${name}-surface`), data[name]);
  const solid = program(gl, SOLID_VERTEX, SOLID_FRAGMENT), ghost = program(gl, SOLID_VERTEX, GHOST_FRAGMENT);
  const middle = data.middle.split(" ").map(Number), reach = +data.reach, far = 5 * reach;
  let round = -0.65, lean = 0.42, nearer = 1, waiting = false;

  function draw() {
    waiting = false;
    const sharp = Math.min(window.devicePixelRatio || 1, 2), width = canvas.clientWidth, height = canvas.clientHeight;
    if (width === 0) return;
    canvas.width = Math.round(width * sharp);
    canvas.height = Math.round(height * sharp);
    gl.viewport(0, 0, canvas.width, canvas.height);
    const paper = ink("paper").map(part => part / 255);
    gl.clearColor(...paper, 1);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    gl.enable(gl.DEPTH_TEST);
    const cr = Math.cos(round), sr = Math.sin(round), cl = Math.cos(lean), sl = Math.sin(lean);
    // Where the unit's x, y and z go on the screen: right, up, towards the eye.
    const matrix = [cr, sl * sr, -cl * sr, -sr, sl * cr, -cl * cr, 0, cl, sl];
    const zoom = 1.08 * nearer / reach;
    const scale = width > height ? [zoom * height / width, zoom] : [zoom, zoom * width / height];
    const use = (made, set) => {
      gl.useProgram(made);
      const at = name => gl.getUniformLocation(made, name);
      gl.uniformMatrix3fv(at("turn"), false, matrix);
      gl.uniform3fv(at("middle"), middle);
      gl.uniform2fv(at("scale"), scale);
      gl.uniform1f(at("far"), far);
      set(at);
    };
    const body = form.elements.body.value, shown = bodies[body];
    use(solid, at => {
      gl.uniform1i(at("tint"), plain[body] ? 2 : form.elements.tint.value === "water" ? 1 : 0);
      gl.uniform1i(at("pieces"), form.elements.apart?.checked ? 1 : 0);
      gl.uniform3fv(at("plain"), ink(plain[body] ?? "solid").map(part => part / 255));
      for (const name of ["missing", "excess", "driest", "midway", "wettest", "line", "paper"]) gl.uniform3fv(at(name), ink(name).map(part => part / 255));
      for (const name of ["first", "band", "bands", "most"]) gl.uniform1f(at(name), +data[name]);
    });
    gl.disable(gl.BLEND);
    gl.bindVertexArray(shown.held);
    gl.drawElements(gl.TRIANGLES, shown.count, gl.UNSIGNED_INT, 0);
    if (form.elements.ghost.checked && body !== "wanted") {
      use(ghost, at => gl.uniform3fv(at("line"), ink("line").map(part => part / 255)));
      gl.enable(gl.BLEND);
      gl.blendFunc(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA);
      gl.disable(gl.DEPTH_TEST);
      gl.bindVertexArray(bodies.wanted.held);
      gl.drawElements(gl.TRIANGLES, bodies.wanted.count, gl.UNSIGNED_INT, 0);
    }
    const centre = new Uint8Array(4 * canvas.width);
    gl.readPixels(0, canvas.height >> 1, canvas.width, 1, gl.RGBA, gl.UNSIGNED_BYTE, centre);
    let marked = 0;
    for (let i = 0; i < centre.length; i += 4) if (Math.abs(centre[i] - centre[0]) + Math.abs(centre[i + 2] - centre[2]) > 12) marked++;
    canvas.dataset.drawn = gl.getError() === gl.NO_ERROR && marked > 0 ? shown.count / 3 : 0;
  }

  function again() {
    if (!waiting) { waiting = true; requestAnimationFrame(draw); }
  }

  function move(across, down) {
    round += across;
    lean = Math.max(-1.5, Math.min(1.5, lean + down));
    again();
  }

  function come(factor) {
    nearer = Math.max(0.5, Math.min(8, nearer * factor));
    again();
  }

  const fingers = new Map();
  canvas.addEventListener("pointerdown", event => {
    fingers.set(event.pointerId, [event.clientX, event.clientY]);
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener("pointermove", event => {
    const from = fingers.get(event.pointerId);
    if (!from) return;
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    const to = [event.clientX, event.clientY];
    if (other) come(Math.hypot(to[0] - other[0], to[1] - other[1]) / Math.max(1, Math.hypot(from[0] - other[0], from[1] - other[1])));
    else move((to[0] - from[0]) * 0.008, (to[1] - from[1]) * 0.008);
    fingers.set(event.pointerId, to);
  });
  for (const end of ["pointerup", "pointercancel"]) canvas.addEventListener(end, event => fingers.delete(event.pointerId));
  canvas.addEventListener("wheel", event => {
    if (document.activeElement !== canvas) return;
    event.preventDefault();
    come(Math.exp(-0.0015 * event.deltaY));
  }, { passive: false });
  canvas.addEventListener("keydown", event => {
    const turns = { ArrowLeft: [-0.1, 0], ArrowRight: [0.1, 0], ArrowUp: [0, -0.1], ArrowDown: [0, 0.1] }[event.key];
    if (turns) move(...turns);
    else if (event.key === "+" || event.key === "=") come(1.15);
    else if (event.key === "-") come(1 / 1.15);
    else return;
    event.preventDefault();
  });
  function choose() {
    figure.dataset.shown = form.elements.body.value === "predicted" ? form.elements.tint.value : form.elements.body.value;
    again();
  }

  form.addEventListener("change", choose);
  new ResizeObserver(again).observe(canvas);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", again);
  figure.classList.add("turning");
  choose();
  draw();
}

const hand = document.getElementById("hand");
startViewer(hand).catch(fault => { hand.classList.remove("turning"); hand.dataset.fault = fault.message; });

