// @ts-check
/**
 * Finds a Chromium, Chrome or Edge to test with. Run with `--install`, it also brings Debian's
 * Chromium where there is none and it may, or says in one line what to do.
 */
import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { argv, env, exit, getuid, platform } from 'node:process';
import { pathToFileURL } from 'node:url';

const COMMANDS = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
];

const MAC_APPS = ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
  (name) => `Applications/${name}.app/Contents/MacOS/${name}`,
);

const WINDOWS_PROGRAMS = [
  'Chromium/Application/chrome.exe',
  'Google/Chrome/Application/chrome.exe',
  'Microsoft/Edge/Application/msedge.exe',
];

/** @param {string} file */
function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** @param {(string | undefined)[]} folders @param {string[]} names the most wanted first */
function findIn(folders, names) {
  return names
    .flatMap((name) => folders.map((folder) => folder && join(folder, name)))
    .find((file) => file && isProgram(file));
}

/** @param {string[]} names */
function findOnPath(names) {
  return findIn((env.PATH ?? '').split(delimiter), names);
}

/** The browser's path, if there is one. CHROMIUM_PATH goes before all that is found. */
export function findChromium() {
  if (env.CHROMIUM_PATH) return env.CHROMIUM_PATH;
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA];
    return findIn(roots, WINDOWS_PROGRAMS);
  }
  if (platform === 'darwin') return findIn(['/', env.HOME], MAC_APPS);
  return findOnPath(COMMANDS);
}

/** Whether sudo works without asking for a password. */
function mayUseSudo() {
  try {
    execFileSync('sudo', ['-n', 'true'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** Installs Debian's Chromium where there is apt-get and the right to use it. */
function installFromDebian() {
  const isRoot = getuid?.() === 0;
  if (!findOnPath(['apt-get']) || !(isRoot || mayUseSudo())) return;
  const [program, ...before] = isRoot ? ['env'] : ['sudo', '-n', 'env'];
  for (const task of [['update'], ['install', '-y', 'chromium']]) {
    const command = ['DEBIAN_FRONTEND=noninteractive', 'apt-get', '-qq', ...task];
    execFileSync(program, [...before, ...command], { stdio: 'inherit' });
  }
}

if (import.meta.url === pathToFileURL(argv[1] ?? '').href) {
  if (!findChromium() && argv.includes('--install')) installFromDebian();
  const found = findChromium();
  if (!found) {
    console.error('No Chromium, Chrome or Edge found: install one, or set CHROMIUM_PATH to it.');
    exit(1);
  }
  console.log(`Browser for the tests: ${found}`);
}
