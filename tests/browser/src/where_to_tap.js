// A script body: where to tap `arguments[0]`, once it lies still in view; or what lies over it. A
// page may still be scrolling to the field that was typed in, and a finger can only touch what has
// been painted where it lies.
const element = document.querySelector(arguments[0]);
const frame = () => new Promise(requestAnimationFrame);
const place = () => {
  // Of a link over two lines, the first: the middle of both may lie beside it.
  const box = element.getClientRects()[0] ?? element.getBoundingClientRect();
  return [box.x + box.width / 2, box.y + box.height / 2];
};
const still = (frames, left) => {
  const before = place().join();
  const [, y] = place();
  if (y < 0 || y > innerHeight || frames === 0)
    element.scrollIntoView({ block: 'center', behavior: 'instant' });
  return frame().then(() => place().join() !== before ? still(0, left - 1)
    : frames < 3 && left > 0 ? still(frames + 1, left - 1) : place());
};
const lies_over = (over) => !element.contains(over) && !over.contains(element);
return still(0, 60).then(([x, y]) => {
  const over = document.elementFromPoint(x, y);
  if (!over || lies_over(over))
    return over ? over.outerHTML.slice(0, 200) : `nothing at ${x}, ${y}`;
  delete window.missed;
  addEventListener('pointerdown', ({ target }) => {
    const label = target.closest('label');
    if (target !== over && !element.contains(target) && !label?.contains(element))
      window.missed = target.outerHTML.slice(0, 200);
  }, { capture: true, once: true });
  return [x, y];
});
