// The page: who you are, where you look, and what you do there. All state is
// the workspace's; every tab remembers only its person and place.

import { h, replace, status } from './dom.js';
import { composer } from './write.js';
import { drawLog, arrows, heard } from './log.js';
import { drawModal } from './modal.js';
import { drawPanel } from './panel.js';
import { blocks } from './blocks.js';

const $ = (id) => document.getElementById(id);
const remember = (key, value) => { try { sessionStorage.setItem(key, value); } catch { /* a tab without storage forgets */ } };
const recall = (key) => { try { return sessionStorage.getItem(key); } catch { return null; } };

let who = new URLSearchParams(location.search).get('as') || recall('who') || '';
let [place, wanted] = target();
place ||= recall('place') || '';
let count = 40;
let state = null;
let clockOffset = 0;
const read = JSON.parse(recall('read') || '{}');

// target is the place and the message that the address names.
function target() {
  const [to, ts] = decodeURIComponent(location.hash.slice(1)).split('/');
  return /^(write|sheet)$/.test(to) ? ['', ''] : [to || '', ts || ''];
}

// load fetches what is to be seen; calls that come meanwhile wait for one more.
let loading = false, again = false;
async function load() {
  if (loading) { again = true; return; }
  loading = true;
  do {
    again = false;
    try {
      const asked = who + place;
      const r = await fetch(`/page/state?${new URLSearchParams({ as: who, place, count, ts: wanted || '' })}`);
      if (!r.ok) throw new Error(await r.text());
      const got = await r.json();
      if (asked !== who + place) { again = true; continue; }
      state = got;
      who = state.as;
      place = state.place;
      draw();
    } catch (e) { status(`The workspace does not answer: ${e.message}`, true); }
  } while (again);
  loading = false;
}

// act does something as the person of this tab. It returns the answer, or
// null when it failed, which the status line then says.
async function act(what, quiet) {
  try {
    const r = await fetch('/page/act', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify({ as: who, channel: place.startsWith('home:') ? '' : place, ...what }) });
    const got = r.headers.get('Content-Type')?.startsWith('application/json') ? await r.json() : { ok: false, error: await r.text() };
    if (!got.ok) { status(explain(got.error), true); return null; }
    if (!quiet) status('');
    await load();
    return got;
  } catch (e) { status(`The workspace does not answer: ${e.message}`, true); return null; }
}

function explain(error) {
  if (error.includes('did not answer in time')) return 'The app did not answer in time. Is it running?';
  return `That did not work: ${error}`;
}

const doing = {
  act,
  press: async (what, el) => {
    el?.setAttribute('aria-busy', 'true');
    status('Waiting for the app…');
    const got = await act(what);
    el?.removeAttribute('aria-busy');
    return got;
  },
  earlier: () => { count += 40; load(); },
  name: (id) => state.people.find((p) => p.id === id)?.name || state.names[id],
};

function go(to, ts) {
  place = to;
  wanted = ts;
  count = 40;
  remember('place', to);
  history.replaceState(null, '', `#${to}${ts ? '/' + ts : ''}`);
  status('');
  load().then(() => {
    if (to.startsWith('home:')) act({ do: 'home', app: to.slice(5) });
    $('sheet').focus({ preventScroll: true });
  });
}

function draw() {
  document.title = `${title()} · ${state.workspace}`;
  replace($('who'), state.people.map((p) => h('option', { value: p.id, selected: p.id === who }, `${p.real}, ${p.title}`)));
  $('who').value = who;
  clockOffset = state.now - Date.now();
  tick();
  $('monday').textContent = `Next Monday 7:00`;
  $('monday').title = state.monday;
  $('panel').textContent = `${state.panel ? state.panel + ' ' : ''}Everybody here is invented. Nothing leaves this computer, and nothing is kept here when it stops.`;
  $('api').textContent = state.api;
  $('token').textContent = state.token;
  drawPlaces();
  const home = place.startsWith('home:');
  const channel = state.channels.find((c) => c.id === place);
  $('place').textContent = title();
  $('topic').textContent = home ? 'What the app shows to you alone.' : channel.im ? 'Between you and the app alone.' : channel.topic || '';
  $('write').hidden = home;
  if (home) drawHome();
  else {
    const joined = state.apps.filter((a) => a.joined).map((a) => a.id).join();
    if ($('write').dataset.place !== who + place + joined) {
      const old = $('write').dataset.at === who + place ? $('write').querySelector('textarea') : null;
      const writing = old && old === document.activeElement;
      $('write').dataset.place = who + place + joined;
      $('write').dataset.at = who + place;
      composer($('write'), {
        text: old?.value,
        shortcuts: state.apps.filter((a) => a.joined).flatMap((a) => (a.shortcuts || []).filter((s) => s.global).map((s) => ({ label: `${s.name} (${a.name})`, run: (el) => doing.press({ do: 'shortcut', name: s.callback_id }, el) }))),
        label: channel.im ? `Write to ${channel.name}` : `Write to #${channel.name}`, hint: hints(channel),
        send: (text) => act({ do: 'say', text }),
        share: (f, data, text) => act(f ? { do: 'share', name: f.name, mime: f.type, base64: data, text } : { do: 'voice', text: data }),
      });
      if (writing) $('write').querySelector('textarea').focus();
    }
    drawLog($('log'), state, doing);
  }
  heard(state);
  if (wanted) reach();
  drawModal($('modal'), state, doing);
  drawPanel($('faultpanel'), state, doing);
  if (channel?.latest) { read[who + place] = channel.latest; remember('read', JSON.stringify(read)); }
}

function hints(channel) {
  const commands = state.apps.flatMap((a) => a.commands || []).map((c) => `${c.name}${c.hint ? ' ' + c.hint : ''}`);
  const app = state.apps[0];
  return [!channel.im && app && `@${app.name} speaks to the app.`, commands.length && `Commands: ${commands.join(', ')}.`].filter(Boolean).join(' ');
}

function title() {
  if (place.startsWith('home:')) return `Home of ${state.apps.find((a) => a.id === place.slice(5))?.name || 'an app'}`;
  const c = state.channels.find((x) => x.id === place);
  return c.im ? `Direct messages with ${c.name}` : `#${c.name}`;
}

function drawPlaces() {
  const apps = state.apps.filter((a, i) => i === 0 || a.joined);
  const all = [
    ...state.channels.filter((c) => !c.im).map((c) => ({ id: c.id, label: `#${c.name}`, latest: c.latest })),
    ...apps.flatMap((a) => {
      const dm = state.channels.find((c) => c.id === a.dm);
      return [{ id: a.dm, label: `Direct: ${a.name}`, latest: dm?.latest }, a.home && { id: `home:${a.id}`, label: `Home: ${a.name}` }];
    }),
  ].filter(Boolean);
  for (const p of all) read[who + p.id] ??= p.latest || ''; // what was there before this person looked is not news
  replace($('places'), all.map((p) => {
    const fresh = p.id !== place && p.latest && p.latest > (read[who + p.id] || '');
    return h('li', {}, h('button', { type: 'button', 'data-k': p.id, 'aria-current': p.id === place ? 'page' : undefined, class: fresh ? 'fresh' : '', onclick: () => go(p.id) }, p.label, fresh && h('span', { class: 'new' }, ' new')));
  }));
  const down = state.apps.filter((a, i) => i === 0 && !a.sockets && !a.http);
  $('connected').textContent = down.length ? `${down[0].name} is not connected: nobody will answer.` : '';
}

// reach goes to the message that a link named.
function reach() {
  const el = document.querySelector(`[data-ts="${CSS.escape(wanted)}"] article`);
  wanted = '';
  if (!el) return;
  el.focus();
  el.scrollIntoView({ block: 'center' });
}

let homeDrawn = '';
function drawHome() {
  const v = state.home;
  const key = who + place + (v ? v.id + v.hash : '');
  if (homeDrawn === key && $('log').querySelector('.home')) return;
  homeDrawn = key;
  const ctx = v && {
    names: state.names, people: state.people, channels: state.channels, key: state.key, state: v.state?.values, fields: [],
    press: (block, e, value, el) => doing.press({ do: 'press', view: v.id, block: block.block_id, action: e.action_id, value }, el),
  };
  replace($('log'), h('div', { class: 'home' }, v ? blocks(v.blocks, ctx) : h('p', { class: 'empty' }, 'The app has shown nothing here yet.')));
}

function tick() {
  if (!state) return;
  const at = new Date(Date.now() + clockOffset);
  const text = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit', timeZone: state.zone === 'Local' ? undefined : state.zone, timeZoneName: 'short' }).format(at);
  if ($('now').textContent !== text) $('now').textContent = text;
}

$('who').addEventListener('change', async () => {
  // Direct messages and home tabs are each person's own.
  const app = state.apps.find((a) => a.dm === place);
  who = $('who').value;
  remember('who', who);
  if ($('modal').open) $('modal').close();
  await load();
  status(`You are ${state.people.find((p) => p.id === who)?.real} now.`);
  if (app) go(state.apps.find((a) => a.id === app.id).dm);
  else if (place.startsWith('home:')) act({ do: 'home', app: place.slice(5) }, true);
});
for (const b of document.querySelectorAll('[data-seconds]')) b.addEventListener('click', async () => { if (await act({ do: 'advance', seconds: Number(b.dataset.seconds) })) status(`The clock now says ${$('now').textContent}.`); });
$('monday').addEventListener('click', async () => { if (await act({ do: 'monday' })) status(`The clock now says ${$('now').textContent}.`); });
addEventListener('hashchange', () => { const [to, ts] = target(); if (to) go(to, ts); });
document.querySelectorAll('.skip').forEach((a) => a.addEventListener('click', (event) => {
  event.preventDefault();
  const to = $(a.hash.slice(1));
  (to.querySelector('textarea') || to).focus();
}));
arrows($('log'));
setInterval(tick, 5000);

const stream = new EventSource('/page/stream');
stream.onmessage = (event) => { if (state?.version !== Number(event.data)) load(); };
stream.onerror = () => status('The line to the workspace is cut. It comes back by itself if the workspace does.', true);
stream.onopen = () => { if ($('status').textContent.startsWith('The line')) status(''); };
load().then(() => { if (state && place.startsWith('home:')) act({ do: 'home', app: place.slice(5) }, true); });
