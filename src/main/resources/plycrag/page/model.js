// Shows a wall in space. Draws only when something changed; nothing moves by itself.
import * as THREE from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { GLTFLoader } from "three/addons/loaders/GLTFLoader.js";

const at = id => document.getElementById(id);
const ACCENT = 0xd9381e;
const DONE = 0xd8d8d8;
const KINDS = {
  piece: ["Sheets", 0xffffff], member: ["Frame", 0xf3e3c3], support: ["Support", 0xe3c690],
  hardware: ["Hardware", 0x6f7780], insert: ["Inserts", 0x000000], screw: ["Screws", 0x555555],
  mat: ["Mats", 0xc9ced6], room: ["Room and obstacles", 0xb8b8b8]
};
const LOOKS = {
  "In front": [0.35, 0.25, 1], "Straight on": [0, 0, 1], "From behind": [-0.35, 0.25, -1],
  "From the left": [-1, 0.1, 0.02], "From the right": [1, 0.1, 0.02], "From above": [0, 1, 0.02]
};
// Screws hide what they hold, and a room its wall.
const hidden = new Set(["screw", "room"]);
const SECONDS_TO_SEE = 2;
const TURN = 0.12;

let told = JSON.parse(at("wall").textContent);
let parts = new Map();
let root = null;
let chosen = null;
let changed = new Set();
let step = Number.MAX_SAFE_INTEGER;
let view = null;
// The way one looks, until one turns it.
let looked = "In front";

function element(name, text, inside) {
  const made = document.createElement(name);
  if (text !== undefined) made.textContent = text;
  if (inside) inside.append(made);
  return made;
}

// ---- the picture

function begin() {
  try {
    const renderer = new THREE.WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
    renderer.setPixelRatio(Math.min(window.devicePixelRatio, 2));
    renderer.setClearColor(0xffffff);
    at("canvas").append(renderer.domElement);
    const scene = new THREE.Scene();
    scene.add(new THREE.HemisphereLight(0xffffff, 0xe6e2da, 2.4));
    const lamp = new THREE.DirectionalLight(0xffffff, 1.3);
    scene.add(lamp);
    const camera = new THREE.PerspectiveCamera(40, 1, 0.02, 200);
    const controls = new OrbitControls(camera, renderer.domElement);
    controls.enableDamping = false;
    controls.addEventListener("change", draw);
    controls.addEventListener("start", () => { looked = null; });
    view = { renderer, scene, camera, controls, lamp };
    new ResizeObserver(fit).observe(at("canvas"));
    renderer.domElement.addEventListener("pointerdown", down);
    renderer.domElement.addEventListener("pointerup", up);
    at("canvas").addEventListener("keydown", key);
  } catch (missing) {
    at("canvas").hidden = true;
    at("looks").hidden = true;
    at("dark").hidden = false;
  }
}

function fit() {
  const { clientWidth: wide, clientHeight: high } = at("canvas");
  if (!wide || !high) return;
  view.renderer.setSize(wide, high);
  view.camera.aspect = wide / high;
  view.camera.updateProjectionMatrix();
  if (looked && parts.size) look(looked); else draw();
}

function draw() {
  if (!view) return;
  view.lamp.position.copy(view.camera.position).add(new THREE.Vector3(1, 2, 0));
  view.renderer.render(view.scene, view.camera);
}

function box(which) {
  const found = new THREE.Box3();
  for (const part of parts.values()) {
    if (which(part)) found.union(part.box);
  }
  return found;
}

function wallBox() {
  return box(part => part.kind !== "room" && part.kind !== "mat");
}

// Where the climbing faces look to as one sees them from above.
function front() {
  const way = new THREE.Vector3();
  for (const part of parts.values()) {
    if (part.kind === "insert") way.add(new THREE.Vector3(0, 0, 1).applyQuaternion(part.node.quaternion));
  }
  return Math.hypot(way.x, way.z) > 0.01 ? Math.atan2(way.x, way.z) : 0;
}

function look(name) {
  looked = name;
  const whole = wallBox();
  const centre = whole.getCenter(new THREE.Vector3());
  const size = whole.getBoundingSphere(new THREE.Sphere()).radius;
  const tall = 2 * Math.atan(Math.tan(view.camera.fov * Math.PI / 360) * Math.min(1, view.camera.aspect));
  const way = new THREE.Vector3(...LOOKS[name]).normalize()
    .applyAxisAngle(new THREE.Vector3(0, 1, 0), front());
  view.controls.target.copy(centre);
  view.camera.position.copy(centre).addScaledVector(way, size / Math.sin(tall / 2));
  view.controls.update();
  draw();
}

function zoom(place, near) {
  if (!view) return;
  looked = null;
  const way = view.camera.position.clone().sub(view.controls.target).normalize();
  view.controls.target.copy(place);
  view.camera.position.copy(place).addScaledVector(way, near);
  view.controls.update();
  draw();
}

function key(event) {
  const turns = { ArrowLeft: [-TURN, 0], ArrowRight: [TURN, 0], ArrowUp: [0, -TURN], ArrowDown: [0, TURN] };
  const nearer = { "+": 0.85, "=": 0.85, "-": 1.18 };
  if (!(event.key in turns) && !(event.key in nearer)) return;
  event.preventDefault();
  looked = null;
  const away = view.camera.position.clone().sub(view.controls.target);
  const round = new THREE.Spherical().setFromVector3(away);
  const [aside, above] = turns[event.key] ?? [0, 0];
  round.theta += aside;
  round.phi = Math.min(Math.PI - 0.05, Math.max(0.05, round.phi + above));
  round.radius *= nearer[event.key] ?? 1;
  view.camera.position.copy(view.controls.target).add(away.setFromSpherical(round));
  view.controls.update();
  draw();
}

// ---- the parts

const materials = new Map();

function material(colour, opacity = 1) {
  const name = colour + " " + opacity;
  if (!materials.has(name)) {
    materials.set(name, new THREE.MeshLambertMaterial({
      color: colour, opacity, transparent: opacity < 1, depthWrite: opacity === 1,
      polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1, flatShading: true
    }));
  }
  return materials.get(name);
}

const LINE = new THREE.LineBasicMaterial({ color: 0x333333 });
const RING = new THREE.RingGeometry(0.005, 0.013, 24);
const DISC = new THREE.CircleGeometry(0.004, 12);

// A place without a body: an insert is a ring on the face, a screw a small disc.
function shapeAt(node, kind) {
  const mesh = new THREE.Mesh(kind === "insert" ? RING : DISC, null);
  mesh.position.z = 0.0015;
  node.add(mesh);
  return mesh;
}

function signature(node, mesh) {
  const numbers = mesh && mesh.geometry !== RING && mesh.geometry !== DISC
    ? mesh.geometry.attributes.position.array : [];
  return [...node.position.toArray(), ...node.quaternion.toArray(), ...numbers].join(" ");
}

function take(scene) {
  const fresh = new Map();
  scene.traverse(node => {
    const kind = node.userData.kind;
    if (!kind || fresh.has(node.userData.name)) return;
    const mark = node.userData.name;
    let mesh = node.isMesh ? node : null;
    const sign = signature(node, mesh);
    fresh.set(mark, { mark, kind, node, mesh, sign, facet: node.userData.facet });
  });
  for (const part of fresh.values()) {
    if (!part.mesh) part.mesh = shapeAt(part.node, part.kind);
    else if (part.kind !== "room") {
      part.node.add(new THREE.LineSegments(new THREE.EdgesGeometry(part.mesh.geometry, 20), LINE));
    }
    part.mesh.userData.mark = part.mark;
    part.node.updateWorldMatrix(true, true);
    part.box = new THREE.Box3().setFromObject(part.node);
    part.step = told.parts[part.mark]?.[2] ?? 0;
  }
  return fresh;
}

function paint() {
  const last = told.steps.length;
  for (const part of parts.values()) {
    const there = part.step <= step;
    part.node.visible = there && (!hidden.has(part.kind) || part === chosen);
    const now = step < last && part.step === step;
    const done = step < last && part.step > 0 && part.step < step;
    const marked = part === chosen || now || changed.has(part.mark);
    const own = KINDS[part.kind]?.[1] ?? DONE;
    const colour = marked ? ACCENT : done && part.kind !== "insert" ? DONE : own;
    part.mesh.material = material(colour, part.kind === "room" && part !== chosen ? 0.25 : 1);
  }
  rings();
  draw();
}

let ringGroup = null;

// A finding's ring stands before everything, with its number.
function rings() {
  if (!view) return;
  if (ringGroup) view.scene.remove(ringGroup);
  ringGroup = new THREE.Group();
  if (!hidden.has("finding")) {
    told.remarks.forEach((remark, i) => {
      const place = placeOf(remark);
      if (place) ringGroup.add(ring(place, i + 1));
    });
  }
  view.scene.add(ringGroup);
}

function ring(place, number) {
  const paper = document.createElement("canvas");
  paper.width = paper.height = 128;
  const pen = paper.getContext("2d");
  pen.strokeStyle = pen.fillStyle = "#d9381e";
  pen.lineWidth = 8;
  pen.beginPath();
  pen.arc(64, 64, 56, 0, 7);
  pen.stroke();
  pen.font = "bold 56px 'Liberation Sans', Arial, sans-serif";
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.fillText(String(number), 64, 68);
  const sprite = new THREE.Sprite(new THREE.SpriteMaterial({
    map: new THREE.CanvasTexture(paper), depthTest: false, sizeAttenuation: false
  }));
  sprite.scale.setScalar(0.045);
  sprite.position.copy(place);
  return sprite;
}

function placeOf(remark) {
  if (remark.place) return new THREE.Vector3(...remark.place);
  const part = remark.marks.map(mark => parts.get(mark)).find(Boolean);
  return part ? part.box.getCenter(new THREE.Vector3()) : null;
}

// ---- choosing

let pressed = null;

function down(event) {
  pressed = [event.clientX, event.clientY];
}

function up(event) {
  if (!pressed || Math.hypot(event.clientX - pressed[0], event.clientY - pressed[1]) > 5) return;
  const rim = view.renderer.domElement.getBoundingClientRect();
  const pointer = new THREE.Vector2(
    (event.clientX - rim.left) / rim.width * 2 - 1, 1 - (event.clientY - rim.top) / rim.height * 2);
  const ray = new THREE.Raycaster();
  ray.setFromCamera(pointer, view.camera);
  const meshes = [...parts.values()].filter(part => part.node.visible && part.kind !== "room")
    .map(part => part.mesh);
  const hit = ray.intersectObjects(meshes, false)[0];
  choose(hit ? parts.get(hit.object.userData.mark) : null);
}

function choose(part) {
  chosen = part;
  const words = at("part");
  words.textContent = "";
  if (!part) {
    words.textContent = "Choose one in the picture, or write its mark.";
  } else {
    const [what, list, comes] = told.parts[part.mark] ?? [KINDS[part.kind][0], "", 0];
    at("mark").value = part.mark;
    element("strong", part.mark, words);
    words.append(": " + what + ". ");
    if (comes > 0) words.append("Step " + comes + ": " + told.steps[comes - 1] + " ");
    if (list) {
      words.append("Its line is in ");
      element("a", list, words).href = list;
      words.append(".");
    }
  }
  paint();
}

// ---- the panel

function panel() {
  at("title").textContent = told.title;
  at("stamp").hidden = !told.stamp;
  at("stamp").textContent = told.stamp;
  at("figures").replaceChildren(...told.figures.map(([name, value]) => {
    const pair = document.createElement("div");
    element("dt", name, pair);
    element("dd", value, pair);
    return pair;
  }));
  at("marks").replaceChildren(...[...parts.keys()].map(mark => {
    const option = document.createElement("option");
    option.value = mark;
    return option;
  }));
  remarks();
  kinds();
  at("step").max = told.steps.length;
  showStep(Math.min(step, told.steps.length));
}

function remarks() {
  const list = at("remarks");
  list.replaceChildren();
  for (const remark of told.remarks) {
    const line = element("li", undefined, list);
    const place = placeOf(remark);
    const words = remark.severity + ": " + remark.sentence;
    if (place && view) {
      const button = element("button", words, line);
      button.type = "button";
      button.onclick = () => {
        choose(remark.marks.map(mark => parts.get(mark)).find(Boolean) ?? null);
        zoom(place, 1.2);
      };
    } else {
      line.append(words);
    }
    if (remark.suggestion) line.append("; " + remark.suggestion);
  }
  if (!told.remarks.length) element("li", "Nothing.", list);
}

function kinds() {
  const there = new Set([...parts.values()].map(part => part.kind));
  const names = Object.entries(KINDS).filter(([kind]) => there.has(kind))
    .map(([kind, [name]]) => [kind, name]);
  if (told.remarks.some(placeOf)) names.push(["finding", "Findings"]);
  at("kinds").replaceChildren(...names.map(([kind, name]) => {
    const label = document.createElement("label");
    const tick = element("input", undefined, label);
    tick.type = "checkbox";
    tick.name = kind;
    tick.checked = !hidden.has(kind);
    tick.onchange = () => {
      if (tick.checked) hidden.delete(kind); else hidden.add(kind);
      paint();
    };
    label.append(name);
    return label;
  }));
}

function showStep(number) {
  step = number;
  at("step").value = number;
  const all = number >= told.steps.length;
  at("step-number").textContent = number + " of " + told.steps.length;
  const words = number === 0 ? "Nothing stands yet." : told.steps[number - 1];
  at("step-words").textContent = words;
  at("step").setAttribute("aria-valuetext", number + ": " + words);
  if (all) step = told.steps.length;
  paint();
}

function wire() {
  at("step").oninput = event => showStep(Number(event.target.value));
  at("mark").onchange = event => {
    const part = parts.get(event.target.value.trim());
    choose(part ?? null);
    if (part) zoom(part.box.getCenter(new THREE.Vector3()), 1.5);
  };
  if (!view) return;
  for (const name of Object.keys(LOOKS)) {
    const button = element("button", name, at("looks"));
    button.type = "button";
    button.onclick = () => look(name);
  }
}

// ---- showing, and showing what changed

async function show(data, model) {
  const gltf = await new GLTFLoader().parseAsync(model, "");
  const before = parts;
  const atEnd = step >= told.steps.length;
  told = data;
  parts = take(gltf.scene);
  if (atEnd) step = told.steps.length;
  chosen = chosen ? parts.get(chosen.mark) ?? null : null;
  if (view) {
    if (root) view.scene.remove(root);
    view.scene.add(root = gltf.scene);
  }
  changed = new Set();
  if (before.size) {
    for (const part of parts.values()) {
      if (before.get(part.mark)?.sign !== part.sign) changed.add(part.mark);
    }
    setTimeout(() => { changed = new Set(); paint(); }, 1000 * SECONDS_TO_SEE);
  }
  panel();
  if (!before.size && view) look("In front");
  document.body.dataset.shown = parts.size;
}

function bytes(base64) {
  const text = atob(base64);
  return Uint8Array.from(text, one => one.charCodeAt(0)).buffer;
}

// Whoever serves a live page says what became of the last save.
function live() {
  const news = new EventSource("changes?revision=" + document.body.dataset.revision);
  news.addEventListener("wall", async () => {
    const [data, model] = await Promise.all([
      fetch("wall.json").then(one => one.json()), fetch("model.glb").then(one => one.arrayBuffer())]);
    at("banner").hidden = true;
    await show(data, model);
  });
  news.addEventListener("fault", event => banner(JSON.parse(event.data).words));
  news.onerror = () => banner("Plycrag no longer answers; the picture is the last that it made.");
}

function banner(words) {
  at("banner").textContent = words;
  at("banner").hidden = false;
}

begin();
wire();
await show(told, bytes(at("model").textContent));
if (document.body.dataset.revision) live();
