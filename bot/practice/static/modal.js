// The modal on top of those that are open.

import { h, replace, status } from './dom.js';
import { plainText } from './mrkdwn.js';
import { blocks } from './blocks.js';

let drawn = '';
let values = {}; // what was entered, by view: kept when the app changes the view

export function drawModal(dialog, state, doing) {
  const view = state.modals?.[state.modals.length - 1];
  if (!view) {
    drawn = '';
    values = {};
    if (dialog.open) dialog.close();
    return;
  }
  if (drawn === view.id + view.hash) return;
  show(dialog, view, state, doing, {});
}

function show(dialog, view, state, doing, errors) {
  drawn = view.id + view.hash;
  const ctx = {
    names: state.names, people: state.people, channels: state.channels, key: state.key, errors, fields: [],
    state: { ...view.state?.values, ...values[view.id] },
    press: (block, e, value, el) => { remember(view, ctx); doing.press({ do: 'press', view: view.id, block: block.block_id, action: e.action_id, value }, el); },
  };
  const submit = async (event) => {
    event.preventDefault();
    const entered = {};
    for (const f of ctx.fields) (entered[f.block] ||= {})[f.action] = f.read();
    const got = await doing.act({ do: 'submit', view: view.id, values: entered }, true);
    if (got?.errors && Object.keys(got.errors).length) {
      remember(view, ctx);
      show(dialog, view, state, doing, got.errors);
      dialog.querySelector('.mend').focus();
    }
  };
  const leave = () => doing.act({ do: 'close', view: view.id });
  const wrong = Object.keys(errors).length;
  const content = blocks(view.blocks, ctx);
  replace(dialog, h('form', { novalidate: true, onsubmit: submit },
    h('h2', { id: 'modaltitle', tabindex: '-1' }, plainText(view.title.text)),
    wrong > 0 && h('p', { class: 'wrong mend', tabindex: '-1', role: 'alert' }, wrong === 1 ? 'One field needs mending; it says how.' : `${wrong} fields need mending; each says how.`),
    content,
    h('p', { class: 'row' },
      view.submit && h('button', { class: 'main', 'data-k': 'submit' }, plainText(view.submit.text)),
      h('button', { type: 'button', 'data-k': 'leave', onclick: leave }, plainText(view.close?.text || 'Close')))));
  dialog.oncancel = (event) => { event.preventDefault(); leave(); };
  if (!dialog.open) {
    dialog.showModal();
    (dialog.querySelector('input, textarea, select') || dialog.querySelector('h2')).focus();
  }
  status('');
}

// remember keeps what was typed while the app answers.
function remember(view, ctx) {
  const kept = (values[view.id] ||= {});
  for (const f of ctx.fields) {
    const v = f.read();
    (kept[f.block] ||= {})[f.action] = v.length > 1 ? { selected_options: v.map((value) => ({ value })) } : { value: v[0], selected_option: v[0] ? { value: v[0] } : null };
  }
}
