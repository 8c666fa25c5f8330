// The panel of things that can be made to go wrong.

import { h, replace, newID } from './dom.js';

const once = [
  ['rate_limit', 'Refuse the next call: too many, wait 2 seconds', { retry_after: 2e9 }],
  ['server_error', 'Answer the next call with a server error'],
  ['lost_answer', 'Carry out the next call, but lose the answer'],
  ['lost_call', 'Lose the next call before it is carried out'],
  ['duplicate', 'Send the next event twice'],
  ['ignore_acks', 'Do not hear the next acknowledgement'],
  ['sent_twice', 'Let the next message arrive as two messages'],
];
const lasting = [
  ['delay', 'Delay every event by 3 seconds', 3e9],
  ['slow', 'Let every call take 2 seconds', 2e9],
  ['out_of_order', 'Swap the order of events', true],
  ['echo_threads', 'Report a thread’s first message as changed with every reply', true],
  ['hold_rates', 'Hold apps to the platform’s rates', true],
];
const lines = [
  ['drop', 'Cut its sockets'], ['refresh', 'Ask it to reconnect'], ['warning', 'Warn it that its socket closes soon'],
  ['link_off', 'Switch Socket Mode off for it'], ['link_on', 'Switch Socket Mode on again'],
];

let drawn = '';

export function drawPanel(place, state, doing) {
  const key = JSON.stringify([state.faults, state.apps.map((a) => [a.id, a.sockets, a.off])]);
  if (drawn === key) return;
  drawn = key;
  const f = state.faults;
  const app = place.querySelector('select.app')?.value || state.apps[0].id;
  const method = place.querySelector('select.method')?.value ?? f.method;
  const set = (more) => doing.act({ do: 'faults', faults: { ...f, method: place.querySelector('select.method').value, ...more } });
  const appID = newID('app'), methodID = newID('method');
  replace(place,
    h('h3', {}, 'Once'),
    h('p', {}, h('label', { for: methodID }, 'Calls of '),
      h('select', { id: methodID, class: 'method', 'data-k': 'method' }, ['', 'chat.postMessage', 'chat.update', 'reactions.add', 'views.open', 'views.publish'].map((m) => h('option', { value: m, selected: m === method }, m || 'any method')))),
    h('ul', { class: 'plainlist' }, once.map(([name, label, more]) => h('li', {},
      h('button', { type: 'button', 'data-k': name, onclick: () => set({ [name]: (f[name] || 0) + 1, ...more }) }, label), f[name] > 0 && h('span', { class: 'tag' }, ` waiting: ${f[name]}`)))),
    h('h3', {}, 'Until switched off'),
    h('ul', { class: 'plainlist' }, lasting.map(([name, label, value]) => {
      const id = newID('fault');
      return h('li', {}, h('input', { type: 'checkbox', id, checked: Boolean(f[name]), 'data-k': name, onchange: (event) => set({ [name]: event.target.checked ? value : typeof value === 'number' ? 0 : false }) }), h('label', { for: id }, label));
    })),
    h('h3', {}, 'The line to an app'),
    h('p', {}, h('label', { for: appID }, 'App '),
      h('select', { id: appID, class: 'app', 'data-k': 'app' }, state.apps.map((a) => h('option', { value: a.id, selected: a.id === app }, `${a.name} (${a.off ? 'Socket Mode off' : a.sockets === 1 ? '1 socket' : `${a.sockets} sockets`})`)))),
    h('ul', { class: 'plainlist' }, lines.map(([name, label]) => h('li', {}, h('button', { type: 'button', 'data-k': name, onclick: () => doing.act({ do: name, app: place.querySelector('select.app').value }) }, label)))));
}
