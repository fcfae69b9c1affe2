// A script body: `[path, modules]` of a code, drawn as `arguments[1]` says, and what jsQR reads in
// each picture. `blur`, dots; `turn`, degrees; `stain`, share of the code, place in modules, grey.
const [[path, modules], pictures] = arguments;

const draw = ({ scale, turn = 0, stain }) => {
  const side = Math.ceil(modules * scale * (turn % 90 ? 1.5 : 1));
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = side;
  const context = canvas.getContext("2d", { willReadFrequently: true });
  context.fillStyle = "#fff";
  context.fillRect(0, 0, side, side);
  context.translate(side / 2, side / 2);
  context.rotate((turn * Math.PI) / 180);
  context.scale(scale, scale);
  context.translate(-modules / 2, -modules / 2);
  context.fillStyle = "#000";
  context.fill(new Path2D(path));
  if (stain) {
    const [share, right, down, grey] = stain;
    // Without the light border on each side, which is no part of the code.
    const radius = (modules - 8) * Math.sqrt(share / Math.PI);
    context.fillStyle = `rgb(${grey}, ${grey}, ${grey})`;
    context.beginPath();
    context.arc(modules / 2 + right, modules / 2 + down, radius, 0, 2 * Math.PI);
    context.fill();
  }
  return context.getImageData(0, 0, side, side);
};

// Three passes of a box: nearly a Gauss of that deviation.
const blurred = ({ data, width, height }, radius) => {
  for (let pass = 0; radius && pass < 6; pass += 1) {
    const step = pass % 2 ? width : 1;
    const [along, across] = pass % 2 ? [height, width] : [width, height];
    const from = Uint8ClampedArray.from({ length: width * height }, (_, at) => data[4 * at]);
    for (let row = 0; row < across; row += 1) {
      const start = pass % 2 ? row : row * width;
      for (let at = 0; at < along; at += 1) {
        let sum = 0;
        for (let by = -radius; by <= radius; by += 1) {
          const near = Math.min(Math.max(at + by, 0), along - 1);
          sum += from[start + near * step];
        }
        data.fill(sum / (2 * radius + 1), 4 * (start + at * step), 4 * (start + at * step) + 3);
      }
    }
  }
  return { data, width, height };
};

return pictures.map((picture) => {
  const { data, width, height } = blurred(draw(picture), picture.blur ?? 0);
  return jsQR(data, width, height)?.data ?? null;
});
