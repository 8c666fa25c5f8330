// Small tools for building the page. Text always goes in as text.

export function h(tag, props, ...children) {
  const el = document.createElement(tag);
  fill(el, props, children);
  return el;
}

export function svg(tag, props, ...children) {
  const el = document.createElementNS('http://www.w3.org/2000/svg', tag);
  fill(el, props, children);
  return el;
}

function fill(el, props, children) {
  for (const [name, value] of Object.entries(props || {})) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith('on')) el.addEventListener(name.slice(2), value);
    else if (name in el && name !== 'list' && !(el instanceof SVGElement) && typeof value !== 'string') el[name] = value;
    else el.setAttribute(name === 'class' || name.includes('-') ? name : name, value === true ? '' : value);
  }
  for (const child of children.flat(9)) {
    if (child !== null && child !== undefined && child !== false) el.append(child);
  }
}

let serial = 0;
export const newID = (prefix) => `${prefix}-${++serial}`;

// replace puts new children into a place and keeps the focus where it was, by
// the data-k of the control.
export function replace(place, ...children) {
  const active = document.activeElement;
  const key = place.contains(active) ? active.dataset.k : null;
  place.replaceChildren(...children.flat(9).filter(Boolean));
  if (key) place.querySelector(`[data-k="${CSS.escape(key)}"]`)?.focus();
}

export function status(text, wrong) {
  const el = document.getElementById('status');
  el.textContent = text;
  el.classList.toggle('wrong', Boolean(wrong));
}

// sure asks before something is done.
export function sure(title, text, yes, no) {
  const dialog = document.getElementById('sure');
  return new Promise((done) => {
    const close = (answer) => () => { dialog.close(); done(answer); };
    replace(dialog,
      h('h2', { id: 'suretitle' }, title), text && h('p', {}, text),
      h('p', { class: 'row' },
        h('button', { type: 'button', class: 'main', onclick: close(true) }, yes),
        h('button', { type: 'button', onclick: close(false) }, no)));
    dialog.oncancel = () => done(false);
    dialog.showModal();
  });
}
