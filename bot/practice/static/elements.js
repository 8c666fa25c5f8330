// Interactive elements. In messages and home tabs a menu or a field has a
// button of its own beside it, so that nothing happens while choosing; in a
// modal's input blocks the modal's own button sends everything.

import { h, newID, sure } from './dom.js';
import { textObject, plainText } from './mrkdwn.js';

const optionsOf = (e) => [...(e.options || []), ...(e.option_groups || []).flatMap((g) => g.options || [])];

function current(ctx, block, e) {
  const s = ctx.state?.[block.block_id]?.[e.action_id];
  if (!s) return undefined;
  if (s.selected_options) return s.selected_options.map((o) => o.value);
  if (s.selected_option !== undefined) return s.selected_option ? [s.selected_option.value] : [];
  for (const k of ['value', 'selected_date', 'selected_time', 'selected_user', 'selected_channel', 'selected_conversation']) {
    if (s[k] !== undefined && s[k] !== null) return [String(s[k])];
  }
  for (const k of ['selected_users', 'selected_channels', 'selected_conversations']) if (s[k]) return s[k];
  return [];
}

function initial(e) {
  if (e.initial_option) return [e.initial_option.value];
  if (e.initial_options) return e.initial_options.map((o) => o.value);
  for (const k of ['initial_value', 'initial_date', 'initial_time', 'initial_user', 'initial_channel', 'initial_conversation']) if (e[k]) return [String(e[k])];
  return e.initial_users || e.initial_channels || e.initial_conversations || [];
}

// entry builds the thing to enter with, and read() which returns what was
// entered.
function entry(block, e, ctx, attrs) {
  const chosen = current(ctx, block, e) ?? initial(e);
  const key = `${block.block_id}/${e.action_id}`;
  const choices = optionsOf(e);
  const option = (o) => h('option', { value: o.value, selected: chosen.includes(o.value) }, o.text.text);
  const select = (children) => {
    const el = h('select', { ...attrs, 'data-k': key }, h('option', { value: '' }, e.placeholder?.text || 'Choose…'), children);
    return { el, read: () => (el.value ? [el.value] : []) };
  };
  const boxes = (kind, list) => {
    const name = newID('choice');
    const inputs = list.map((o) => {
      const id = newID('box');
      const described = o.description ? newID('about') : undefined;
      return { o, el: h('input', { type: kind, name, id, value: o.value, checked: chosen.includes(o.value), 'aria-describedby': described, 'data-k': `${key}/${o.value}` }), id, described };
    });
    const el = h('div', { class: 'choices' }, inputs.map(({ o, el: box, id, described }) => h('div', {}, box, h('label', { for: id }, textObject(o.text, ctx.names)),
      o.description && h('span', { class: 'hint', id: described }, textObject(o.description, ctx.names)))));
    return { el, read: () => inputs.filter((x) => x.el.checked).map((x) => x.o.value), group: true };
  };
  const person = (p) => ({ value: p.id, text: { type: 'plain_text', text: p.real } });
  const place = (c) => ({ value: c.id, text: { type: 'plain_text', text: c.im ? c.name : '#' + c.name } });
  const input = (type, more) => {
    const el = h('input', { type, value: chosen[0] || '', placeholder: e.placeholder?.text, ...more, ...attrs, 'data-k': key });
    el.value = chosen[0] || '';
    return { el, read: () => (el.value ? [el.value] : []) };
  };
  switch (e.type) {
    case 'static_select':
      return select(e.option_groups ? e.option_groups.map((g) => h('optgroup', { label: g.label.text }, g.options.map(option))) : choices.map(option));
    case 'overflow': return select(choices.map(option));
    case 'users_select': return select(ctx.people.map(person).map(option));
    case 'channels_select': case 'conversations_select': return select(ctx.channels.map(place).map(option));
    case 'multi_static_select': case 'checkboxes': return boxes('checkbox', choices);
    case 'multi_users_select': return boxes('checkbox', ctx.people.map(person));
    case 'multi_channels_select': case 'multi_conversations_select': return boxes('checkbox', ctx.channels.map(place));
    case 'radio_buttons': return boxes('radio', choices);
    case 'datepicker': return input('date');
    case 'timepicker': return input('time');
    case 'datetimepicker': {
      const el = h('input', { type: 'datetime-local', ...attrs, 'data-k': key });
      return { el, read: () => (el.value ? [String(Date.parse(el.value) / 1000)] : []) };
    }
    case 'number_input': return input('text', { inputmode: e.is_decimal_allowed ? 'decimal' : 'numeric', autocomplete: 'off' });
    case 'email_text_input': return input('email', { autocomplete: 'off' });
    case 'url_text_input': return input('url', { autocomplete: 'off' });
    case 'plain_text_input':
      if (e.multiline) {
        const el = h('textarea', { rows: '4', placeholder: e.placeholder?.text, ...attrs, 'data-k': key });
        el.value = chosen[0] || '';
        return { el, read: () => (el.value ? [el.value] : []) };
      }
      return input('text', { autocomplete: 'off' });
    default: return null;
  }
}

const asked = async (e) => !e.confirm || sure(e.confirm.title.text, e.confirm.text.text, e.confirm.confirm.text, e.confirm.deny.text);

// control is an element that acts at once.
export function control(block, e, ctx) {
  const key = `${block.block_id}/${e.action_id}`;
  if (e.type === 'button') {
    const press = async (event) => { if (await asked(e)) ctx.press(block, e, [], event.currentTarget); };
    const kind = e.style === 'primary' ? 'main' : e.style === 'danger' ? 'danger' : '';
    if (e.url) return h('a', { class: 'button', href: e.url, rel: 'noopener noreferrer', target: '_blank', 'data-k': key, onclick: press }, plainText(e.text.text));
    return h('button', { type: 'button', class: kind, 'data-k': key, 'aria-label': e.accessibility_label, onclick: press }, plainText(e.text.text));
  }
  const label = e.placeholder?.text || { overflow: 'More', datepicker: 'Date', timepicker: 'Time' }[e.type] || 'Choose';
  const parts = entry(block, e, ctx, { 'aria-label': label });
  if (!parts) return h('span', { class: 'context' }, `(a ${e.type}, which this page does not draw)`);
  const go = async (event) => {
    const value = parts.read();
    if (e.type === 'overflow' && !value.length) return;
    if (await asked(e)) ctx.press(block, e, value, event.currentTarget);
  };
  const button = h('button', { type: 'button', 'data-k': `${key}/go`, 'aria-label': `OK: ${label}`, onclick: go }, 'OK');
  if (parts.group) return h('fieldset', { class: 'pick' }, h('legend', {}, label), parts.el, button);
  return h('span', { class: 'pick' }, parts.el, button);
}

// field is an input block of a modal or home tab, with its label, hint and
// error. ctx.fields collects what can be read when the form is sent.
export function field(b, ctx) {
  const id = newID('field'), hint = b.hint ? newID('hint') : '', wrong = ctx.errors?.[b.block_id], error = wrong ? newID('error') : '';
  const described = [hint, error].filter(Boolean).join(' ') || undefined;
  const parts = entry(b, b.element, ctx, { id, 'aria-describedby': described, 'aria-invalid': wrong ? 'true' : undefined, 'aria-required': b.optional ? undefined : 'true' });
  if (!parts) return h('p', { class: 'context' }, `(a ${b.element.type}, which this page does not draw)`);
  ctx.fields?.push({ block: b.block_id, action: b.element.action_id, read: parts.read });
  const label = [plainText(b.label.text), b.optional && h('span', { class: 'hint' }, ' (may stay empty)')];
  const rest = [b.hint && h('p', { class: 'hint', id: hint }, plainText(b.hint.text)), wrong && h('p', { class: 'wrong', id: error }, `Please mend: ${wrong}`)];
  const now = b.dispatch_action && h('button', { type: 'button', 'data-k': `${b.block_id}/now`, 'aria-label': `OK: ${b.label.text}`, onclick: (event) => ctx.press(b, b.element, parts.read(), event.currentTarget) }, 'OK');
  if (parts.group) return h('fieldset', { class: 'field', 'aria-describedby': described }, h('legend', {}, label), parts.el, now, rest);
  return h('div', { class: 'field' }, h('label', { for: id }, label), parts.el, now, rest);
}
