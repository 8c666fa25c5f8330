// Text in the platform's own form, made into nodes. Nothing of it is ever
// read as HTML.

import { h } from './dom.js';

const unescape = (s) => s.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&amp;/g, '&');

const glyphs = {
  white_check_mark: '✅', heavy_check_mark: '✔️', question: '❓', grey_question: '❔', eyes: '👀', warning: '⚠️', x: '❌',
  '+1': '👍', '-1': '👎', inbox_tray: '📥', wastebasket: '🗑️', file_folder: '📁', clock1: '🕐', rotating_light: '🚨',
  no_entry_sign: '🚫', droplet: '💧', wrench: '🔧', memo: '📝', heart: '❤️', tada: '🎉', wave: '👋', thinking_face: '🤔',
  ballot_box_with_check: '☑️', red_circle: '🔴', large_yellow_circle: '🟡', large_green_circle: '🟢', hourglass_flowing_sand: '⏳',
};

// emojiWord is an emoji in words: what is shown and what is read aloud.
export const emojiWord = (name) => name.replace(/[_-]/g, ' ').replace(/^\+1$/, 'thumbs up').replace(/^ 1$/, 'thumbs down');
export const emojiGlyph = (name) => glyphs[name] || '';

export function emoji(name) {
  const glyph = emojiGlyph(name);
  if (!glyph) return document.createTextNode(`:${name}:`);
  return h('span', { role: 'img', 'aria-label': emojiWord(name) }, glyph);
}

const tokens = /```([\s\S]*?)```|<([^<>\n]+)>|:([a-z0-9_+-]+):|(?<![\p{L}\p{N}])`([^`\n]+)`(?![\p{L}\p{N}])|(?<![\p{L}\p{N}])\*(?=\S)([^*\n]*[^*\s])\*(?![\p{L}\p{N}])|(?<![\p{L}\p{N}])_(?=\S)([^_\n]*[^_\s])_(?![\p{L}\p{N}])|(?<![\p{L}\p{N}])~(?=\S)([^~\n]*[^~\s])~(?![\p{L}\p{N}])/gu;

function spans(text, names) {
  const out = [];
  let from = 0;
  for (const m of text.matchAll(tokens)) {
    if (m.index > from) out.push(unescape(text.slice(from, m.index)));
    from = m.index + m[0].length;
    if (m[1] !== undefined) out.push(h('pre', {}, unescape(m[1])));
    else if (m[2] !== undefined) out.push(reference(m[2], names));
    else if (m[3] !== undefined) out.push(emoji(m[3]));
    else if (m[4] !== undefined) out.push(h('code', {}, unescape(m[4])));
    else if (m[5] !== undefined) out.push(h('strong', {}, spans(m[5], names)));
    else if (m[6] !== undefined) out.push(h('em', {}, spans(m[6], names)));
    else out.push(h('s', {}, spans(m[7], names)));
  }
  if (from < text.length) out.push(unescape(text.slice(from)));
  return out;
}

// reference is what stands between < and >.
function reference(ref, names) {
  const bar = ref.indexOf('|');
  const target = bar < 0 ? ref : ref.slice(0, bar);
  const label = bar < 0 ? '' : unescape(ref.slice(bar + 1));
  if (target.startsWith('@')) return mention('@' + (names[target.slice(1)] || label || target.slice(1)));
  if (target.startsWith('#')) return mention('#' + (names[target.slice(1)] || label || target.slice(1)));
  if (target.startsWith('!subteam^')) return mention('@' + (names[target.slice(9)] || label || target.slice(9)));
  if (target.startsWith('!date^')) return h('span', { class: 'date' }, label);
  if (target.startsWith('!')) return mention('@' + (label || target.slice(1)));
  return link(unescape(target), label);
}

export const mention = (text) => h('span', { class: 'mention' }, text);

export function link(address, label) {
  if (!/^(https?|mailto|tel):/i.test(address)) return document.createTextNode(label || address);
  if (address.startsWith(location.origin + '/')) return h('a', { href: address }, label || address);
  return h('a', { href: address, rel: 'noopener noreferrer', target: '_blank' }, label || address);
}

// mrkdwn makes paragraphs, quotes and lists of a text.
export function mrkdwn(text, names) {
  const out = [];
  let quote = null;
  const parts = text.split(/(```[\s\S]*?```)/);
  for (const part of parts) {
    if (part.startsWith('```')) { out.push(...spans(part, names)); continue; }
    part.split('\n').forEach((line, i, all) => {
      const quoted = /^(?:&gt;|>) ?(.*)/.exec(line);
      if (quoted) {
        if (!quote) out.push(quote = h('blockquote', {}));
        else quote.append(h('br'));
        quote.append(...spans(quoted[1], names));
        return;
      }
      const after = quote;
      quote = null;
      if (i > 0 && !after) out.push(h('br'));
      out.push(...spans(line, names));
    });
  }
  return out;
}

// richText makes nodes of a rich_text block.
export function richText(block, names) {
  return (block.elements || []).map((part) => {
    switch (part.type) {
      case 'rich_text_quote': return h('blockquote', {}, pieces(part, names));
      case 'rich_text_preformatted': return h('pre', {}, pieces(part, names));
      case 'rich_text_list': return h(part.style === 'ordered' ? 'ol' : 'ul', {}, part.elements.map((item) => h('li', {}, pieces(item, names))));
      default: return h('p', {}, pieces(part, names));
    }
  });
}

function pieces(part, names) {
  return (part.elements || []).map((e) => {
    let node;
    switch (e.type) {
      case 'user': node = mention('@' + (names[e.user_id] || e.user_id)); break;
      case 'channel': node = mention('#' + (names[e.channel_id] || e.channel_id)); break;
      case 'usergroup': node = mention('@' + (names[e.usergroup_id] || e.usergroup_id)); break;
      case 'broadcast': node = mention('@' + e.range); break;
      case 'emoji': node = emoji(e.name); break;
      case 'link': node = link(e.url, e.text); break;
      case 'date': node = document.createTextNode(e.fallback || ''); break;
      default: node = h('span', { class: 'plain' }, e.text || ''); break;
    }
    const style = e.style || {};
    if (style.code) node = h('code', {}, node);
    if (style.bold) node = h('strong', {}, node);
    if (style.italic) node = h('em', {}, node);
    if (style.strike) node = h('s', {}, node);
    return node;
  });
}

// textObject makes nodes of a plain_text or mrkdwn object.
export function textObject(t, names) {
  if (!t) return [];
  if (t.type === 'mrkdwn') return mrkdwn(t.text, names);
  return plainText(t.text);
}

export function plainText(text) {
  const out = [];
  let from = 0;
  for (const m of text.matchAll(/:([a-z0-9_+-]+):/g)) {
    if (!glyphs[m[1]]) continue;
    out.push(text.slice(from, m.index), emoji(m[1]));
    from = m.index + m[0].length;
  }
  out.push(text.slice(from));
  return out;
}
