// A small bot on Slack's own framework, in Socket Mode, that knows nothing of
// the workspace it joins but an address and two tokens. It writes one line of
// JSON for everything it does; the test in bot/practice reads them.
'use strict';
const { App, LogLevel } = require('@slack/bolt');

const note = (did, more) => console.log(JSON.stringify({ did, ...more }));

const app = new App({
  token: process.env.BOT_TOKEN,
  appToken: process.env.APP_TOKEN,
  socketMode: true,
  logLevel: LogLevel.ERROR,
  clientOptions: { slackApiUrl: process.env.API },
});

const plain = (text) => ({ type: 'plain_text', text });

app.message(/psi/, async ({ message, say, client }) => {
  await client.reactions.add({ channel: message.channel, timestamp: message.ts, name: 'eyes' });
  await say({
    thread_ts: message.ts,
    text: `heard: ${message.text}`,
    blocks: [
      { type: 'section', text: { type: 'mrkdwn', text: '*heard*' } },
      { type: 'actions', block_id: 'next', elements: [{ type: 'button', action_id: 'fix', text: plain('Correct'), value: message.ts }] },
    ],
  });
  note('heard', { text: message.text });
});

// The official client sends a file as raw bytes, and reads lists in pages.
app.message(/^plot/, async ({ message, client }) => {
  await client.files.uploadV2({ channel_id: message.channel, thread_ts: message.ts, file: Buffer.from('not really a picture'), filename: 'plot.png', title: 'Pressure', alt_text: 'It rises', initial_comment: 'The plot' });
  const texts = [];
  for await (const page of client.paginate('conversations.history', { channel: message.channel, limit: 1 })) texts.push(...page.messages.map((m) => m.text));
  note('uploaded', { text: texts.join(' | ') });
});

app.event('app_mention', async ({ event }) => note('mentioned', { text: event.text }));

app.action('fix', async ({ ack, body, client, action }) => {
  await ack();
  await client.views.open({
    trigger_id: body.trigger_id,
    view: {
      type: 'modal',
      callback_id: 'report',
      private_metadata: action.value,
      title: plain('Correct'),
      submit: plain('Save'),
      blocks: [{ type: 'input', block_id: 'psi', label: plain('Pressure'), element: { type: 'number_input', is_decimal_allowed: false, action_id: 'value' } }],
    },
  });
  note('opened', {});
});

app.view('report', async ({ ack, view, body, client }) => {
  const psi = view.state.values.psi.value.value;
  if (Number(psi) > 300) {
    await ack({ response_action: 'errors', errors: { psi: 'No gauge reads that high.' } });
    return;
  }
  await ack();
  await client.chat.postMessage({ channel: body.user.id, text: `kept: ${psi} psi` });
  note('kept', { psi });
});

app.command('/guest', async ({ ack, command, respond }) => {
  await ack(`you said ${command.text}`);
  await respond({ text: 'and later', response_type: 'in_channel' });
  note('command', { text: command.text });
});

app.shortcut('second_app', async ({ ack, shortcut, client }) => {
  await ack();
  await client.reactions.add({ channel: shortcut.channel.id, timestamp: shortcut.message.ts, name: 'inbox_tray' });
  note('shortcut', { text: shortcut.message.text });
});

app.event('app_home_opened', async ({ event, client }) => {
  await client.views.publish({
    user_id: event.user,
    view: { type: 'home', blocks: [{ type: 'header', text: plain('Home of the second app') }] },
  });
  note('home', { user: event.user });
});

app.error(async (err) => note('error', { text: String(err.data ? JSON.stringify(err.data) : err) }));

(async () => {
  await app.start();
  const me = await app.client.auth.test();
  note('ready', { user: me.user_id });
})();
