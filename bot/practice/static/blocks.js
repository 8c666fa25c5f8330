// Blocks of messages, modals and home tabs. A context tells who looks and
// what pressing does: {names, people, channels, press(block, element, value), errors}.

import { h, newID } from './dom.js';
import { textObject, plainText, richText, mrkdwn, link } from './mrkdwn.js';
import { chart } from './chart.js';
import { control, field } from './elements.js';

export function blocks(list, ctx) {
  return (list || []).map((b) => block(b, ctx));
}

function block(b, ctx) {
  const { names } = ctx;
  switch (b.type) {
    case 'section':
      return h('div', { class: 'section' },
        h('div', {}, b.text && h('p', {}, textObject(b.text, names)),
          b.fields && h('ul', { class: 'fields' }, b.fields.map((f) => h('li', {}, textObject(f, names))))),
        b.accessory && (b.accessory.type === 'image' ? picture(b.accessory, ctx) : control(b, b.accessory, ctx)));
    case 'header': return h('h4', {}, plainText(b.text.text));
    case 'divider': return h('hr');
    case 'context':
      return h('p', { class: 'context' }, b.elements.map((e) => h('span', {}, e.type === 'image' ? picture(e, ctx) : textObject(e, names))));
    case 'actions': return h('div', { class: 'row' }, b.elements.map((e) => control(b, e, ctx)));
    case 'image': return h('figure', {}, b.title && h('figcaption', {}, plainText(b.title.text)), picture(b, ctx));
    case 'input': return field(b, ctx);
    case 'rich_text': return h('div', { class: 'rich' }, richText(b, names));
    case 'markdown': return h('div', { class: 'rich' }, markdown(b.text));
    case 'table': case 'data_table': return grid(b, names);
    case 'data_visualization': return chart(b);
    case 'container':
      return h('section', { class: 'box' }, b.title && h('h4', {}, plainText(b.title.text)), b.subtitle && h('p', {}, textObject(b.subtitle, names)), blocks(b.child_blocks, ctx));
    case 'alert': return h('p', { class: 'alert' }, textObject(b.text, names));
    default: return h('p', { class: 'context' }, `(a ${b.type} block, which this page does not draw)`);
  }
}

// picture shows pictures of this workspace; others are named and linked, as
// the page asks nobody else for anything.
export function picture(b, ctx) {
  const address = b.image_url || b.slack_file?.url || (b.slack_file && `${location.origin}/files/${b.slack_file.id}/picture`) || '';
  if (address.startsWith(`${location.origin}/files/`)) return h('img', { src: `${new URL(address).pathname}?key=${ctx.key}`, alt: b.alt_text || '' });
  return h('span', { class: 'elsewhere' }, 'Picture elsewhere: ', link(address, b.alt_text || address));
}

function grid(b, names) {
  const head = b.rows[0] || [];
  const rowHead = b.type === 'data_table' ? b.row_header_column_index || 0 : -1;
  const cell = (c) => (c.type === 'rich_text' ? richText(c, names) : c.text ?? String(c.value ?? ''));
  const caption = b.caption ? newID('table') : undefined;
  return h('div', { class: 'wide', tabindex: '0', role: 'group', 'aria-label': b.caption || 'Table' },
    h('table', {}, b.caption && h('caption', { id: caption }, b.caption),
      h('thead', {}, h('tr', {}, head.map((c) => h('th', { scope: 'col' }, cell(c))))),
      h('tbody', {}, b.rows.slice(1).map((r) => h('tr', {}, r.map((c, i) => (i === rowHead ? h('th', { scope: 'row' }, cell(c)) : h('td', {}, cell(c)))))))));
}

// markdown knows headings, lists and bold: what a bot needs.
function markdown(text) {
  return text.split('\n').map((line) => {
    const bold = (s) => s.split(/\*\*([^*]+)\*\*/).map((part, i) => (i % 2 ? h('strong', {}, part) : part));
    const head = /^#{1,6} (.*)/.exec(line);
    if (head) return h('h4', {}, bold(head[1]));
    const item = /^[-*] (.*)/.exec(line);
    if (item) return h('p', {}, '• ', bold(item[1]));
    return h('p', {}, bold(line));
  });
}

// body is what a message shows: its blocks, or its text.
export function body(m, ctx) {
  return h('div', { class: 'body' },
    m.blocks?.length ? blocks(m.blocks, ctx) : m.text && h('p', {}, mrkdwn(m.text, ctx.names)),
    (m.files || []).map((f) => file(f, ctx)));
}

function file(f, ctx) {
  const address = `${new URL(f.url_private).pathname}?key=${ctx.key}`;
  if (f.subtype === 'slack_audio') {
    const t = f.transcription || {};
    return h('p', { class: 'file' }, 'Voice message. ', t.status === 'complete' ? `What was said: “${t.preview.content}${t.preview.has_more ? '…' : ''}”` : 'The transcript is not ready yet.');
  }
  if ((f.mimetype || '').startsWith('image/')) {
    return h('figure', {}, h('img', { src: address, alt: f.alt_txt || f.title || f.name }), h('figcaption', {}, f.title || f.name));
  }
  return h('p', { class: 'file' }, 'File: ', h('a', { href: address }, f.name), ` (${f.size} bytes)`);
}
