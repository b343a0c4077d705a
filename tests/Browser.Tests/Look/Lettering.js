// Lettering of pictures, which axe leaves open: every text in one of the text colours, and readable on whatever it stands on.
(() => {
  const root = document.documentElement;
  const probe = document.body.appendChild(document.createElement('span'));
  const resolve = value => { probe.style.color = ''; probe.style.color = value; return getComputedStyle(probe).color; };
  const token = name => resolve(getComputedStyle(root).getPropertyValue(name).trim());
  const allowed = new Set(['--ink', '--ink-2', '--ink-3', '--hand'].map(token));
  const paper = token('--paper');
  const grounds = new Set([paper, token('--sheet'), token('--hand-tint')]);
  // Read back from a pixel: a colour that was mixed is told in the space it was mixed in.
  const pixel = Object.assign(document.createElement('canvas'), { width: 1, height: 1 }).getContext('2d', { willReadFrequently: true });
  const read = new Map();
  const channels = color => {
    if (!read.has(color)) {
      pixel.clearRect(0, 0, 1, 1);
      pixel.fillStyle = color;
      pixel.fillRect(0, 0, 1, 1);
      const [r, g, b, a] = pixel.getImageData(0, 0, 1, 1).data;
      read.set(color, [r, g, b, a / 255]);
    }
    return read.get(color);
  };
  const light = color => channels(color).slice(0, 3).map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)
    .reduce((sum, v, i) => sum + v * [0.2126, 0.7152, 0.0722][i], 0);
  const contrast = (a, b) => { const [x, y] = [light(a), light(b)].sort((p, q) => q - p); return (x + 0.05) / (y + 0.05); };
  const over = (color, opacity) => { const [c, p] = [channels(color), channels(paper)]; const o = c[3] * opacity;
    return `rgb(${[0, 1, 2].map(i => c[i] * o + p[i] * (1 - o)).join(',')})`; };
  // The colours at a point: one, or the two stops of a gradient between which it lies. A pattern counts with all its marks.
  const colours = (shape, style, at) => {
    const paint = /url\(["']?#([^"')]+)/.exec(style.fill);
    const opacity = Number(style.fillOpacity) * Number(style.opacity);
    if (!paint) return [over(style.fill, opacity)];
    const server = document.getElementById(paint[1]);
    if (!(server instanceof SVGLinearGradientElement)) {
      return [...server?.querySelectorAll('*') ?? []].flatMap(mark => [getComputedStyle(mark).fill, getComputedStyle(mark).stroke])
        .filter(color => color !== 'none' && !color.startsWith('url')).map(color => over(color, opacity));
    }
    const inBox = server.gradientUnits.baseVal === SVGUnitTypes.SVG_UNIT_TYPE_OBJECTBOUNDINGBOX;
    const box = shape.getBBox();
    const along = (length, start, size) => inBox ? start + size * (length.unitType === SVGLength.SVG_LENGTHTYPE_PERCENTAGE ? length.valueInSpecifiedUnits / 100 : length.value) : length.value;
    const [x1, x2] = [server.x1, server.x2].map(length => along(length.baseVal, box.x, box.width));
    const [y1, y2] = [server.y1, server.y2].map(length => along(length.baseVal, box.y, box.height));
    const [dx, dy] = [x2 - x1, y2 - y1];
    const share = ((at.x - x1) * dx + (at.y - y1) * dy) / (dx * dx + dy * dy || 1);
    const stops = [...server.querySelectorAll('stop')];
    const next = stops.findIndex(stop => stop.offset.baseVal >= share);
    const beside = next < 0 ? stops.slice(-1) : stops.slice(Math.max(0, next - 1), next + 1);
    return beside.map(stop => over(getComputedStyle(stop).stopColor, opacity * Number(getComputedStyle(stop).stopOpacity)));
  };
  const faults = [];
  let looked = 0;
  for (const picture of document.querySelectorAll('svg')) {
    if (!picture.getClientRects().length) continue;
    const frame = picture.getBoundingClientRect();
    const shapes = [...picture.querySelectorAll('path, rect, circle, ellipse, polygon')]
      .filter(shape => !shape.closest('defs, clipPath, mask, pattern, symbol') && shape.getClientRects().length)
      .map(shape => ({ shape, style: getComputedStyle(shape), turn: shape.getScreenCTM()?.inverse() }))
      .filter(({ style, turn }) => turn && style.fill !== 'none' && style.visibility !== 'hidden' && Number(style.fillOpacity) * Number(style.opacity) > 0.02);
    for (const text of picture.querySelectorAll('text, tspan')) {
      const own = [...text.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.data.trim());
      const box = text.getBoundingClientRect();
      const style = getComputedStyle(text);
      if (!own || !box.width || style.visibility === 'hidden' || text.closest('defs')) continue;
      looked++;
      const name = `${picture.querySelector('title')?.textContent ?? 'picture'}: "${text.textContent.trim()}"`;
      if (!allowed.has(style.fill)) faults.push(`${name}: colour ${style.fill}`);
      if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1) {
        if (getComputedStyle(picture).overflow !== 'visible') faults.push(`${name}: cut off by its picture`);
      }
      const halo = style.stroke === paper && parseFloat(style.strokeWidth) >= 2 && style.paintOrder.startsWith('stroke');
      if (halo) continue;
      for (const { shape, style: worn, turn } of shapes) {
        if (grounds.has(worn.fill)) continue;
        const hits = [0.1, 0.3, 0.5, 0.7, 0.9].flatMap(x => [0.3, 0.5, 0.7].map(y => [x, y]))
          .map(([x, y]) => new DOMPoint(box.left + x * box.width, box.top + y * box.height).matrixTransform(turn)).filter(point => shape.isPointInFill(point));
        const worst = Math.min(...hits.flatMap(point => colours(shape, worn, point)).map(ground => contrast(style.fill, ground)));
        if (worst < 4.5) faults.push(`${name}: contrast ${worst.toFixed(1)} on ${shape.getAttribute('class') ?? shape.tagName}`);
      }
    }
  }
  probe.remove();
  return { looked, faults: [...new Set(faults)] };
})()
