// The log of a channel: the newest message on top, its replies under it in
// the order they came.

import { h, replace, sure, status } from './dom.js';
import { body } from './blocks.js';
import { emoji, emojiGlyph, emojiWord } from './mrkdwn.js';
import { composer } from './write.js';

const reactions = ['eyes', 'white_check_mark', 'question', 'warning', '+1', 'heart'];
let shown = new Map(); // ts -> what was drawn, to leave alone what has not changed
let shownPlace = '';

export function drawLog(log, state, doing) {
  if (shownPlace !== state.as + state.place) {
    shown = new Map();
    shownPlace = state.as + state.place;
    log.replaceChildren();
  }
  const seen = new Set();
  let day = '';
  const order = [];
  for (const entry of state.entries) {
    const ts = entry.message.ts;
    seen.add(ts);
    if (entry.message.day !== day) {
      day = entry.message.day;
      order.push(keep(`day ${day}`, seen, () => h('h3', { class: 'day' }, day)));
    }
    const el = keep(ts, seen, () => h('section', { class: 'entry', 'aria-label': 'Message and replies', 'data-ts': ts }, h('div', { class: 'first' }), h('ol', { class: 'replies', 'aria-label': 'Replies' }), h('div', { class: 'answer' })));
    drawEntry(el, entry, state, doing);
    order.push(el);
  }
  for (const key of shown.keys()) if (!seen.has(key)) { shown.get(key).remove(); shown.delete(key); }
  let at = log.firstChild;
  for (const el of order) {
    if (el === at) at = at.nextSibling;
    else log.insertBefore(el, at);
  }
  while (at) { const next = at.nextSibling; at.remove(); at = next; }
  if (!order.length) log.append(h('p', { class: 'empty' }, 'Nothing has been written here yet.'));
  if (state.earlier) log.append(h('p', { class: 'row' }, h('button', { type: 'button', 'data-k': 'earlier', onclick: doing.earlier }, `Show older ones (${state.earlier})`)));
}

function keep(key, seen, make) {
  seen.add(key);
  if (!shown.has(key)) shown.set(key, make());
  return shown.get(key);
}

function drawEntry(el, entry, state, doing) {
  const [first, list, answer] = el.children;
  draw(first, entry.message, state, doing);
  const replies = entry.replies || [];
  const open = el.dataset.all === 'yes' ? 0 : Math.max(0, replies.length - 8);
  const items = [];
  if (open) items.push(h('li', {}, h('button', { type: 'button', 'data-k': `all ${entry.message.ts}`, onclick: () => { el.dataset.all = 'yes'; drawEntry(el, entry, state, doing); } }, `Show ${open} replies before`)));
  const old = new Map([...list.children].map((li) => [li.dataset.ts, li]));
  for (const m of replies.slice(open)) {
    const li = old.get(m.ts) || h('li', { 'data-ts': m.ts });
    draw(li, m, state, doing);
    items.push(li);
  }
  if (items.length !== list.children.length || items.some((x, i) => x !== list.children[i])) {
    const key = list.contains(document.activeElement) ? document.activeElement.dataset.k : '';
    list.replaceChildren(...items);
    if (key) list.querySelector(`[data-k="${CSS.escape(key)}"]`)?.focus();
  }
  list.hidden = !items.length;
  if (entry.message.only_you || entry.message.subtype === 'tombstone') { answer.replaceChildren(); return; }
  if (!answer.firstChild) answer.append(replyButton(entry.message, answer, doing));
}

function replyButton(m, place, doing) {
  return h('button', { type: 'button', class: 'quiet', 'data-k': `reply ${m.ts}`, onclick: () => {
    const form = h('form', { class: 'write' });
    const leave = () => { const b = replyButton(m, place, doing); place.replaceChildren(b); b.focus(); };
    composer(form, { label: 'Your reply', send: (text) => doing.act({ do: 'say', thread_ts: m.ts, text }), leave });
    place.replaceChildren(form);
    form.querySelector('textarea').focus();
  } }, 'Reply');
}

function draw(place, m, state, doing) {
  const drawn = JSON.stringify([m, state.as]);
  if (place.drawn === drawn) return;
  place.drawn = drawn;
  const ctx = {
    names: state.names, people: state.people, channels: state.channels, state: {}, key: state.key,
    press: (block, e, value, el) => doing.press({ do: 'press', ts: m.ts, block: block.block_id, action: e.action_id, value }, el),
  };
  const who = state.names[m.user] || m.user;
  const mine = m.user === state.as && !m.bot_id;
  const tags = [m.bot_id && 'app', m.edited && 'edited', m.only_you && 'only you see this', m.broadcast && 'also to the channel'].filter(Boolean);
  const article = h('article', { tabindex: '-1', 'aria-label': `${who}, ${m.at}` },
    h('p', { class: 'by' }, h('strong', {}, who), ' ', h('time', { title: m.at }, m.time), tags.map((t) => [' ', h('span', { class: 'tag' }, t)])),
    body(m, ctx),
    (m.reactions || []).length > 0 && h('ul', { class: 'reactions', 'aria-label': 'Reactions' }, m.reactions.map((r) => h('li', {}, emojiGlyph(r.name) && h('span', { 'aria-hidden': 'true' }, emojiGlyph(r.name)), ` ${emojiWord(r.name)}: ${r.users.map((u) => state.names[u] || u).join(', ')}`))),
    m.subtype !== 'tombstone' && !m.only_you && more(m, mine, state, doing));
  replace(place, article);
}

// more is a message's menu: reactions, what apps offer, and for one's own
// messages edit and delete.
function more(m, mine, state, doing) {
  const details = h('details', { class: 'more' });
  const item = (key, label, run) => h('li', {}, h('button', { type: 'button', class: 'quiet', 'data-k': `${key} ${m.ts}`, onclick: (event) => { details.open = false; run(event.currentTarget); } }, label));
  details.append(h('summary', { 'data-k': `more ${m.ts}` }, 'More'),
    h('ul', {},
      state.apps.filter((a) => a.joined).flatMap((a) => (a.shortcuts || []).filter((s) => !s.global).map((s) => item(`shortcut ${s.callback_id}`, `${s.name} (${a.name})`, (el) => doing.press({ do: 'shortcut', ts: m.ts, name: s.callback_id }, el)))),
      reactions.map((name) => item(`react ${name}`, [emoji(name), ` ${emojiWord(name)}`], () => doing.act({ do: 'react', ts: m.ts, name }))),
      mine && item('edit', 'Edit', () => edit(m, details.closest('article'), doing)),
      mine && item('delete', 'Delete', async () => { if (await sure('Delete this message?', 'The apps are told that it is gone.', 'Delete', 'Keep')) doing.act({ do: 'delete', ts: m.ts }); })));
  details.addEventListener('keydown', (event) => { if (event.key === 'Escape' && details.open) { details.open = false; details.querySelector('summary').focus(); event.stopPropagation(); } });
  return details;
}

function edit(m, article, doing) {
  const form = h('form', { class: 'write' });
  const old = article.querySelector('.body');
  const leave = () => { form.replaceWith(old); article.querySelector('summary')?.focus(); };
  const text = m.text.replace(/<(?:[^<>|]*\|)?([^<>]*)>/g, (all, label) => (label.startsWith('@') ? '@' + (doing.name(label.slice(1)) || label.slice(1)) : label))
    .replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&amp;/g, '&');
  composer(form, { label: 'Edit the message', text, button: 'Save', send: async (t) => { const ok = await doing.act({ do: 'edit', ts: m.ts, text: t }); if (ok) leave(); return ok; }, leave });
  old.replaceWith(form);
  form.querySelector('textarea').focus();
}

// Arrow keys go from message to message.
export function arrows(log) {
  log.addEventListener('keydown', (event) => {
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    const here = event.target;
    if (!(here instanceof HTMLElement) || here.closest('textarea, input, select')) return;
    const all = [...log.querySelectorAll('article')];
    const i = all.indexOf(here.closest('article'));
    const next = all[i + (event.key === 'ArrowDown' ? 1 : -1)];
    if (!next) return;
    event.preventDefault();
    next.focus();
    next.scrollIntoView({ block: 'nearest' });
  });
}

// heard tells in one line what is new, for those who listen to the page.
let newest = {};
export function heard(state) {
  const key = state.as + state.place;
  const all = (state.entries || []).flatMap((e) => [e.message, ...(e.replies || [])]);
  const last = all.reduce((a, m) => (m.ts > a ? m.ts : a), '');
  const before = newest[key];
  newest[key] = last;
  if (before === undefined) return;
  const fresh = all.filter((m) => m.ts > before && (m.user !== state.as || m.bot_id)).sort((a, b) => (a.ts < b.ts ? -1 : 1));
  if (fresh.length) document.getElementById('heard').textContent = fresh.map((m) => `${state.names[m.user] || m.user}: ${(m.text || '').split('\n')[0].replace(/<[^>]*>/g, '')}`).join('. ');
}

export { status };
