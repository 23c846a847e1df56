import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Ways to make HTML, a script or a frame out of text. To read what stands in the page is none. */
const FROM_TEXT =
  /innerHTML|outerHTML\s*=|insertAdjacentHTML|setHTMLUnsafe|parseHTMLUnsafe|srcdoc|createContextualFragment|DOMParser|document\.write|\beval\(|new Function|javascript:/i;

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('hosting/'))
  .map((file) => join('src', file));

test('no source makes HTML or a script of text', () => {
  expect(sources.length).toBeGreaterThan(100);
  const found = sources.filter((file) => FROM_TEXT.test(readFileSync(file, 'utf8')));
  expect(found).toEqual([]);
});

test('the page has no script, style or listener inside it', () => {
  const page = readFileSync('index.html', 'utf8');
  expect(page).toContain('<script type="module" src=');
  expect(page).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\sstyle=|\son[a-z]+=/);
});
