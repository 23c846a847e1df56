// @ts-check
/**
 * Checks what the project depends on: every version is one version, from the registry, locked with its
 * hash; and nothing that is handed out has a known grave fault, where the registry answers.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { exit } from 'node:process';
import { graveFaults } from './audit.mjs';

const REGISTRY = 'https://registry.npmjs.org/';

/** @param {string} file */
const read = (file) => JSON.parse(readFileSync(file, 'utf8'));

/** @returns {string[]} what is not pinned */
function loose() {
  const { dependencies, devDependencies } = read('package.json');
  const ranges = Object.entries({ ...dependencies, ...devDependencies })
    .filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))
    .map(([name, version]) => `${name} is asked for as ${version}: name one version.`);
  const unsure = Object.entries(read('package-lock.json').packages)
    .filter(([folder, { integrity }]) => folder !== '' && !integrity)
    .map(([folder]) => `${folder} is locked without its hash.`);
  const astray = Object.entries(read('package-lock.json').packages)
    .filter(([, { resolved }]) => resolved !== undefined && !resolved.startsWith(REGISTRY))
    .map(([folder, { resolved }]) => `${folder} is not from the registry: ${resolved}`);
  return [...ranges, ...unsure, ...astray];
}

/** Known faults that are grave. @returns {string[] | undefined} undefined: no answer */
function known() {
  const { stdout } = spawnSync(
    'npm',
    ['audit', '--omit=dev', '--json', '--fetch-retries=0', '--fetch-timeout=20000'],
    { encoding: 'utf8', shell: process.platform === 'win32' },
  );
  return graveFaults(stdout ?? '');
}

const faults = known();
if (faults === undefined) console.log('Not audited: the registry gave no answer to npm audit.');
else console.log(`Audited: ${faults.length} grave faults in what is handed out.`);
const told = [...loose(), ...(faults ?? [])];
for (const line of told) console.error(line);
exit(told.length > 0 ? 1 : 0);
