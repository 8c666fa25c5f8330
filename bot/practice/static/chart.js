// Charts: drawn as SVG, with the same numbers as a table beside them. Lines
// differ by dash and marker, bars by pattern and order, never by colour alone.

import { h, svg, newID } from './dom.js';

const W = 500, H = 260, L = 46, R = 14, T = 14, B = 52;
const dashes = ['', '7 4', '2 4', '10 3 2 3', '4 2', '1 3'];
const number = (n) => String(Math.round(n * 100) / 100);

export function chart(block) {
  const c = block.chart || {};
  const title = typeof block.title === 'string' ? block.title : block.title?.text || '';
  const pie = c.type === 'pie';
  const categories = pie ? c.segments.map((s) => s.label) : c.axis_config.categories;
  const series = pie ? [{ name: title, values: c.segments.map((s) => s.value) }]
    : c.series.map((s) => ({ name: s.name, values: categories.map((label) => s.data.find((p) => p.label === label)?.value) }));
  const axis = c.axis_config || {};
  const drawing = pie ? drawPie(categories, series[0].values) : drawAxes(c.type, categories, series, axis);
  drawing.setAttribute('role', 'img');
  drawing.setAttribute('aria-label', summary(title, c.type, categories, series));
  const caption = newID('chart');
  return h('figure', { class: 'chart', role: 'group', 'aria-labelledby': caption },
    h('figcaption', { id: caption }, title),
    h('div', { class: 'wide', tabindex: '0', role: 'group', 'aria-label': `${title}: drawing` }, drawing),
    !pie && h('ul', { class: 'legend' }, series.map((s, i) => h('li', {}, sample(c.type, i), s.name))),
    h('details', {}, h('summary', {}, 'The same as a table'), table(pie ? '' : axis.x_label || '', categories, series, pie)));
}

function summary(title, type, categories, series) {
  const lines = series.map((s) => {
    const known = s.values.filter((v) => v !== undefined);
    if (new Set(known).size === 1) return `${s.name} is ${number(known[0])} throughout`;
    return `${s.name} goes from ${number(known[0])} to ${number(known[known.length - 1])}, lowest ${number(Math.min(...known))}, highest ${number(Math.max(...known))}`;
  });
  if (type === 'pie') return `${title}: ${categories.map((c, i) => `${c} ${number(series[0].values[i])}`).join(', ')}.`;
  return `${title}. From ${categories[0]} to ${categories[categories.length - 1]}: ${lines.join('; ')}.`;
}

function table(corner, categories, series, pie) {
  return h('table', {},
    h('thead', {}, h('tr', {}, h('th', { scope: 'col' }, corner || 'Part'), series.map((s) => h('th', { scope: 'col' }, pie ? 'Value' : s.name)))),
    h('tbody', {}, categories.map((c, i) => h('tr', {}, h('th', { scope: 'row' }, c), series.map((s) => h('td', {}, s.values[i] === undefined ? '–' : number(s.values[i])))))));
}

function sample(type, i) {
  const box = svg('svg', { viewBox: '0 0 34 14', width: '34', height: '14', 'aria-hidden': 'true' });
  if (type === 'bar') box.append(svg('rect', { x: '4', y: '1', width: '26', height: '12', class: `s${i}` }), svg('text', { x: '17', y: '11', 'text-anchor': 'middle', class: 'inbar' }, String(i + 1)));
  else box.append(svg('line', { x1: '1', y1: '7', x2: '33', y2: '7', class: `s${i}`, 'stroke-dasharray': dashes[i] }), marker(i, 17, 7));
  return box;
}

function marker(i, x, y) {
  const k = { class: `m s${i}` };
  switch (i % 3) {
    case 0: return svg('circle', { cx: x, cy: y, r: 3.5, ...k });
    case 1: return svg('rect', { x: x - 3.2, y: y - 3.2, width: 6.4, height: 6.4, ...k });
    default: return svg('path', { d: `M${x} ${y - 4.5} l4.5 8 h-9 z`, ...k });
  }
}

// steps are round numbers that cover the values.
function steps(low, high) {
  const raw = (high - low || 1) / 4;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 2.5, 5, 10].map((n) => n * power).find((n) => n >= raw);
  const out = [];
  for (let v = Math.floor(low / step) * step; v < high + step; v += step) out.push(Math.round(v * 1e6) / 1e6);
  return out;
}

function drawAxes(type, categories, series, axis) {
  const all = series.flatMap((s) => s.values).filter((v) => v !== undefined);
  const fromZero = type !== 'line';
  const ticks = steps(fromZero ? Math.min(0, ...all) : Math.min(...all), fromZero ? Math.max(0, ...all) : Math.max(...all));
  const low = ticks[0], high = ticks[ticks.length - 1];
  const y = (v) => T + (H - T - B) * (1 - (v - low) / (high - low));
  const band = (W - L - R) / categories.length;
  const x = (i) => L + band * (i + 0.5);
  const out = svg('svg', { viewBox: `0 0 ${W} ${H}` });
  for (const t of ticks) {
    out.append(svg('line', { x1: L, x2: W - R, y1: y(t), y2: y(t), class: 'grid' }),
      svg('text', { x: L - 6, y: y(t) + 4, 'text-anchor': 'end' }, number(t)));
  }
  const every = Math.ceil(categories.length / 7);
  categories.forEach((c, i) => {
    if (i % every === 0) out.append(svg('text', { x: x(i), y: H - B + 18, 'text-anchor': 'middle' }, c));
  });
  if (axis.x_label) out.append(svg('text', { x: (L + W - R) / 2, y: H - 10, 'text-anchor': 'middle', class: 'axis' }, axis.x_label));
  if (axis.y_label) out.append(svg('text', { x: 12, y: T + (H - T - B) / 2, 'text-anchor': 'middle', class: 'axis', transform: `rotate(-90 12 ${T + (H - T - B) / 2})` }, axis.y_label));
  series.forEach((s, i) => {
    if (type === 'bar') {
      const wide = band * 0.8 / series.length;
      s.values.forEach((v, n) => {
        if (v === undefined) return;
        const left = L + band * n + band * 0.1 + wide * i;
        out.append(svg('rect', { x: left, y: Math.min(y(v), y(Math.max(0, low))), width: Math.max(1, wide - 1), height: Math.abs(y(v) - y(Math.max(0, low))), class: `s${i}` }));
        if (series.length > 1 && wide > 9) out.append(svg('text', { x: left + wide / 2, y: y(v) - 3, 'text-anchor': 'middle', class: 'over' }, String(i + 1)));
      });
      return;
    }
    const points = s.values.map((v, n) => (v === undefined ? null : [x(n), y(v)])).filter(Boolean);
    if (type === 'area' && points.length) {
      out.append(svg('path', { d: `M${points[0][0]} ${y(Math.max(0, low))} ${points.map((p) => `L${p[0]} ${p[1]}`).join(' ')} L${points[points.length - 1][0]} ${y(Math.max(0, low))} Z`, class: `area s${i}` }));
    }
    out.append(svg('polyline', { points: points.map((p) => p.join(',')).join(' '), class: `s${i}`, 'stroke-dasharray': dashes[i] }));
    const level = new Set(s.values).size === 1; // a limit: marked at its ends only
    points.forEach((p, n) => { if (!level || n === 0 || n === points.length - 1) out.append(marker(i, p[0], p[1])); });
  });
  return out;
}

function drawPie(labels, values) {
  const total = values.reduce((a, b) => a + b, 0);
  const out = svg('svg', { viewBox: `0 0 ${W} ${H}` });
  let angle = -Math.PI / 2;
  values.forEach((v, i) => {
    const turn = (v / total) * 2 * Math.PI;
    const at = (a, r) => [W / 2 + r * Math.cos(a), H / 2 + r * Math.sin(a)];
    const [x1, y1] = at(angle, 90), [x2, y2] = at(angle + turn, 90);
    out.append(values.length === 1 ? svg('circle', { cx: W / 2, cy: H / 2, r: 90, class: `slice s${i}` })
      : svg('path', { d: `M${W / 2} ${H / 2} L${x1} ${y1} A90 90 0 ${turn > Math.PI ? 1 : 0} 1 ${x2} ${y2} Z`, class: `slice s${i}` }));
    const [tx, ty] = at(angle + turn / 2, 108);
    out.append(svg('text', { x: tx, y: ty + 4, 'text-anchor': tx < W / 2 ? 'end' : 'start' }, `${labels[i]}: ${number(v)}`));
    angle += turn;
  });
  return out;
}
