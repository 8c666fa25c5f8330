// The box in which messages are written.

import { h, newID, status } from './dom.js';

export function composer(form, { label, text, button, hint, send, share, leave, shortcuts }) {
  const id = newID('text');
  const area = h('textarea', { id, rows: '2', 'data-k': `text ${label}` });
  area.value = text || '';
  const go = async (event) => {
    event?.preventDefault();
    const typed = area.value.trim();
    if (!typed) { area.focus(); return; }
    area.disabled = false;
    if (await send(typed)) { area.value = ''; area.focus(); }
  };
  const picker = share && h('input', { type: 'file', class: 'unseen', tabindex: '-1', 'aria-hidden': 'true', onchange: async () => {
    const f = picker.files[0];
    if (!f) return;
    if (f.size > 8e6) { status('That file is above 8 MB, too large for the workspace.', true); return; }
    const reader = new FileReader();
    reader.onload = async () => { if (await share(f, String(reader.result).split(',')[1], area.value.trim())) area.value = ''; };
    reader.readAsDataURL(f);
    picker.value = '';
  } });
  form.replaceChildren(
    h('label', { for: id }, label), area,
    h('p', { class: 'row' },
      h('button', { class: 'main' }, button || 'Send'),
      share && h('button', { type: 'button', onclick: () => picker.click() }, 'Share a file'),
      share && h('button', { type: 'button', onclick: () => { const said = area.value.trim(); if (!said) { status('Type what is said, then send it as a voice message.', true); area.focus(); return; } share(null, said).then((ok) => { if (ok) area.value = ''; }); } }, 'Send as voice'),
      (shortcuts || []).map((s) => h('button', { type: 'button', 'data-k': s.label, onclick: (event) => s.run(event.currentTarget) }, s.label)),
      leave && h('button', { type: 'button', onclick: leave }, 'Leave'),
      hint && h('span', { class: 'hint' }, hint)),
    picker || '');
  form.onsubmit = go;
  area.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && !event.shiftKey && !event.isComposing) go(event);
    if (event.key === 'Escape' && leave) { event.stopPropagation(); leave(); }
  });
}
