import { describe, expect, test } from '@jest/globals';
import { type Message, shownIn } from './message.js';
import { messageIdOf, threadOf } from './message-id.js';
import { escapeHtml } from '../platform/web/escape-html.js';
import { renderHtml } from './render-html.js';
import { renderText } from './render-text.js';

const message: Message = {
  subject: 'Ready for hookup: job 104, Birch & Co',
  opening: 'Every need is met.',
  facts: [
    { label: 'Circuit', value: '1650 W, 240 V, 6.9 A' },
    { label: 'Since', value: { at: '2031-01-06T14:00:00Z' } },
  ],
  lists: [{ title: 'Needs met', items: ['Cold lead is <through> the wall'] }],
  cautions: ['De-energise before you touch the leads.'],
  link: { words: 'Book a day', path: '/hookups/1?a=1&b=2' },
};

describe('a message', () => {
  test('shows instants in the zone of the reader', () => {
    const value = { at: '2031-01-06T14:00:00Z' };
    expect(shownIn('America/New_York', value)).toBe('Mon, Jan 6, 2031, 9:00 AM EST');
    expect(shownIn('America/Chicago', value)).toBe('Mon, Jan 6, 2031, 8:00 AM CST');
    expect(shownIn('America/New_York', 'as it is')).toBe('as it is');
  });

  test('as text holds opening, facts, lists, cautions and the whole address of the link', () => {
    expect(renderText(message, 'America/New_York', 'https://flagway.example.test')).toBe(
      [
        'Every need is met.',
        '',
        'Circuit: 1650 W, 240 V, 6.9 A',
        'Since: Mon, Jan 6, 2031, 9:00 AM EST',
        '',
        'Needs met:',
        '  - Cold lead is <through> the wall',
        '',
        'Caution:',
        '  ! De-energise before you touch the leads.',
        '',
        'Book a day: https://flagway.example.test/hookups/1?a=1&b=2',
        '',
      ].join('\n'),
    );
  });

  test('as HTML says the same, with every sign of the data standing for itself', () => {
    const html = renderHtml(message, 'America/New_York', 'https://flagway.example.test');
    expect(html).toContain('<h1>Ready for hookup: job 104, Birch &amp; Co</h1>');
    expect(html).toContain('<li>Cold lead is &lt;through&gt; the wall</li>');
    expect(html).toContain('href="https://flagway.example.test/hookups/1?a=1&amp;b=2"');
    expect(html).toContain('Mon, Jan 6, 2031, 9:00 AM EST');
    expect(html).toContain('<h2>Caution</h2>');
    expect(html).not.toContain('<through>');
  });

  test('leaves out what it does not have', () => {
    const bare = { ...message, facts: [], lists: [], cautions: [] };
    expect(renderText(bare, 'UTC', 'http://localhost')).toBe(
      'Every need is met.\n\nBook a day: http://localhost/hookups/1?a=1&b=2\n',
    );
    expect(renderHtml(bare, 'UTC', 'http://localhost')).not.toMatch(/<table|<ul|Caution/);
  });

  test('cannot be broken out of by quotes', () => {
    expect(escapeHtml(`"'><b>&`)).toBe('&quot;&#39;&gt;&lt;b&gt;&amp;');
  });
});

describe('message ids', () => {
  test('are the same at every attempt and gather the messages of a job', () => {
    expect(messageIdOf('d1', 'https://flagway.example.test:4480')).toBe('<d1@flagway.example.test>');
    expect(threadOf('j1', 'https://flagway.example.test')).toBe('<job.j1@flagway.example.test>');
  });
});
