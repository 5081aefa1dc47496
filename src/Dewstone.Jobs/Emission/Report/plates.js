// The plates: plan of a layer and two sections, painted from the cells the page carries. A click moves the sections or turns to a layer.
async function startPlates(figure) {
  const g = JSON.parse(figure.dataset.geometry);
  const [nx, ny, nz] = g.cells, [columns, rows, layers] = g.lattice;
  const fields = new Uint8Array(await unpack("plate-field")), half = fields.length / 2;
  const packed = await unpack("plate-doses"), doses = packed ? new Uint32Array(packed) : null;
  const LEFT_OUT = 0xffffffff, BLOCKED = 0xfffffffe;
  const inks = () => Object.fromEntries(["paper", "line", "quiet", "faint", "solid", "elsewhere", "excess", "missing", "water"].map(name => [name, ink(name)]));
  let tones = inks();
  const css = (tone, alpha = 1) => `rgba(${tone.join(",")},${alpha})`;
  const choices = figure.querySelector("form"), about = figure.querySelector(".about"), where = figure.querySelector(".where");
  const steps = figure.querySelectorAll("button[data-step]"), leaves = figure.querySelectorAll("button.leaf");
  let layer = g.start - 1;
  const boxes = g.units ?? [["", g.corner[0], g.corner[1], g.box[0], g.box[1]]];
  let cutX = boxes[0][1] + boxes[0][3] / 2, cutY = boxes[0][2] + boxes[0][4] / 2;
  let largest = 0;
  if (doses) for (const dose of doses) if (dose < BLOCKED && dose > largest) largest = dose;

  const clamp = (value, most) => Math.max(0, Math.min(most, value));

  // A plane of both fields, straight between the two planes of cells beside it: axis 0 is x, 1 is y, 2 is z; metres in the bin.
  function plane(axis, metres) {
    const count = g.cells[axis], at = clamp((metres - g.origin[axis]) / g.cell[axis] - 0.5, count - 1);
    const below = Math.min(Math.floor(at), Math.max(0, count - 2)), share = at - below, steps = [1, nx, nx * ny];
    const step = count > 1 ? steps[axis] : 0, [u, v] = [[1, 2], [0, 2], [0, 1]][axis];
    const width = g.cells[u], height = g.cells[v], set = new Float32Array(width * height), wanted = new Float32Array(width * height);
    for (let j = 0; j < height; j++) {
      for (let i = 0; i < width; i++) {
        const cell = below * steps[axis] + i * steps[u] + j * steps[v];
        set[j * width + i] = fields[cell] * (1 - share) + fields[cell + step] * share - 127.5;
        wanted[j * width + i] = fields[half + cell] * (1 - share) + fields[half + cell + step] * share - 127.5;
      }
    }
    return { width, height, set, wanted, u, v };
  }

  // The most of the predicted field over the height of a layer.
  function anywhere(of) {
    const perLayer = g.layer / g.cell[2], from = Math.floor(of * perLayer + 0.5), to = Math.min(nz, Math.floor((of + 1) * perLayer + 0.5));
    const most = new Float32Array(nx * ny).fill(-128);
    for (let z = from; z < to; z++) for (let i = 0; i < most.length; i++) most[i] = Math.max(most[i], fields[z * nx * ny + i] - 127.5);
    return most;
  }

  // Values of a field for a row of pixels.
  function sample(field, width, height, columnsOfPixels, y, out) {
    const row = Math.min(Math.floor(y), height - 1), up = row + 1 < height ? width : 0, b = y - row, base = row * width;
    for (let i = 0; i < out.length; i++) {
      const x = columnsOfPixels[i], column = Math.floor(x), a = x - column, right = column + 1 < width ? 1 : 0, at = base + column;
      out[i] = (field[at] * (1 - a) + field[at + right] * a) * (1 - b) + (field[at + up] * (1 - a) + field[at + up + right] * a) * b;
    }
  }

  // Sheet: canvas with its scale, CSS pixels a metre, and margins; places in metres in the bin.
  function sheet(canvas, u, v, margin) {
    const sharp = Math.min(window.devicePixelRatio || 1, 2), width = canvas.clientWidth;
    const spanU = g.cells[u] * g.cell[u], spanV = g.cells[v] * g.cell[v];
    const scale = Math.max(1, width - margin.left - margin.right) / spanU, height = spanV * scale + margin.top + margin.foot;
    canvas.width = Math.round(width * sharp);
    canvas.height = Math.round(height * sharp);
    const pen = canvas.getContext("2d");
    pen.setTransform(sharp, 0, 0, sharp, 0, 0);
    pen.fillStyle = css(tones.paper);
    pen.fillRect(0, 0, width, height);
    pen.font = `12px ${getComputedStyle(figure).fontFamily}`;
    const x = metres => margin.left + (metres - g.origin[u]) * scale, y = metres => height - margin.foot - (metres - g.origin[v]) * scale;
    return { canvas, pen, sharp, scale, x, y, spanU, spanV, left: margin.left, top: margin.top, right: margin.left + spanU * scale, foot: height - margin.foot };
  }

  // Paints the cut: edges are as sharp as the pixels, since a field over its slope is the distance to the surface.
  function paint(s, cut, most, doneBelow) {
    const width = Math.max(1, Math.round(s.spanU * s.scale * s.sharp)), height = Math.max(1, Math.round(s.spanV * s.scale * s.sharp));
    const image = s.pen.createImageData(width, height), pixels = image.data;
    const across = new Float32Array(width), perPixel = cut.width / width, perRow = cut.height / height;
    for (let i = 0; i < width; i++) across[i] = clamp((i + 0.5) * perPixel - 0.5, cut.width - 1);
    const lines = new Map();
    const line = (field, key, j) => {
      const y = clamp((height - 1 - j + 0.5) * perRow - 0.5, cut.height - 1), slot = `${key}${j}`;
      if (!lines.has(slot)) { const out = new Float32Array(width); sample(field, cut.width, cut.height, across, y, out); lines.set(slot, out); }
      return lines.get(slot);
    };
    for (let j = 0; j < height; j++) {
      const k = Math.min(j + 1, height - 1), set = line(cut.set, "s", j), setDown = line(cut.set, "s", k), want = line(cut.wanted, "w", j), wantDown = line(cut.wanted, "w", k);
      const more = most && line(most, "m", j);
      const metres = (height - 1 - j + 0.5) / height * s.spanV + g.origin[cut.v];
      for (let i = 0; i < width; i++) {
        const n = Math.min(i + 1, width - 1);
        const inside = clamp(0.5 + set[i] / (Math.hypot(set[n] - set[i], setDown[i] - set[i]) || 1e-3), 1);
        const slope = Math.hypot(want[n] - want[i], wantDown[i] - want[i]), drawn = clamp(0.5 + want[i] / (slope || 1e-3), 1);
        const outline = slope > 0 ? clamp(0.5 + 0.65 * s.sharp - Math.abs(want[i]) / slope, 1) : 0;
        const built = metres < doneBelow, hatch = (i + j) % Math.round(6 * s.sharp) < 2 * s.sharp;
        const setTone = built ? tones.solid : tones.elsewhere, ground = more && more[i] > 0 ? tones.elsewhere : tones.paper;
        for (let c = 0; c < 3; c++) {
          const missing = built && hatch ? tones.missing[c] : ground[c];
          const excess = built ? tones.excess[c] : tones.elsewhere[c];
          const body = inside * (drawn * setTone[c] + (1 - drawn) * excess) + (1 - inside) * (drawn * missing + (1 - drawn) * ground[c]);
          pixels[4 * (j * width + i) + c] = body + outline * (tones.line[c] - body);
        }
        pixels[4 * (j * width + i) + 3] = 255;
      }
      lines.delete(`s${j}`); lines.delete(`w${j}`); lines.delete(`m${j}`);
    }
    s.pen.putImageData(image, Math.round(s.left * s.sharp), Math.round(s.top * s.sharp));
    s.pen.strokeStyle = css(tones.quiet);
    s.pen.lineWidth = 1;
    s.pen.strokeRect(s.left, s.top, s.right - s.left, s.foot - s.top);
  }

  function write(s, text, x, y, align = "left", tone = tones.line) {
    s.pen.fillStyle = css(tone);
    s.pen.textAlign = align;
    s.pen.fillText(text, x, y);
  }

  function rule(s, points, tone, dashes = []) {
    s.pen.strokeStyle = css(tone);
    s.pen.setLineDash(dashes);
    s.pen.beginPath();
    points.forEach(([x, y], i) => (i ? s.pen.lineTo(x, y) : s.pen.moveTo(x, y)));
    s.pen.stroke();
    s.pen.setLineDash([]);
  }

  function plan() {
    const s = sheet(figure.querySelector(".view-plan"), 0, 1, { left: 30, right: 26, top: 26, foot: 24 });
    paint(s, plane(2, g.tip[2] + layer * g.layer), anywhere(layer), Infinity);
    s.pen.lineWidth = 1;
    marks(s);
    for (const [mark, bx, by, bw, bd] of boxes) {
      rule(s, [[s.x(bx), s.y(by)], [s.x(bx + bw), s.y(by)], [s.x(bx + bw), s.y(by + bd)], [s.x(bx), s.y(by + bd)], [s.x(bx), s.y(by)]], tones.quiet, [7, 5]);
      if (mark) write(s, mark, s.x(bx), s.y(by + bd) - 4, "left");
    }
    for (const [name, from, to] of [["A", [s.left - 8, s.y(cutY)], [s.right + 8, s.y(cutY)]], ["B", [s.x(cutX), s.foot + 8], [s.x(cutX), s.top - 8]]]) {
      s.pen.lineWidth = 1.2;
      rule(s, [from, to], tones.line, [14, 4, 3, 4]);
      const upright = name === "B";
      write(s, name, from[0] - (upright ? 0 : 10), from[1] + (upright ? 13 : 4), "center");
      write(s, name, to[0] + (upright ? 0 : 10), to[1] + (upright ? -4 : 4), "center");
    }
    s.canvas.onclick = event => {
      cutX = clamp((event.offsetX - s.left) / s.scale, s.spanU) + g.origin[0];
      cutY = clamp((s.foot - event.offsetY) / s.scale, s.spanV) + g.origin[1];
      draw();
    };
  }

  function marks(s) {
    const how = choices.elements.doses?.value;
    if (!doses || how === "none") return;
    const shift = g.shifted && (layer - g.under) & 1 ? g.pitch / 2 : 0, pitch = g.pitch * s.scale;
    const numbers = how === "numbers", size = Math.max(5, Math.min(12, pitch * 0.36));
    s.pen.font = `${size}px ${getComputedStyle(figure).fontFamily}`;
    for (let j = 0; j < rows; j++) {
      for (let i = 0; i < columns; i++) {
        const dose = doses[(layer * rows + j) * columns + i], x = s.x(g.tip[0] + i * g.pitch + shift), y = s.y(g.tip[1] + j * g.pitch + shift);
        if (dose === LEFT_OUT) continue;
        if (dose === BLOCKED) {
          s.pen.lineWidth = 1.6;
          rule(s, [[x - 4, y - 4], [x + 4, y + 4]], tones.line);
          rule(s, [[x - 4, y + 4], [x + 4, y - 4]], tones.line);
        } else if (dose > 0 && numbers) {
          write(s, (dose / 100).toFixed(1), x, y + size * 0.36, "center");
        } else {
          s.pen.fillStyle = css(dose > 0 ? tones.water : tones.quiet, dose > 0 ? 0.82 : 0.7);
          s.pen.beginPath();
          s.pen.arc(x, y, dose > 0 ? 0.36 * pitch * Math.sqrt(dose / largest) : 0.8, 0, 2 * Math.PI);
          s.pen.fill();
        }
      }
    }
    s.pen.font = `12px ${getComputedStyle(figure).fontFamily}`;
  }

  function section(name, axis, metres) {
    const [u, v] = axis === 1 ? [0, 2] : [1, 2];
    const s = sheet(figure.querySelector(axis === 1 ? ".view-a" : ".view-b"), u, v, { left: 20, right: 30, top: 26, foot: 10 });
    const top = (layer + 1) * g.layer, foot = layer * g.layer;
    paint(s, plane(axis, metres), null, top);
    write(s, `${name}-${name}, along ${axis === 1 ? "x at y" : "y at x"} = ${(metres * 1000).toFixed(0)} mm`, s.left, s.top - 8);
    s.pen.lineWidth = 1;
    for (let k = 1; k < layers; k++) rule(s, [[s.left - 4, s.y(k * g.layer)], [s.left, s.y(k * g.layer)]], tones.quiet);
    s.pen.lineWidth = 1.3;
    for (const z of [top, foot]) rule(s, [[s.left - 8, s.y(z)], [s.right + 8, s.y(z)]], tones.line);
    write(s, `${layer + 1}`, s.right + 11, s.y((top + foot) / 2) + 4);
    s.canvas.onclick = event => turnTo(Math.floor((s.foot - event.offsetY) / s.scale / g.layer));
  }

  function draw() {
    if (!figure.clientWidth) return;
    tones = inks();
    plan();
    section("A", 1, cutY);
    section("B", 0, cutX);
    where.textContent = `layer ${layer + 1} of ${layers}`;
    const mm = metres => (metres * 1000).toFixed(0);
    let said = `${layer < g.under ? "Loose layer under the unit. " : ""}z ${mm(layer * g.layer)} to ${mm((layer + 1) * g.layer)} mm in the bin.`;
    if (doses) {
      const own = [...doses.subarray(layer * rows * columns, (layer + 1) * rows * columns)].filter(dose => dose > 0 && dose < BLOCKED);
      const sum = own.reduce((total, dose) => total + dose, 0);
      said += own.length ? ` ${own.length} doses, ${(sum / 1e5).toFixed(2)} L: ${(Math.min(...own) / 100).toFixed(2)} to ${(Math.max(...own) / 100).toFixed(2)} mL.` : " No water in this layer.";
    }
    about.textContent = said;
    figure.querySelector(".view-plan").setAttribute("aria-label", `Plan of layer ${layer + 1} of ${layers}. ${said}`);
    for (const button of steps) button.disabled = layer + +button.dataset.step < 0 || layer + +button.dataset.step >= layers;
    for (const leaf of leaves) leaf.setAttribute("aria-current", +leaf.dataset.layer === layer + 1);
    figure.dataset.drawn = layer + 1;
  }

  // The contact sheet: a small plan of every layer, without doses.
  function contact() {
    for (const leaf of leaves) {
      const s = sheet(leaf.querySelector("canvas"), 0, 1, { left: 0, right: 0, top: 0, foot: 0 });
      const own = +leaf.dataset.layer - 1;
      paint(s, plane(2, g.tip[2] + own * g.layer), anywhere(own), Infinity);
    }
  }

  function redraw() {
    draw();
    contact();
  }

  function turnTo(next) {
    layer = clamp(next, layers - 1);
    draw();
  }

  for (const button of steps) button.onclick = () => turnTo(layer + +button.dataset.step);
  for (const leaf of leaves) leaf.onclick = () => turnTo(+leaf.dataset.layer - 1);
  figure.addEventListener("keydown", event => {
    if (event.target.tagName === "INPUT") return;
    const step = { ArrowLeft: -1, ArrowDown: -1, PageDown: -1, ArrowRight: 1, ArrowUp: 1, PageUp: 1 }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    turnTo(layer + step);
  });
  choices.addEventListener("change", draw);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", redraw);
  let width = 0;
  new ResizeObserver(() => { if (figure.clientWidth !== width) { width = figure.clientWidth; redraw(); } }).observe(figure);
  redraw();
}

const plate = document.getElementById("plate");
startPlates(plate).catch(fault => { plate.dataset.fault = fault.message; });
